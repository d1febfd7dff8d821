package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.Air;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Thermostat;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.file.SourceLibrary;
import boilwright.thermal.DeliveredHeat;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TestRigs;
import boilwright.thermal.ThermalProbe;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Heat through a contact and a wall in series, by hand algebra: R = 1/(h A) + t/(k A), an air gap d thick being h = k_air/d.
 *
 * <p>Source: Incropera, Bergman, Lavine, DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3 (series resistances; the
 * algebra itself needs no source). Air: its conductivity as the program has it, 0.042 W/(m K) at 530 K (table A.4, from memory).
 */
@Tag("validation")
class ContactSeriesTest {
    private static final double AREA = 0.02;

    private static HeatSource plate(double watts, double h, double limitK) {
        return new HeatSource.ContactPlate(
                watts,
                new ContactBody(
                        Contact.FLAT_GLASS,
                        AREA,
                        OptionalDouble.of(h),
                        900,
                        limitK,
                        Thermostat.PROPORTIONAL,
                        1e-9,
                        0,
                        0,
                        1));
    }

    /** A plate without losses: its power, or behind its limit what passes the contact from a plate inside its 10 K band. */
    @ParameterizedTest
    @CsvSource({"300, 100, 723.15, 450", "5000, 100, 723.15, 450", "5000, 40, 723.15, 523.15", "1e6, 160, 573.15, 500"})
    void aPlateThroughItsContact(double watts, double h, double limitK, double faceK) {
        Rig rig = TestRigs.fourStageGlass(plate(watts, h, limitK));
        double delivered = DeliveredHeat.of(rig, ParameterValues.of(rig)).watts(faceK, faceK);
        double conductance = h * AREA;
        // power falls over the 10 K below the limit: P (limit - T)/10 K = h A (T - face)
        double inBand = (watts / 10 * limitK + conductance * faceK) / (watts / 10 + conductance);
        double plateK = Math.max(inBand, faceK);
        double byHand = Math.min(watts, conductance * (plateK - faceK));
        boolean belowBand = faceK + watts / conductance <= limitK - 10;
        assertThat(delivered).isCloseTo(belowBand ? watts : byHand, within(1e-3 * watts / 1000));
    }

    /** In a whole rig at rest the drops add up: contact first, then the wall, whose inner half carries what enters the oil. */
    @Test
    void dropsOfAWholeRig() {
        Rig rig = TestRigs.fourStageGlass(TestRigs.poorPlate());
        SteadyState rest = ThermalProbe.steady(rig);
        double contact = rest.heatDeliveredW() / (60 * 0.0133);
        assertThat(rest.sourceK().orElseThrow() - rest.outerFaceK()).isCloseTo(contact, within(0.01));
        double wall = rest.heatDeliveredW() * 0.0025 / (1.2 * 0.022);
        assertThat(rest.outerFaceK() - rest.innerFaceK()).isBetween(0.5 * wall, wall);
    }

    /** The contacts from memory are those of believable air gaps: tenths of a millimetre flat, a millimetre or more domed. */
    @Test
    void contactsAreAirGaps() {
        double air = Air.conductivity(530);
        assertThat(air).isCloseTo(0.042, within(0.003));
        assertThat(air / Parameter.CONTACT_FLAT_GLASS.high()).isBetween(0.1e-3, 0.4e-3);
        assertThat(air / Parameter.CONTACT_FLAT_GLASS.low()).isBetween(0.1e-3, 0.5e-3);
        assertThat(air / Parameter.CONTACT_DOMED_GLASS.high()).isBetween(0.4e-3, 0.7e-3);
        assertThat(air / Parameter.CONTACT_DOMED_GLASS.low()).isBetween(1.5e-3, 2.5e-3);
        double standing = SourceLibrary.builtIn().sources().stream()
                .filter(s -> s.id().equals("hot-plate-1000-metal"))
                .map(s -> s.source().body().orElseThrow().conductance())
                .findFirst()
                .orElseThrow()
                .orElseThrow();
        assertThat(air / standing).isBetween(0.1e-3, 0.2e-3);
    }
}
