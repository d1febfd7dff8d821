package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.gasflow.ApertureConductance;
import boilwright.gasflow.BaffleTransmission;
import boilwright.gasflow.ElbowTransmission;
import boilwright.gasflow.Gas;
import boilwright.gasflow.PumpSpeed;
import boilwright.gasflow.TubeTransmission;
import boilwright.gasflow.ViscousConductance;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Molecular, transition and viscous flow of a line's pieces. Tubes: P. Clausing, Ann. Phys. 12 (1932) 961, and A. S. Berman, J.
 * Appl. Phys. 36 (1965) 3356. Apertures and the long tube: J. F. O'Hanlon, A User's Guide to Vacuum Technology. Bends: course
 * with the angle by Xu Tingwei and Wang Kaiping, Vacuum 32 (1982) 655; figures of bends and baffles by own Monte Carlo for the
 * ideal geometry.
 */
@Tag("validation")
class MolecularFlowTest {
    private static final double T = 293.15;
    private static final double AIR = 0.028965;

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.95240", "0.2, 0.90922", "0.5, 0.80127", "1, 0.67198", "2, 0.51423", "3, 0.42006", "4, 0.35658",
        "5, 0.31053", "6, 0.27546", "8, 0.22530", "10, 0.19099", "20, 0.10938", "50, 0.04851", "100, 0.02529"
    })
    void transmissionOfTubes(double lengthOverRadius, double printed) {
        assertThat(TubeTransmission.of(lengthOverRadius)).isCloseTo(printed, within(6e-6 + 1e-4 * printed));
    }

    @Test
    void limitsOfTubes() {
        assertThat(TubeTransmission.of(0)).isEqualTo(1);
        assertThat(TubeTransmission.of(1e7) * 3 * 1e7 / 8).isCloseTo(1, within(1e-5));
        double before = 1;
        for (double l = 1e-4; l < 1e6; l *= 1.07) {
            assertThat(TubeTransmission.of(l)).isLessThan(before);
            before = TubeTransmission.of(l);
        }
    }

    @Test
    void apertureForAirAndNitrogen() {
        assertThat(ApertureConductance.of(1e-4, T, AIR) * 1e3).isCloseTo(11.57, within(0.01));
        assertThat(ApertureConductance.of(1e-4, 295.15, 0.028013) * 1e3).isCloseTo(11.8, within(0.05));
    }

    /** 12.12 d3/L litres a second for air at 20 C, d and L in cm. */
    @Test
    void longTubeForAir() {
        double d = 0.02;
        double length = 1000 * d;
        double opening = ApertureConductance.of(Math.PI / 4 * d * d, T, AIR);
        double found = opening * TubeTransmission.of(2 * length / d) * 1e3;
        assertThat(found * (length * 100) / Math.pow(d * 100, 3)).isCloseTo(12.12, within(0.06));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 30, 0.5113",
        "1, 60, 0.5117",
        "1, 90, 0.5414",
        "2, 60, 0.3457",
        "2, 90, 0.3517",
        "2, 120, 0.4070",
        "3, 75, 0.2630",
        "3, 90, 0.2651",
        "5, 60, 0.1817",
        "5, 90, 0.1818",
        "5, 120, 0.1931"
    })
    void bends(double legOverRadius, double degrees, double table) {
        assertThat(ElbowTransmission.of(2 * legOverRadius, Math.toRadians(degrees)))
                .isCloseTo(table, within(5e-4));
    }

    /** D. H. Davis found a right angle to pass as much as the straight tube of its axis length; within 5 %. */
    @Test
    void aRightAngleEqualsTheStraightTube() {
        for (double leg = 1; leg <= 5; leg += 0.5) {
            double ratio = ElbowTransmission.of(2 * leg, Math.PI / 2) / TubeTransmission.of(2 * leg);
            assertThat(ratio).isCloseTo(1, within(0.055));
        }
    }

    /** Transmission first falls with the angle, least between 49 and 73 degrees (Xu, Wang 1982), then rises. */
    @Test
    void leastTransmissionLiesBetween49And73Degrees() {
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        for (double degrees = 0; degrees <= 120; degrees += 1) {
            double w = ElbowTransmission.of(4, Math.toRadians(degrees));
            if (w < least) {
                least = w;
                at = degrees;
            }
        }
        assertThat(at).isBetween(49.0, 76.0);
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 45, 0.160, 0.303", "1, 45, 0.245, 0.432", "1.5, 45, 0.328, 0.524", "2, 45, 0.414, 0.596",
        "1, 60, 0.123, 0.236", "1, 30, 0.383, 0.575", "2, 60, 0.211, 0.374", "0.5, 30, 0.253, 0.433"
    })
    void baffles(double pitch, double degrees, double chevron, double louvre) {
        assertThat(BaffleTransmission.chevron(pitch, Math.toRadians(degrees))).isCloseTo(chevron, within(1e-9));
        assertThat(BaffleTransmission.louvre(pitch, Math.toRadians(degrees))).isCloseTo(louvre, within(1e-9));
    }

    /** Textbook range of practical baffles, 0.25 to 0.4 (O'Hanlon, from memory), for opaque 45 degree chevrons. */
    @Test
    void chevronsLieInTheTextbookRange() {
        assertThat(BaffleTransmission.chevron(1, Math.PI / 4)).isBetween(0.2, 0.4);
        assertThat(BaffleTransmission.chevron(2, Math.PI / 4)).isBetween(0.25, 0.45);
    }

    /** Poiseuille: 135 d4 p/L litres a second for air at 20 C, mbar and cm (K. Jousten, Handbook of Vacuum Technology, from memory). */
    @Test
    void viscousFlowOfAir() {
        double found = ViscousConductance.poiseuille(0.01, 1, 100, Gas.AIR.viscosity(T)) * 1e3;
        assertThat(found / (135.0 / 100)).isCloseTo(1, within(0.02));
    }

    @Test
    void viscosityOfAirAt20C() {
        // 18.13 micropascal second (CRC Handbook, from memory 18.2)
        assertThat(Gas.AIR.viscosity(T)).isCloseTo(1.82e-5, within(2e-7));
    }

    /** Knudsen's factor goes from 1 to 1/1.235. */
    @Test
    void limitsOfTheTransition() {
        double eta = Gas.AIR.viscosity(T);
        assertThat(ViscousConductance.molecularShare(0.01, 1e-9, eta, T, AIR)).isCloseTo(1, within(1e-6));
        assertThat(ViscousConductance.molecularShare(0.01, 1e9, eta, T, AIR)).isCloseTo(1 / 1.235, within(1e-6));
    }

    /** Ho coefficients of 0.30 to 0.50 in practice (Mueller 2020) of 11.6 L/s a square centimetre. */
    @Test
    void speedOfAPump() {
        double area = Math.PI / 4 * 0.1 * 0.1;
        for (double ho : new double[] {0.30, 0.45, 0.85}) {
            double perSquareCentimetre = PumpSpeed.full(ho, area, T, AIR) * 1e3 / (area * 1e4);
            assertThat(perSquareCentimetre).isCloseTo(ho * 11.57, within(0.01));
        }
    }

    /** 1 to 1.5 Torr L/s for each kW (Hablanian, from memory): 0.13 to 0.20 Pa m3/s. */
    @Test
    void throughputForThePower() {
        double torrLitre = 101_325.0 / 760 * 1e-3;
        assertThat(boilwright.rig.Parameter.THROUGHPUT_PER_POWER.nominal() * 1000 / torrLitre)
                .isBetween(1.0, 1.5);
    }
}
