package boilwright.thermal;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
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

/** The model's inner parts: one derivative and one matrix of partial derivatives, at rest and while the front climbs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class ModelBench {
    @Param({"false", "true"})
    public boolean metal;

    /** Cells above the lower half cold: the front stands in the column. */
    @Param({"false", "true"})
    public boolean front;

    private PumpModel model;
    private double[] y;
    private double[] rates;
    private double[][] jacobian;

    @Setup
    public void settle() {
        Rig rig = metal ? TestRigs.metal150(2200) : TestRigs.fourStageGlass(TestRigs.flame(1600));
        TabulatedFluid fluid = TabulatedFluid.of(FluidLibrary.builtIn().find("704-type"));
        model = new PumpModel(rig, fluid, ParameterValues.of(rig), ColumnGeometry.USUAL_CELLS);
        SteadySolver solver = new SteadySolver(model);
        solver.steady();
        y = solver.state();
        if (front) {
            for (int j = model.layout.cells / 2; j < model.layout.cells; j++) {
                y[model.layout.column + j] = model.roomK;
            }
        }
        rates = new double[y.length];
        jacobian = new double[y.length][y.length];
    }

    @Benchmark
    public double[] derivative() {
        // another state each time, or the solution of the last one would be found again
        y[model.layout.oil] += 1e-12;
        model.derivative(0, y, rates);
        return rates;
    }

    @Benchmark
    public double[][] jacobian() {
        y[model.layout.oil] += 1e-12;
        model.derivative(0, y, rates);
        model.jacobian(0, y, rates, jacobian);
        return jacobian;
    }
}
