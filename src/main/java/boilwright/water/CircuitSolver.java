package boilwright.water;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.Roots;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.units.Dimension;
import boilwright.units.PhysicalConstants;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import boilwright.water.OperatingPoint.ElementFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds the flow at which supply and circuit agree, with water at the supply's temperature all the way: colder than it will be, so
 * that what flows later is a little more. Rises are counted as they are given, whether the circuit is open or closed: in a closed one
 * they cancel when they add up to nothing.
 */
public final class CircuitSolver {
    private static final double EXACT = 1e-12;
    private static final double BEYOND_OPERATING_POINT = 1.25;
    private static final UnitSpelling METRE =
            UnitTable.find("m", Dimension.LENGTH).orElseThrow();

    private CircuitSolver() {}

    /**
     * An operating point with what has to be said about it.
     *
     * @param point the operating point
     * @param notes branches that carry nothing, a pump beyond its curve; none when all is plain
     */
    public record Result(OperatingPoint point, List<Message> notes) {
        public Result {
            notes = List.copyOf(notes);
        }
    }

    /**
     * The flow through a rig's circuit.
     *
     * @param rig the rig
     * @throws InputRefusedException when the supply cannot lift the water through the circuit
     */
    public static OperatingPoint operatingPoint(Rig rig) {
        return solve(rig).point();
    }

    /**
     * The flow through a rig's circuit, with notes.
     *
     * @param rig the rig
     * @throws InputRefusedException when the supply cannot lift the water through the circuit
     */
    public static Result solve(Rig rig) {
        Supply supply = rig.cooling().supply();
        if (supply instanceof Supply.FinsAndFan) {
            return new Result(new OperatingPoint(0, 0, List.of(), OptionalDouble.empty(), 0), List.of());
        }
        Network network = new Network(rig);
        if (supply instanceof Supply.GivenFlow given) {
            double flow = given.flowM3PerS() * network.density();
            return result(network, flow, OptionalDouble.empty(), Double.POSITIVE_INFINITY);
        }
        SupplyHead head = SupplyHead.of(supply, network.density());
        double available = head.pressurePa(0);
        double asked = network.liftPa();
        if (!(available > asked)) {
            throw new InputRefusedException(Message.of(
                    MessageKey.WATER_NOT_LIFTED,
                    metres(available, network.density()),
                    metres(asked, network.density())));
        }
        double flow = crossing(head, network::dropPa);
        return result(network, flow, OptionalDouble.of(head.pressurePa(flow)), head.knownFlow());
    }

    /** Flow at which the supply gives no more than is taken, kg/s; at no flow it gives more. */
    private static double crossing(SupplyHead head, DoubleUnaryOperator taken) {
        double high = head.usualFlow();
        while (taken.applyAsDouble(high) < head.pressurePa(high)) {
            high *= 2;
        }
        return Roots.bracketed(
                flow -> taken.applyAsDouble(flow) - head.pressurePa(flow), 0, high, EXACT, 0, "the flow of the water");
    }

    private static Result result(Network network, double flow, OptionalDouble head, double knownFlow) {
        List<ElementFlow> elements = network.settle(flow);
        double density = network.density();
        double drop = 0;
        List<Message> notes = new ArrayList<>();
        for (Branches stretch : network.stretches()) {
            drop += stretch.settledDropPa();
            if (flow > 0) {
                stretch.idle()
                        .forEach(line -> notes.add(Message.of(
                                MessageKey.WATER_BRANCH_IDLE,
                                line.name(),
                                metres(line.liftPa(), density),
                                metres(stretch.settledDropPa(), density))));
            }
        }
        if (flow > knownFlow) {
            notes.add(Message.of(
                    MessageKey.WATER_BEYOND_PUMP_CURVE, volume(flow / density), volume(knownFlow / density)));
        }
        return new Result(new OperatingPoint(flow, flow / density, elements, head, drop), notes);
    }

    /**
     * What the supply gives and what the circuit takes against flow, for a picture; also for a circuit that the supply cannot lift.
     * From no flow to where the supply has nothing left, further when the operating point lies beyond; for a measured flow to
     * twice that flow.
     *
     * @param rig the rig
     * @param points number of points, at least 2; the curves of fins and fan have none
     */
    public static CurvePair curves(Rig rig, int points) {
        Supply supply = rig.cooling().supply();
        if (supply instanceof Supply.FinsAndFan) {
            return new CurvePair(new double[0], new double[0], new double[0]);
        }
        Network network = new Network(rig);
        Optional<SupplyHead> head = supply instanceof Supply.GivenFlow
                ? Optional.empty()
                : Optional.of(SupplyHead.of(supply, network.density()));
        double end = head.map(h -> end(network, h))
                .orElseGet(() -> 2 * ((Supply.GivenFlow) supply).flowM3PerS() * network.density());
        double[] flow = new double[points];
        double[] given = new double[points];
        double[] taken = new double[points];
        for (int i = 0; i < points; i++) {
            double mass = end * i / (points - 1);
            flow[i] = mass / network.density();
            given[i] = head.map(h -> h.pressurePa(mass)).orElse(Double.NaN);
            taken[i] = network.dropPa(mass);
        }
        return new CurvePair(flow, given, taken);
    }

    /** Flow to which a picture reaches, kg/s. */
    private static double end(Network network, SupplyHead head) {
        double free = head.pressurePa(0) > 0 ? crossing(head, flow -> 0) : 0;
        if (head.pressurePa(0) > network.liftPa()) {
            free = Math.max(free, BEYOND_OPERATING_POINT * crossing(head, network::dropPa));
        }
        return free > 0 ? free : head.usualFlow();
    }

    private static String metres(double pressurePa, double density) {
        return QuantityWriter.write(pressurePa / (density * PhysicalConstants.STANDARD_GRAVITY), METRE);
    }

    private static String volume(double flowM3PerS) {
        return QuantityWriter.writeAuto(flowM3PerS, Dimension.VOLUME_FLOW);
    }
}
