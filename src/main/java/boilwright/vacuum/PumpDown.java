package boilwright.vacuum;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.gasflow.Gas;
import boilwright.numerics.CancelToken;
import boilwright.numerics.EventFunction;
import boilwright.numerics.OdeDriver;
import boilwright.numerics.OdeOutcome;
import boilwright.numerics.Rosenbrock;
import boilwright.numerics.Tolerances;
import boilwright.rig.Rig;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * Chamber from room pressure to high vacuum. Without a roughing line the backing pump draws through the dark pump; when the
 * foreline is down, time 0, the warm-up begins. With a roughing line the chamber is roughed when every jet is full, then
 * crosses over to the jets.
 */
public final class PumpDown {
    /** No chamber above this is given to the jets, Pa (common practice, no source). */
    public static final double HIGHEST_CROSSOVER_PA = 10;
    /** The foreline is down when the chamber is this close to what the backing pump can do with its gas. */
    private static final double NEARLY_DOWN = 1.2;

    private static final double LONGEST_ROUGHING_S = 24 * 3600;
    private static final double BALANCE_LIMIT = 1e-3;
    private static final double RELATIVE = 2e-5;
    private static final double LOG_TOLERANCE = 2e-5;

    private final PumpLine ways;
    private final JetTimeline jets;
    private final CancelToken cancel;
    private final GasHistory gas;
    private final DoubleUnaryOperator foreline;
    private final PumpEnd end;
    private final double volume;
    private final VacuumRecorder record = new VacuumRecorder();
    private double worstBalance;
    private boolean crossed;

    private PumpDown(Rig rig, JetTimeline jets, SurfaceRates rates, Gas flowing, double lastS, CancelToken cancel) {
        ways = new PumpLine(rig, rates, flowing);
        this.jets = jets;
        this.cancel = cancel;
        volume = ways.side.chamber().volumeM3();
        gas = new GasHistory(ways, ways.side.chamber().sinceAirS() + lastS + 2 * LONGEST_ROUGHING_S);
        foreline = ways.backing.quick();
        end = new PumpEnd(foreline, ways.throughPump);
    }

    /**
     * The time line.
     *
     * @param rig a rig with chamber and line
     * @param jets what its jets do in the course of the run
     * @param rates what its materials give off
     * @param flowing what flows
     * @param lastS last time of interest, s after the start of the run
     * @param cancel stops it
     * @throws ComputationException when the gas does not add up
     */
    public static VacuumTimeline of(
            Rig rig, JetTimeline jets, SurfaceRates rates, Gas flowing, double lastS, CancelToken cancel) {
        PumpDown run = new PumpDown(rig, jets, rates, flowing, lastS, cancel);
        return rig.vacuum().orElseThrow().roughing().isEmpty() ? run.throughPump(lastS) : run.aroundPump(lastS);
    }

    private VacuumTimeline throughPump(double lastS) {
        double air = ways.side.chamber().sinceAirS();
        end.jets(jets.at(0).dark());
        ChamberSystem cold = system(new LinePressures(ways.line), air, t -> end::inletPa, true);
        double least = equilibrium(cold, 0);
        double down = Math.max(HIGHEST_CROSSOVER_PA, NEARLY_DOWN * least);
        double log = Math.log(ways.rig().room().pressurePa());
        Stretch roughing = integrate(cold, 0, log, LONGEST_ROUGHING_S, down);
        record.shift(-roughing.endS());
        ChamberSystem hot = system(new LinePressures(ways.line), air + roughing.endS(), this::jetsAt, true);
        integrate(hot, 0, roughing.logPressure(), lastS, Double.NaN);
        return timeline(roughing.endS(), -roughing.endS(), OptionalDouble.empty(), Double.NaN);
    }

    private VacuumTimeline aroundPump(double lastS) {
        double air = ways.side.chamber().sinceAirS();
        LinePressures around = new LinePressures(ways.roughing);
        ChamberSystem rough = system(around, air, t -> this::backingAlone, false);
        double from = jets.allFullS().orElse(0);
        double allowed = crossoverPa(from);
        double log = Math.log(ways.rig().room().pressurePa());
        Stretch roughing = integrate(rough, from, log, from + LONGEST_ROUGHING_S, allowed);
        boolean crosses = jets.allFullS().isPresent() && roughing.reached();
        if (!crosses) {
            return timeline(roughing.endS() - from, from, OptionalDouble.empty(), allowed);
        }
        crossed = true;
        ChamberSystem hot = system(new LinePressures(ways.line), air, this::jetsAt, true);
        double until = Math.max(lastS, roughing.endS() + 600);
        integrate(hot, roughing.endS(), roughing.logPressure(), until, Double.NaN);
        return timeline(roughing.endS() - from, from, OptionalDouble.of(roughing.endS()), allowed);
    }

    /** The backing pump at the end of the roughing line, the foreline shut: its own curve. */
    private double backingAlone(double flow) {
        return ways.backing.pumpAlone(Math.max(0, flow));
    }

    private DoubleUnaryOperator jetsAt(double t) {
        end.jets(jets.at(t));
        return end::inletPa;
    }

    private ChamberSystem system(LinePressures line, double airAtZeroS, ChamberSystem.End at, boolean alongLine) {
        return new ChamberSystem(volume, airAtZeroS, gas, line, at, alongLine);
    }

    /** Pressure at which the chamber's gas of this moment leaves as fast as it comes, Pa. */
    private double equilibrium(ChamberSystem system, double t) {
        double given = gas.chamber(ways.side.chamber().sinceAirS() + t);
        LinePressures line = system.line();
        line.forFlow(
                system.endAt(t).applyAsDouble(given + system.ofLine(t)),
                given,
                gas.pieces(ways.side.chamber().sinceAirS() + t));
        return line.junctionPa[0];
    }

    /** Chamber pressure at which the jets may take over, Pa: what they take in is no more than the roughing brought. */
    private double crossoverPa(double t) {
        double most = jets.at(t).throughput();
        double speed = roughingSpeed(HIGHEST_CROSSOVER_PA);
        return Math.min(HIGHEST_CROSSOVER_PA, most / speed);
    }

    private double roughingSpeed(double chamberPa) {
        LinePressures around = new LinePressures(ways.roughing);
        double flow = around.leaving(chamberPa, this::backingAlone, new double[around.conductance.length]);
        return Math.max(flow, Double.MIN_NORMAL) / chamberPa;
    }

    private record Stretch(double endS, double logPressure, boolean reached) {}

    private Stretch integrate(ChamberSystem system, double fromS, double log, double toS, double stopAtPa) {
        Rosenbrock method = new Rosenbrock();
        OdeDriver driver = new OdeDriver(
                        system,
                        method,
                        new Tolerances(RELATIVE, LOG_TOLERANCE, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY))
                .stopPoints(jets.jumpsS())
                .handler(record.of(system, gaugeOf(system), forelineOf(system)))
                .cancel(cancel);
        if (!Double.isNaN(stopAtPa)) {
            driver.events(List.of(new Falls(Math.log(stopAtPa))));
        }
        OdeOutcome outcome = driver.run(fromS, new double[] {log, 0, 0}, toS);
        double[] y = outcome.state();
        double stored = volume * (Math.exp(y[ChamberSystem.LOG_PRESSURE]) - Math.exp(log));
        double given = y[ChamberSystem.GIVEN_OFF];
        double left = y[ChamberSystem.LEFT];
        double scale = Math.max(Math.abs(given), Math.max(Math.abs(left), Math.abs(stored)));
        worstBalance = Math.max(worstBalance, Math.abs(given - left - stored) / scale);
        if (!(worstBalance <= BALANCE_LIMIT)) {
            throw new ComputationException(Message.of(
                    MessageKey.GAS_NOT_CLOSED, Double.toString(worstBalance), Double.toString(BALANCE_LIMIT)));
        }
        return new Stretch(outcome.time(), y[ChamberSystem.LOG_PRESSURE], outcome.stoppedBy() != null);
    }

    private int gaugeOf(ChamberSystem system) {
        // while the chamber is roughed by another way, a gauge on the line shows the chamber
        return system.line().conductance.length == ways.line.count() ? ways.gaugeJunction() : 0;
    }

    private DoubleBinaryOperator forelineOf(ChamberSystem system) {
        boolean around = system.line().conductance.length != ways.line.count()
                || !ways.side.roughing().isEmpty();
        // while the backing pump roughs the chamber the foreline is shut and only the oil's gas collects: taken as at
        // rest
        return (t, flow) -> foreline.applyAsDouble((around && !crossed ? ways.backing.restingLoad() : flow)
                + jets.at(Math.max(0, t)).gasOfOil());
    }

    private double most() {
        return jets.at(Double.MAX_VALUE).throughput();
    }

    private VacuumTimeline timeline(
            double roughingS, double roughingFromS, OptionalDouble crossoverS, double allowedPa) {
        double allowed = Double.isNaN(allowedPa)
                ? Math.min(
                        HIGHEST_CROSSOVER_PA,
                        most() / Math.max(jets.at(Double.MAX_VALUE).speedM3PerS(), Double.MIN_NORMAL))
                : allowedPa;
        double overload = most() > 0 ? volume * allowed / most() : Double.POSITIVE_INFINITY;
        return record.timeline(
                new Crossover(!ways.side.roughing().isEmpty(), roughingFromS, roughingS, crossoverS, allowed, overload),
                worstBalance);
    }

    /** Stops a run when the chamber's pressure has fallen to a value. */
    private record Falls(double logPressure) implements EventFunction {
        @Override
        public int id() {
            return 0;
        }

        @Override
        public EventFunction.Direction direction() {
            return EventFunction.Direction.FALLING;
        }

        @Override
        public double value(double t, double[] y) {
            return y[ChamberSystem.LOG_PRESSURE] - logPressure;
        }

        @Override
        public EventFunction.Action occurred(double t, double[] y, boolean rising) {
            return EventFunction.Action.STOP;
        }
    }
}
