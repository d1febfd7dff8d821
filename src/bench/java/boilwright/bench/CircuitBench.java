package boilwright.bench;

import boilwright.rig.Rig;
import boilwright.water.CircuitSolver;
import boilwright.water.CurvePair;
import boilwright.water.OperatingPoint;
import boilwright.water.Plumbing;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Where supply and circuit agree: twelve elements, three branches side by side. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class CircuitBench {
    private final Rig rig = Plumbing.twelveElements();

    @Benchmark
    public OperatingPoint operatingPoint() {
        return CircuitSolver.operatingPoint(rig);
    }

    @Benchmark
    public CurvePair curvesOfAHundredPoints() {
        return CircuitSolver.curves(rig, 100);
    }
}
