package boilwright.thermal;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.StabilizedExplicit;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/** Answers about whole rigs, with the states behind them that the results do not carry. */
public final class ThermalProbe {
    private static final Map<String, TabulatedFluid> FLUIDS = new ConcurrentHashMap<>();

    private ThermalProbe() {}

    /**
     * Temperatures at rest, K.
     *
     * @param oilK oil
     * @param boilerWallK boiler wall
     * @param wallsK body walls: zones from the bottom, lower wall, cap
     * @param waterK water nodes in the order of the stream
     * @param columnK column cells from the bottom
     */
    public record Rest(double oilK, double boilerWallK, double[] wallsK, double[] waterK, double[] columnK) {}

    /** A run with the temperatures in which it ended. */
    public record Ended(RunResult result, Rest rest) {}

    /** Tables of a fluid that comes with the program. */
    public static TabulatedFluid fluid(String id) {
        return FLUIDS.computeIfAbsent(
                id, i -> TabulatedFluid.of(FluidLibrary.builtIn().find(i)));
    }

    /** The rig at rest. */
    public static SteadyState steady(Rig rig) {
        return new SteadySolver(rig, fluid(rig.fluidId()), ParameterValues.of(rig)).steady();
    }

    /** The state in which the weakest jet is just full. */
    public static NeededState needed(Rig rig) {
        return new SteadySolver(rig, fluid(rig.fluidId()), ParameterValues.of(rig)).needed();
    }

    /** Temperatures of the rig at rest. */
    public static Rest steadyRest(Rig rig) {
        PumpModel model = new PumpModel(rig, fluid(rig.fluidId()), ParameterValues.of(rig), ColumnGeometry.USUAL_CELLS);
        SteadySolver solver = new SteadySolver(model);
        solver.steady();
        return rest(model.layout, solver.state());
    }

    /** The same, but with the parts settled one inside the other: another way to the same answer. */
    public static Rest nestedRest(Rig rig) {
        PumpModel model = new PumpModel(rig, fluid(rig.fluidId()), ParameterValues.of(rig), ColumnGeometry.USUAL_CELLS);
        SteadySolver solver = new SteadySolver(model, false);
        solver.steady();
        return rest(model.layout, solver.state());
    }

    /** The rig from cold to rest. */
    public static RunResult warmup(Rig rig) {
        return warmedUp(rig).result();
    }

    /** The rig from cold to rest, with the temperatures in which it ended. */
    public static Ended warmedUp(Rig rig) {
        PumpModel model = new PumpModel(rig, fluid(rig.fluidId()), ParameterValues.of(rig), ColumnGeometry.USUAL_CELLS);
        RunSimulator.Outcome outcome =
                RunSimulator.warmup(model, new CancelToken(), ProgressSink.NONE, 1, new StabilizedExplicit());
        return new Ended(outcome.result(), rest(model.layout, outcome.state()));
    }

    /** The rig from its steady state with the heat turned off. */
    public static RunResult cooldown(Rig rig) {
        return RunSimulator.cooldown(
                rig, fluid(rig.fluidId()), ParameterValues.of(rig), new CancelToken(), ProgressSink.NONE);
    }

    private static Rest rest(StateLayout at, double[] y) {
        return new Rest(
                y[at.oil],
                y[at.boilerWall],
                Arrays.copyOfRange(y, at.walls, at.water),
                Arrays.copyOfRange(y, at.water, at.fill),
                Arrays.copyOfRange(y, at.column, at.walls));
    }

    /** When something happened to a stage (empty name: to the pump), s; empty when it did not. */
    public static OptionalDouble time(RunResult run, EventKind kind, String stage) {
        return run.events().stream()
                .filter(e -> e.kind() == kind && e.stage().equals(stage))
                .map(TimeEvent::timeS)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }
}
