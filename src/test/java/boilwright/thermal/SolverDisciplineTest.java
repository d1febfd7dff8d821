package boilwright.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.Counts;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.OdeSystem;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.Rosenbrock;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What makes the solvers fast must not change what they say: no memory, the same bits, slopes that are slopes. */
class SolverDisciplineTest {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final TabulatedFluid fluid =
            TabulatedFluid.of(FluidLibrary.builtIn().find("704-type"));

    static Stream<Rig> rigs() {
        return Stream.of(
                TestRigs.fourStageGlass(TestRigs.flame(200)),
                TestRigs.fourStageGlass(TestRigs.flame(1600)),
                TestRigs.fourStageGlass(TestRigs.poorPlate()),
                TestRigs.metal150(2200));
    }

    /** The one that heats up through everything first. */
    static List<Rig> runs() {
        return Counts.firstOf(
                TestRigs.fourStageGlass(TestRigs.flame(1600)),
                TestRigs.fourStageGlass(TestRigs.flame(200)),
                TestRigs.fourStageGlass(TestRigs.poorPlate()),
                TestRigs.metal150(2200));
    }

    private PumpModel model(Rig rig) {
        return new PumpModel(rig, fluid, ParameterValues.of(rig), 60);
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void theDerivativeCostsNoMemory(Rig rig) {
        PumpModel model = model(rig);
        SteadySolver solver = new SteadySolver(model);
        solver.steady();
        double[] y = solver.state();
        double[] rates = new double[y.length];
        int calls = 10_000;
        derivatives(model, y, rates, calls);
        long before = THREADS.getCurrentThreadAllocatedBytes();
        derivatives(model, y, rates, calls);
        assertThat(THREADS.getCurrentThreadAllocatedBytes() - before).isLessThan(calls);
    }

    /** Warm and falling below the boiler's wall and back, so that both directions of every heat flow are asked for. */
    private static void derivatives(PumpModel model, double[] y, double[] rates, int calls) {
        double oil = y[model.layout.oil];
        double wall = y[model.layout.boilerWall];
        for (int i = 0; i < calls; i++) {
            y[model.layout.oil] = oil - 1e-3 * (i % 100);
            y[model.layout.boilerWall] = wall - (i % 50);
            model.derivative(0, y, rates);
        }
        y[model.layout.oil] = oil;
        y[model.layout.boilerWall] = wall;
    }

    @ParameterizedTest
    @MethodSource("runs")
    void theSameQuestionGetsTheSameBits(Rig rig) {
        RunSimulator.Outcome first = warmup(rig);
        RunSimulator.Outcome second = warmup(rig);
        assertThat(first.state()).containsExactly(second.state());
        assertThat(first.result().events()).isEqualTo(second.result().events());
        SteadySolver once = new SteadySolver(model(rig));
        SteadyState state = once.steady();
        assertThat(new SteadySolver(model(rig)).steady()).isEqualTo(state);
        // and what was asked before does not matter
        once.needed();
        assertThat(once.steady()).isEqualTo(state);
    }

    private RunSimulator.Outcome warmup(Rig rig) {
        return RunSimulator.warmup(model(rig), new CancelToken(), ProgressSink.NONE, 1, new Rosenbrock());
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void solvingAllAtOnceAgreesWithSettlingOneInsideTheOther(Rig rig) {
        SteadyState once = new SteadySolver(model(rig)).steady();
        SteadyState nested = new SteadySolver(model(rig), false).steady();
        assertThat(once.liquidTemperatureK()).isCloseTo(nested.liquidTemperatureK(), within(1e-5));
        assertThat(once.heatDeliveredW()).isCloseTo(nested.heatDeliveredW(), within(1e-6 * nested.heatDeliveredW()));
        assertThat(once.heatToWaterW()).isCloseTo(nested.heatToWaterW(), within(1e-6 * nested.heatDeliveredW()));
        assertThat(once.closureRelative()).isLessThan(1e-8);
        for (int k = 0; k < once.stages().size(); k++) {
            assertThat(once.stages().get(k).lit())
                    .isEqualTo(nested.stages().get(k).lit());
            assertThat(once.stages().get(k).full())
                    .isEqualTo(nested.stages().get(k).full());
        }
        double needed = new SteadySolver(model(rig), false).needed().heatNeededW();
        assertThat(new SteadySolver(model(rig)).needed().heatNeededW()).isCloseTo(needed, within(1e-6 * needed));
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void theJacobianIsThatOfTheDerivative(Rig rig) {
        PumpModel model = model(rig);
        SteadySolver solver = new SteadySolver(model);
        solver.steady();
        double[] y = solver.state();
        StateLayout at = model.layout;
        y[at.gas] = 0.4;
        for (int j = 0; j < at.cells; j++) {
            y[at.column + j] = Math.max(294, y[at.column + j] - 4 - 0.5 * j);
        }
        OdeSystem byDifferences = new OdeSystem() {
            @Override
            public int size() {
                return at.size;
            }

            @Override
            public void derivative(double t, double[] state, double[] dydt) {
                model.derivative(t, state, dydt);
            }
        };
        double[] rates = new double[at.size];
        double[][] expected = new double[at.size][at.size];
        double[][] actual = new double[at.size][at.size];
        model.derivative(0, y, rates);
        byDifferences.jacobian(0, y, rates, expected);
        model.derivative(0, y, rates);
        model.jacobian(0, y, rates, actual);
        for (int i = 0; i < at.size; i++) {
            double scale = 0;
            for (double value : expected[i]) {
                scale = Math.max(scale, Math.abs(value));
            }
            for (int j = 0; j < at.size; j++) {
                // levels of running water stay as they are: their columns are left out
                if (j < at.fill || j >= at.quadratures) {
                    assertThat(actual[i][j])
                            .as("d(%s)/d(%s)", model.componentName(i), model.componentName(j))
                            .isCloseTo(expected[i][j], within(3e-3 * scale + 1e-12));
                }
            }
        }
    }
}
