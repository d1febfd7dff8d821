package boilwright.vacuum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.gasflow.Gas;
import boilwright.numerics.OdeDriver;
import boilwright.numerics.Rosenbrock;
import boilwright.numerics.Tolerances;
import boilwright.rig.GasSide;
import boilwright.rig.Rig;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Pump-down of one volume against its exact solutions: p = p0 exp(-S t/V) at constant speed without gas, and towards Q/S with a
 * constant leak (J. F. O'Hanlon, A User's Guide to Vacuum Technology).
 */
class ChamberSystemTest {
    private static final double SPEED = 0.02;
    private static final double VOLUME = 0.05;

    private static double[] run(double leak, double from, double seconds) {
        GasSide.Chamber bare =
                new GasSide.Chamber(VOLUME, 3600, GasSide.Exposure.HUMID_AIR, List.of(), List.of(), leak);
        Rig rig = VacuumRigs.hoseCase()
                .withVacuum(new GasSide(bare, List.of(), Optional.empty(), List.of(), OptionalDouble.empty()));
        PumpLine ways = new PumpLine(rig, BuiltInRates.INSTANCE, Gas.AIR);
        ChamberSystem system = new ChamberSystem(
                VOLUME,
                3600,
                new GasHistory(ways, 7200),
                new LinePressures(ways.line),
                t -> flow -> flow / SPEED,
                true);
        return new OdeDriver(
                        system,
                        new Rosenbrock(),
                        new Tolerances(1e-8, 1e-8, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY))
                .run(0, new double[] {Math.log(from), 0, 0}, seconds)
                .state();
    }

    @Test
    void atConstantSpeedThePressureFallsExponentially() {
        for (double t : new double[] {1, 5, 20, 40}) {
            double exact = 1e5 * Math.exp(-SPEED * t / VOLUME);
            assertThat(Math.exp(run(0, 1e5, t)[ChamberSystem.LOG_PRESSURE])).isCloseTo(exact, within(1e-5 * exact));
        }
    }

    @Test
    void withALeakItSettlesAtTheLeakOverTheSpeed() {
        double leak = 1e-3;
        for (double t : new double[] {1, 10, 100}) {
            double rest = leak / SPEED;
            double exact = rest + (10 - rest) * Math.exp(-SPEED * t / VOLUME);
            assertThat(Math.exp(run(leak, 10, t)[ChamberSystem.LOG_PRESSURE])).isCloseTo(exact, within(1e-5 * exact));
        }
    }

    @Test
    void whatLeavesIsWhatCameAndWhatTheChamberLost() {
        double[] end = run(1e-3, 10, 30);
        double stored = VOLUME * (Math.exp(end[ChamberSystem.LOG_PRESSURE]) - 10);
        assertThat(end[ChamberSystem.LEFT])
                .isCloseTo(end[ChamberSystem.GIVEN_OFF] - stored, within(1e-5 * end[ChamberSystem.LEFT]));
    }
}
