package boilwright.answers;

import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.Water;
import boilwright.numerics.CancelToken;
import boilwright.numerics.Roots;
import boilwright.rig.Cooling;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import boilwright.water.ChillerCapacity;
import boilwright.water.CircuitSolver;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Finds what flow, chiller, ice or order of plumbing a rig needs, each from steady states of the whole rig. */
final class WaterSizing {
    /** What a chiller should have beyond its duty. */
    static final double RESERVE = 1.2;
    /** Least and greatest flow that is looked at, m3/s: 10 mL/min to 100 L/min. */
    private static final double LEAST_M3_PER_S = 0.01e-3 / 60;

    private static final double MOST_M3_PER_S = 100e-3 / 60;
    private static final double FLOW_TOLERANCE = 1e-6;

    private final Rig rig;
    private final TabulatedFluid fluid;
    private final ParameterValues values;
    private final boolean forFullJets;
    private final CancelToken cancel;

    /** @param forFullJets whether to look at the state in which the weakest jet is just full, not at what the heat gives */
    WaterSizing(Asked asked, boolean forFullJets, CancelToken cancel) {
        this.forFullJets = forFullJets;
        rig = asked.rig();
        fluid = asked.tables();
        values = asked.values();
        this.cancel = cancel;
    }

    /** Heat that the supply's pump puts into the water, W. */
    static double pumpHeatW(Rig rig) {
        return rig.cooling()
                .supply()
                .pumped()
                .map(pumped -> pumped.pump().heatW())
                .orElse(0.0);
    }

    /** What the supply carries away at its set point and in this room, W; empty when that is not known or not limited. */
    static OptionalDouble capacityW(Rig rig) {
        Supply supply = rig.cooling().supply();
        return switch (supply.kind()) {
            case CHILLER ->
                OptionalDouble.of(
                        ChillerCapacity.of(supply.chiller().orElseThrow().capacity())
                                .wattsAt(supply.temperatureK(), rig.room().temperatureK()));
            case GIVEN_FLOW -> supply.givenFlow().orElseThrow().capacityW();
            case TAP, TANK, FINS_AND_FAN -> OptionalDouble.empty();
        };
    }

    private SteadyState steady(Rig other) {
        cancel.check();
        SteadySolver solver = new SteadySolver(other, fluid, values);
        return forFullJets ? solver.needed().state() : solver.steady();
    }

    private Rig withFlow(double flowM3PerS) {
        Cooling cooling = rig.cooling();
        return rig.withCooling(new Cooling(
                new Supply.GivenFlow(cooling.inletTemperatureK(), flowM3PerS, OptionalDouble.empty()),
                cooling.elements()));
    }

    /**
     * The least flow at which something keeps its limit.
     *
     * @param excess positive where it is passed; falls with more flow
     * @return m3/s; empty when no flow up to 100 L/min is enough
     */
    OptionalDouble leastFlow(ToDoubleFunction<SteadyState> excess) {
        if (excess.applyAsDouble(steady(withFlow(MOST_M3_PER_S))) > 0) {
            return OptionalDouble.empty();
        }
        if (excess.applyAsDouble(steady(withFlow(LEAST_M3_PER_S))) <= 0) {
            return OptionalDouble.of(LEAST_M3_PER_S);
        }
        double low = Math.log(LEAST_M3_PER_S);
        double high = Math.log(MOST_M3_PER_S);
        double root = Roots.bracketed(
                x -> -excess.applyAsDouble(steady(withFlow(Math.exp(x)))),
                low,
                high,
                FLOW_TOLERANCE,
                FLOW_TOLERANCE,
                "the least flow");
        return OptionalDouble.of(Math.exp(root));
    }

    /** Least film margin of a jet that has vapour, K; empty when none has. */
    static OptionalDouble filmMarginK(SteadyState steady) {
        return steady.stages().stream()
                .filter(s -> s.flowKgPerS() > 0)
                .mapToDouble(StageState::filmMarginK)
                .min();
    }

    /** Pressure that the circuit takes at another flow, Pa. */
    double circuitDropPa(double flowM3PerS) {
        return CircuitSolver.operatingPoint(withFlow(flowM3PerS)).circuitDropPa();
    }

    /**
     * The rig with its water led the other way round: elements and the stages they cover in reverse.
     *
     * @return empty when there is nothing to turn round
     */
    Optional<SteadyState> turnedRound() {
        List<Cooling.Element> elements = new ArrayList<>();
        for (Cooling.Element element : rig.cooling().elements()) {
            elements.add(element.turned());
        }
        Collections.reverse(elements);
        if (elements.equals(rig.cooling().elements())) {
            return Optional.empty();
        }
        double flow = CircuitSolver.operatingPoint(rig).volumeFlowM3PerS();
        Cooling cooling = rig.cooling();
        return Optional.of(steady(rig.withCooling(new Cooling(
                new Supply.GivenFlow(cooling.inletTemperatureK(), flow, OptionalDouble.empty()), elements))));
    }

    /**
     * Temperature at which a chiller that is too weak settles, K: there its capacity meets the duty.
     *
     * @return empty for other supplies, for one that keeps its set point, and where the known range ends before
     */
    OptionalDouble settlesAtK(double dutyW) {
        Optional<Supply.Chiller> chiller = rig.cooling().supply().chiller();
        if (chiller.isEmpty()) {
            return OptionalDouble.empty();
        }
        ChillerCapacity capacity = ChillerCapacity.of(chiller.get().capacity());
        double roomK = rig.room().temperatureK();
        double low = chiller.get().temperatureK();
        double high = capacity.highestWaterK();
        if (capacity.wattsAt(low, roomK) >= dutyW || capacity.wattsAt(high, roomK) < dutyW) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Roots.bracketed(
                k -> capacity.wattsAt(k, roomK) - dutyW, low, high, 1e-9, 0, "where the chiller settles"));
    }

    /**
     * Ice that keeps the water below a temperature through a session, kg.
     *
     * @param heatJ heat that the session brings into the water
     * @param waterM3 water in the tank at the start; 0 for none
     * @param startK its temperature
     * @param highestK what it may reach
     */
    static double iceKg(double heatJ, double waterM3, double startK, double highestK) {
        double start = Math.max(Water.FREEZING_K, startK);
        double inWater = waterM3 * Water.density(start) * (Water.enthalpy(highestK) - Water.enthalpy(start));
        return Math.max(0, heatJ - inWater) / (Water.FUSION_HEAT + Water.enthalpy(highestK));
    }
}
