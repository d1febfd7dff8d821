package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.numerics.EventFunction;
import boilwright.numerics.OdeDriver;
import boilwright.numerics.OdeIntegrator;
import boilwright.numerics.OdeSystem;
import boilwright.numerics.Rosenbrock;
import boilwright.numerics.StabilizedExplicit;
import boilwright.numerics.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Cool-down and heat-up of a body of one temperature, times found as events.
 *
 * <p>Sources: F. P. Incropera, D. P. DeWitt, T. L. Bergman, A. S. Lavine, "Fundamentals of Heat and Mass Transfer",
 * section 5.3: radiation alone, eq. 5.18 (here evaluated with its closed form); example 5.3, an aluminium panel in two
 * stages (printed answers from memory: 124 s, 175 C, 989 s; 1 % allowed). A body whose loss coefficient goes with the
 * fourth root of the excess temperature has the closed solution theta = theta0 (1 + t / (4 tau0))^-4 (separation of
 * variables). Both losses together have no closed solution: the time is the integral of C dT / loss, taken with
 * Simpson's rule in steps of 0.01 K.
 */
@Tag("validation")
class LumpedCoolDownTest {
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;
    private static final double CAPACITY = 1800;
    private static final double AREA = 0.06;
    private static final double AIR = 293.15;
    private static final double[] MARKS = {200, 150, 100, 60};

    static Stream<Supplier<OdeIntegrator>> methods() {
        return Stream.of(StabilizedExplicit::new, Rosenbrock::new);
    }

    private static double radiated(double temperature) {
        return 0.9 * STEFAN_BOLTZMANN * AREA * (Math.pow(temperature, 4) - Math.pow(AIR, 4));
    }

    private static double convected(double temperature) {
        double excess = temperature - AIR;
        return 6 * Math.pow(excess / 230, 0.25) * AREA * excess;
    }

    private static OdeSystem body(DoubleUnaryOperator rate) {
        return new OdeSystem() {
            @Override
            public int size() {
                return 1;
            }

            @Override
            public boolean isAutonomous() {
                return true;
            }

            @Override
            public void derivative(double t, double[] y, double[] dydt) {
                dydt[0] = rate.applyAsDouble(y[0]);
            }
        };
    }

    private record Mark(
            int id, double kelvin, EventFunction.Direction direction, List<Double> times, EventFunction.Action action)
            implements EventFunction {
        @Override
        public double value(double t, double[] y) {
            return y[0] - kelvin;
        }

        @Override
        public EventFunction.Action occurred(double t, double[] y, boolean rising) {
            times.add(t);
            return action;
        }
    }

    private static List<Double> timesDown(DoubleUnaryOperator loss, OdeIntegrator method) {
        List<Double> times = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < MARKS.length; i++) {
            EventFunction.Action action =
                    i == MARKS.length - 1 ? EventFunction.Action.STOP : EventFunction.Action.CONTINUE;
            marks.add(new Mark(i, MARKS[i] + 273.15, EventFunction.Direction.FALLING, times, action));
        }
        new OdeDriver(
                        body(temperature -> -loss.applyAsDouble(temperature) / CAPACITY),
                        method,
                        new Tolerances(1e-7, 1e-5))
                .events(marks)
                .run(0, new double[] {250 + 273.15}, 20_000);
        return times;
    }

    private static void check(List<Double> times, double... expected) {
        assertThat(times).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(times.get(i) / expected[i]).isCloseTo(1, within(1e-3));
        }
    }

    /** Incropera eq. 5.18: the time to cool by radiation alone. */
    private static double radiationTime(double from, double to) {
        double factor = CAPACITY / (4 * 0.9 * AREA * STEFAN_BOLTZMANN * Math.pow(AIR, 3));
        double end = Math.log(Math.abs((AIR + to) / (AIR - to))) + 2 * Math.atan(to / AIR);
        double start = Math.log(Math.abs((AIR + from) / (AIR - from))) + 2 * Math.atan(from / AIR);
        return factor * (end - start);
    }

    @ParameterizedTest
    @MethodSource("methods")
    void radiationAlone(Supplier<OdeIntegrator> method) {
        List<Double> times = timesDown(LumpedCoolDownTest::radiated, method.get());
        check(times, 548.73, 1456.4, 3166.0, 6198.4);
        for (int i = 0; i < MARKS.length; i++) {
            assertThat(times.get(i)).isCloseTo(radiationTime(523.15, MARKS[i] + 273.15), within(0.5));
        }
    }

    @ParameterizedTest
    @MethodSource("methods")
    void freeConvectionAlone(Supplier<OdeIntegrator> method) {
        List<Double> times = timesDown(LumpedCoolDownTest::convected, method.get());
        check(times, 1263.9, 3066.2, 6042.9, 10970);
        for (int i = 0; i < MARKS.length; i++) {
            double exact = 4 * 5000 * (Math.pow((MARKS[i] - 20) / 230, -0.25) - 1);
            assertThat(times.get(i)).isCloseTo(exact, within(0.5));
        }
    }

    @ParameterizedTest
    @MethodSource("methods")
    void bothTogether(Supplier<OdeIntegrator> method) {
        DoubleUnaryOperator loss = temperature -> radiated(temperature) + convected(temperature);
        List<Double> times = timesDown(loss, method.get());
        check(times, 382.46, 985.88, 2071.6, 3948.7);
        for (int i = 0; i < MARKS.length; i++) {
            assertThat(times.get(i)).isCloseTo(simpson(loss, MARKS[i] + 273.15, 523.15), within(0.5));
        }
    }

    private static double simpson(DoubleUnaryOperator loss, double low, double high) {
        int intervals = 2 * (int) Math.round((high - low) / 0.02);
        double width = (high - low) / intervals;
        double sum = 0;
        for (int i = 0; i <= intervals; i++) {
            double weight = i == 0 || i == intervals ? 1 : i % 2 == 0 ? 2 : 4;
            sum += weight * CAPACITY / loss.applyAsDouble(low + i * width);
        }
        return sum * width / 3;
    }

    /** Incropera example 5.3: an aluminium panel of 3 mm, both sides, emissivity 0.8, oven at 175 C, then a room at 25 C. */
    @ParameterizedTest
    @MethodSource("methods")
    void aPanelInAnOvenAndThenInARoom(Supplier<OdeIntegrator> method) {
        double capacity = 2770 * 875 * 0.003;
        List<Double> cured = new ArrayList<>();
        Mark at150 = new Mark(1, 150 + 273.15, EventFunction.Direction.RISING, cured, EventFunction.Action.STOP);
        OdeSystem oven = panel(capacity, 40, 175 + 273.15);
        OdeDriver heating = new OdeDriver(oven, method.get(), new Tolerances(1e-6, 1e-4)).events(List.of(at150));
        double cureStart = heating.run(0, new double[] {25 + 273.15}, 1000).time();
        assertThat(cureStart / 124).isCloseTo(1, within(0.01));
        assertThat(cureStart / 123.1).isCloseTo(1, within(1e-3));
        double[] atEnd = new OdeDriver(oven, method.get(), new Tolerances(1e-6, 1e-4))
                .run(cureStart, new double[] {150 + 273.15}, cureStart + 300)
                .state();
        assertThat(atEnd[0] - 273.15).isCloseTo(175, within(0.3));
        List<Double> safe = new ArrayList<>();
        Mark at37 = new Mark(2, 37 + 273.15, EventFunction.Direction.FALLING, safe, EventFunction.Action.STOP);
        new OdeDriver(panel(capacity, 10, 25 + 273.15), method.get(), new Tolerances(1e-6, 1e-4))
                .events(List.of(at37))
                .run(cureStart + 300, atEnd, 5000);
        assertThat(safe).hasSize(1);
        assertThat(safe.get(0) / 989).isCloseTo(1, within(0.01));
    }

    private static OdeSystem panel(double capacity, double coefficient, double surroundings) {
        return body(temperature -> -2
                * (coefficient * (temperature - surroundings)
                        + 0.8 * STEFAN_BOLTZMANN * (Math.pow(temperature, 4) - Math.pow(surroundings, 4)))
                / capacity);
    }
}
