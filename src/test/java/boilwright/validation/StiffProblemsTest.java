package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.numerics.OdeDriver;
import boilwright.numerics.OdeIntegrator;
import boilwright.numerics.OdeOutcome;
import boilwright.numerics.OdeSystem;
import boilwright.numerics.Problems;
import boilwright.numerics.Rosenbrock;
import boilwright.numerics.StabilizedExplicit;
import boilwright.numerics.Tolerances;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Published stiff problems with their reference solutions: Robertson's reaction and HIRES, from F. Mazzia, C. Magherini,
 * "Test Set for Initial Value Problem Solvers", release 2.4, University of Bari 2008 (problems II-10 and II-1; values
 * from memory), and for Robertson at 40 s the values commonly printed with it, after E. Hairer, G. Wanner, "Solving
 * Ordinary Differential Equations II", 2nd ed. 1996, section IV.1 (the first four digits there; more from memory).
 */
@Tag("validation")
class StiffProblemsTest {
    private static final OdeSystem ROBERTSON = new OdeSystem() {
        @Override
        public int size() {
            return 3;
        }

        @Override
        public boolean isAutonomous() {
            return true;
        }

        @Override
        public void derivative(double t, double[] y, double[] f) {
            f[0] = -0.04 * y[0] + 1e4 * y[1] * y[2];
            f[2] = 3e7 * y[1] * y[1];
            f[1] = -f[0] - f[2];
        }

        @Override
        public void jacobian(double t, double[] y, double[] f, double[][] j) {
            j[0][0] = -0.04;
            j[0][1] = 1e4 * y[2];
            j[0][2] = 1e4 * y[1];
            j[1][0] = 0.04;
            j[1][1] = -1e4 * y[2] - 6e7 * y[1];
            j[1][2] = -1e4 * y[1];
            j[2][0] = 0;
            j[2][1] = 6e7 * y[1];
            j[2][2] = 0;
        }
    };

    private static final OdeSystem HIRES = new OdeSystem() {
        @Override
        public int size() {
            return 8;
        }

        @Override
        public boolean isAutonomous() {
            return true;
        }

        @Override
        public void derivative(double t, double[] y, double[] f) {
            f[0] = -1.71 * y[0] + 0.43 * y[1] + 8.32 * y[2] + 0.0007;
            f[1] = 1.71 * y[0] - 8.75 * y[1];
            f[2] = -10.03 * y[2] + 0.43 * y[3] + 0.035 * y[4];
            f[3] = 8.32 * y[1] + 1.71 * y[2] - 1.12 * y[3];
            f[4] = -1.745 * y[4] + 0.43 * y[5] + 0.43 * y[6];
            f[5] = -280 * y[5] * y[7] + 0.69 * y[3] + 1.71 * y[4] - 0.43 * y[5] + 0.69 * y[6];
            f[6] = 280 * y[5] * y[7] - 1.81 * y[6];
            f[7] = -f[6];
        }
    };
    private static final double HIRES_END = 321.8122;
    private static final double[] HIRES_START = {1, 0, 0, 0, 0, 0, 0, 0.0057};
    private static final double[] HIRES_REFERENCE = {
        0.7371312573325668e-3,
        0.1442485726316185e-3,
        0.5888729740967575e-4,
        0.1175651343283149e-2,
        0.2386356198831331e-2,
        0.6238968252742796e-2,
        0.2849998395185769e-2,
        0.2850001604814231e-2
    };

    private static OdeOutcome robertson(double end) {
        return new OdeDriver(ROBERTSON, new Rosenbrock(), new Tolerances(1e-9, 1e-12, 1e-17, 1e-12))
                .run(0, new double[] {1, 0, 0}, end);
    }

    private static OdeOutcome hires(OdeIntegrator method, double tolerance) {
        return new OdeDriver(HIRES, method, Problems.uniform(8, tolerance, 1e-3 * tolerance))
                .run(0, HIRES_START, HIRES_END);
    }

    @Test
    void robertsonAtForty() {
        double[] y = robertson(40).state();
        assertThat(y[0]).isCloseTo(0.71582707, within(1e-8));
        assertThat(y[1]).isCloseTo(9.1855348e-6, within(1e-13));
        assertThat(y[2]).isCloseTo(0.28416375, within(1e-8));
    }

    @Test
    void robertsonAtTenToTheEleven() {
        OdeOutcome outcome = robertson(1e11);
        double[] y = outcome.state();
        assertThat(y[0] / 0.2083340149701255e-07).isCloseTo(1, within(1e-4));
        assertThat(y[1] / 0.8333360770334713e-13).isCloseTo(1, within(1e-4));
        assertThat(y[2]).isCloseTo(0.9999999791665050, within(1e-10));
        assertThat(y[0] + y[1] + y[2]).as("what is there stays there").isCloseTo(1, within(1e-12));
        assertThat(outcome.statistics().steps()).isLessThan(5000);
    }

    @Test
    void hiresWithTheLinearlyImplicitMethod() {
        OdeOutcome outcome = hires(new Rosenbrock(), 1e-7);
        for (int i = 0; i < 8; i++) {
            assertThat(outcome.state()[i] / HIRES_REFERENCE[i])
                    .as("component " + (i + 1))
                    .isCloseTo(1, within(1e-5));
        }
    }

    @Test
    void hiresWithTheStabilizedExplicitMethod() {
        OdeOutcome outcome = hires(new StabilizedExplicit(), 1e-6);
        for (int i = 0; i < 8; i++) {
            assertThat(outcome.state()[i] / HIRES_REFERENCE[i])
                    .as("component " + (i + 1))
                    .isCloseTo(1, within(1e-3));
        }
    }

    /**
     * A problem that is not stiff, against a library's eighth-order method: a pendulum with friction, the end
     * state and one inside a step.
     */
    @Test
    void aPendulumAgreesWithAnotherIntegrator() {
        OrdinaryDifferentialEquation pendulum = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                return new double[] {y[1], -9.81 * Math.sin(y[0]) - 0.2 * y[1]};
            }
        };
        double[] expected = new DormandPrince853Integrator(1e-6, 1, 1e-12, 1e-12)
                .integrate(pendulum, new ODEState(0, new double[] {2, 0}), 10)
                .getPrimaryState();
        OdeSystem same = new OdeSystem() {
            @Override
            public int size() {
                return 2;
            }

            @Override
            public void derivative(double t, double[] y, double[] f) {
                f[0] = y[1];
                f[1] = -9.81 * Math.sin(y[0]) - 0.2 * y[1];
            }
        };
        for (OdeIntegrator method : List.of(new Rosenbrock(), new StabilizedExplicit())) {
            List<double[]> samples = new ArrayList<>();
            double[] end = new OdeDriver(same, method, Problems.uniform(2, 1e-9, 1e-9))
                    .handler((solution, from, to) -> {
                        double middle = 0.5 * (from + to);
                        samples.add(new double[] {middle, Problems.stateAt(solution, 2, middle)[0]});
                    })
                    .run(0, new double[] {2, 0}, 10)
                    .state();
            assertThat(end[0]).isCloseTo(expected[0], within(1e-4));
            assertThat(end[1]).isCloseTo(expected[1], within(1e-4));
            double[] sample = samples.get(samples.size() / 2);
            double there = new DormandPrince853Integrator(1e-6, 1, 1e-12, 1e-12)
                    .integrate(pendulum, new ODEState(0, new double[] {2, 0}), sample[0])
                    .getPrimaryState()[0];
            assertThat(sample[1]).as("inside a step").isCloseTo(there, within(1e-4));
        }
    }
}
