package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class RosenbrockTest {
    /** x'' = (1 - x^2) x' - x + g(t), with g such that x = sin t: non-linear and dependent on time. */
    private static final OdeSystem FORCED = Problems.of(2, (t, y, f) -> {
        double x = Math.sin(t);
        double v = Math.cos(t);
        f[0] = y[1];
        f[1] = (1 - y[0] * y[0]) * y[1] - y[0] - x - (1 - x * x) * v + x;
    });

    /** Error with fixed steps: the tolerances are so wide that only the largest step binds. */
    private static DoubleUnaryOperator endError(OdeSystem system, double[] y0, double end, double exact) {
        return h -> Math.abs(new OdeDriver(system, new Rosenbrock(), Problems.uniform(y0.length, 0.1, 1e9))
                        .largestStep(h)
                        .run(0, y0, end)
                        .state()[0]
                - exact);
    }

    private static DoubleUnaryOperator denseError(
            OdeSystem system, double[] y0, double end, DoubleUnaryOperator exact) {
        return h -> {
            double[] worst = {0};
            new OdeDriver(system, new Rosenbrock(), Problems.uniform(y0.length, 0.1, 1e9))
                    .largestStep(h)
                    .handler((solution, from, to) -> {
                        for (double share : new double[] {0.2, 0.5, 0.8}) {
                            double t = from + share * (to - from);
                            worst[0] = Math.max(
                                    worst[0],
                                    Math.abs(Problems.stateAt(solution, y0.length, t)[0] - exact.applyAsDouble(t)));
                        }
                    })
                    .run(0, y0, end);
            return worst[0];
        };
    }

    @Test
    void isOfFourthOrder() {
        double order = Problems.order(endError(FORCED, new double[] {0, 1}, 3.2, Math.sin(3.2)), 0.1, 0.05);
        assertThat(order).isCloseTo(4, within(0.25));
    }

    /** The dense output is of third order, so its error within a step falls with the fourth power at least. */
    @Test
    void denseOutputIsOfThirdOrder() {
        double order = Problems.order(denseError(FORCED, new double[] {0, 1}, 3.2, Math::sin), 0.1, 0.05);
        assertThat(order).isBetween(3.8, 4.5);
        // On a very stiff problem the order of the stages shows instead; the error must still fall and stay small.
        OdeSystem stiff = Problems.protheroRobinson(-1e6);
        DoubleUnaryOperator error = denseError(stiff, new double[] {1}, 3.2, Math::cos);
        assertThat(Problems.order(error, 0.2, 0.05)).isGreaterThan(2.8);
        assertThat(error.applyAsDouble(0.05)).isLessThan(1e-5);
    }

    @Test
    void isStiffAsWellAsExact() {
        OdeOutcome outcome = new OdeDriver(
                        Problems.protheroRobinson(-1e8), new Rosenbrock(), new Tolerances(1e-6, 1e-6))
                .run(0, new double[] {0}, 10);
        assertThat(outcome.state()[0]).isCloseTo(Math.cos(10), within(1e-5));
        assertThat(outcome.statistics().steps()).isLessThan(300);
    }

    /** L-stability: in one step far longer than its time constant a disturbance is gone. */
    @Test
    void dampsWhatIsMuchFasterThanTheStep() {
        OdeSystem fast = Problems.of(1, (t, y, f) -> f[0] = -1e12 * y[0]);
        double left = endError(fast, new double[] {1}, 1, 0).applyAsDouble(1);
        assertThat(left).isLessThan(1e-6);
    }

    @Test
    void theDefaultMatrixOfPartialDerivativesIsRightWayRound() {
        OdeSystem system = Problems.of(3, (t, y, f) -> {
            f[0] = y[0] * y[1];
            f[1] = y[2] * y[2] - 4 * y[0];
            f[2] = Math.sin(y[1]) + t;
        });
        double[] y = {2, 0.5, 300};
        double[] f = new double[3];
        double[][] jacobian = new double[3][3];
        system.derivative(1, y, f);
        system.jacobian(1, y, f, jacobian);
        double[][] exact = {{0.5, 2, 0}, {-4, 0, 600}, {0, Math.cos(0.5), 0}};
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertThat(jacobian[i][j]).isCloseTo(exact[i][j], within(1e-4 + 1e-5 * Math.abs(exact[i][j])));
            }
        }
        assertThat(y).containsExactly(2, 0.5, 300);
    }

    @Test
    void theDefaultMatrixTurnsRoundAtTheEdgeOfWhatCanExist() {
        OdeSystem emptying = new OdeSystem() {
            @Override
            public int size() {
                return 1;
            }

            @Override
            public void derivative(double t, double[] y, double[] dydt) {
                dydt[0] = -3 * y[0];
            }

            @Override
            public boolean isAdmissible(double t, double[] y) {
                return y[0] <= 1;
            }
        };
        double[][] jacobian = new double[1][1];
        emptying.jacobian(0, new double[] {1}, new double[] {-3}, jacobian);
        assertThat(jacobian[0][0]).isCloseTo(-3, within(1e-6));
    }
}
