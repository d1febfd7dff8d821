package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StabilizedExplicitTest {
    private static OdeOutcome run(OdeSystem system, Tolerances tolerances, double[] y0, double end) {
        return new OdeDriver(system, new StabilizedExplicit(), tolerances).run(0, y0, end);
    }

    /** Fixed steps (tolerances so wide that only the largest step binds) on a problem that depends on time: exact. */
    @Test
    void isOfSecondOrder() {
        OdeSystem system = Problems.of(1, (t, y, f) -> f[0] = y[0] * Math.cos(t));
        double exact = Math.exp(Math.sin(1.5));
        double order = Problems.order(
                h -> Math.abs(new OdeDriver(system, new StabilizedExplicit(), new Tolerances(0.1, 1e6))
                                .largestStep(h)
                                .run(0, new double[] {1}, 1.5)
                                .state()[0]
                        - exact),
                0.02,
                0.0025);
        assertThat(order).isCloseTo(2, within(0.1));
    }

    @Test
    void followsAStiffProblemWithManyStagesInLargeSteps() {
        OdeOutcome outcome = run(Problems.protheroRobinson(-1e4), new Tolerances(1e-5, 1e-5), new double[] {1}, 10);
        assertThat(outcome.state()[0]).isCloseTo(Math.cos(10), within(1e-4));
        // An ordinary explicit method needs at least lambda t / 2 = 50 000 steps to stay stable.
        assertThat(outcome.statistics().steps()).isLessThan(1000);
        assertThat(outcome.statistics().derivatives()).isLessThan(50_000);
    }

    /** Exact: the slowest mode of the discrete bar decays with its own eigenvalue 4 (n+1)^2 sin^2(pi / (2 (n+1))). */
    @Test
    void followsConductionAlongABar() {
        int n = 60;
        double[] y0 = new double[n];
        for (int i = 0; i < n; i++) {
            y0[i] = Math.sin(Math.PI * (i + 1) / (n + 1)) + 0.5 * Math.sin(Math.PI * 40 * (i + 1) / (n + 1));
        }
        double slow = 4 * (n + 1.0) * (n + 1.0) * Math.pow(Math.sin(Math.PI / (2 * (n + 1))), 2);
        OdeOutcome outcome = run(Problems.bar(n), Problems.uniform(n, 1e-6, 1e-8), y0, 0.2);
        for (int i = 0; i < n; i++) {
            assertThat(outcome.state()[i])
                    .isCloseTo(Math.exp(-slow * 0.2) * Math.sin(Math.PI * (i + 1) / (n + 1)), within(2e-5));
        }
    }

    @Test
    void estimatesTheSpectralRadiusOfABar() {
        int n = 60;
        double exact = 4 * (n + 1.0) * (n + 1.0) * Math.pow(Math.sin(n * Math.PI / (2 * (n + 1))), 2);
        double[] y = new double[n];
        double[] f = new double[n];
        TrialSystem trials = new TrialSystem(Problems.bar(n), new OdeStatistics.Counters(), new CancelToken());
        trials.start(0, y, f);
        double estimate = new SpectralRadius(trials, Problems.uniform(n, 1e-5, 1e-6)).estimate(0, y, f, 1e-3);
        assertThat(estimate).isBetween(exact, 1.25 * exact);
    }

    @Test
    void aSmallerToleranceGivesASmallerError() {
        OdeSystem circle = Problems.of(2, (t, y, f) -> {
            f[0] = -y[1];
            f[1] = y[0];
        });
        double before = 1;
        for (double tolerance : new double[] {1e-3, 1e-5, 1e-7}) {
            OdeOutcome outcome =
                    run(circle, Problems.uniform(2, tolerance, tolerance), new double[] {1, 0}, 2 * Math.PI);
            double error = Math.hypot(outcome.state()[0] - 1, outcome.state()[1]);
            assertThat(error).isLessThan(50 * Math.pow(tolerance, 2.0 / 3)).isLessThan(0.2 * before);
            before = error;
        }
    }

    /** A quadrature that nothing depends on must not shorten steps, yet must be integrated. */
    @Test
    void anExcludedComponentIsIntegratedWithoutCost() {
        OdeSystem decay = Problems.of(1, (t, y, f) -> f[0] = -y[0]);
        OdeSystem withQuadrature = Problems.of(2, (t, y, f) -> {
            f[0] = -y[0];
            f[1] = 1e9 * y[0];
        });
        OdeOutcome alone = run(decay, new Tolerances(1e-6, 1e-6), new double[] {1}, 5);
        OdeOutcome both =
                run(withQuadrature, new Tolerances(1e-6, 1e-6, Double.POSITIVE_INFINITY), new double[] {1, 0}, 5);
        assertThat(both.statistics().steps()).isEqualTo(alone.statistics().steps());
        // What left component 0 is exactly what component 1 collected: a linear invariant of the method.
        assertThat(both.state()[1]).isCloseTo(1e9 * (1 - both.state()[0]), within(1e-3));
    }
}
