package boilwright.bench;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TestRigs;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The solvers by themselves, setting the rig up included: rest, needed heat, warm-up to rest, cool-down to the last event. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class SolverBench {
    /** The rigs of the decision on the integrator. */
    public enum Which {
        GLASS_FLAME_800,
        GLASS_FLAME_1600,
        GLASS_POOR_PLATE,
        METAL_150;

        Rig rig() {
            return switch (this) {
                case GLASS_FLAME_800 -> TestRigs.fourStageGlass(TestRigs.flame(800));
                case GLASS_FLAME_1600 -> TestRigs.fourStageGlass(TestRigs.flame(1600));
                case GLASS_POOR_PLATE -> TestRigs.fourStageGlass(TestRigs.poorPlate());
                case METAL_150 -> TestRigs.metal150(2200);
            };
        }
    }

    @Param
    public Which which;

    private final TabulatedFluid fluid =
            TabulatedFluid.of(FluidLibrary.builtIn().find("704-type"));
    private final CancelToken never = new CancelToken();
    private Rig rig;
    private ParameterValues values;

    @Setup
    public void describe() {
        rig = which.rig();
        values = ParameterValues.of(rig);
    }

    @Benchmark
    public SteadyState steady() {
        return new SteadySolver(rig, fluid, values).steady();
    }

    @Benchmark
    public NeededState needed() {
        return new SteadySolver(rig, fluid, values).needed();
    }

    @Benchmark
    public RunResult warmupToRest() {
        return RunSimulator.warmup(rig, fluid, values, never, ProgressSink.NONE);
    }

    @Benchmark
    public RunResult cooldownToLastEvent() {
        return RunSimulator.cooldown(rig, fluid, values, never, ProgressSink.NONE);
    }
}
