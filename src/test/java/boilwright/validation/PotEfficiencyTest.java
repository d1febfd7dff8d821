package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.OfferedSource;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.SourceLibrary;
import boilwright.thermal.DeliveredHeat;
import boilwright.thermal.FlameBench;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Share of the power that gets into a pot, by kind of source.
 *
 * <p>Sources: L. Mora Iannelli, S. Gil, "Eficiencia en la coccion", Argentina 2020, figure 6: hob with liquefied gas and lidded
 * pots 0.52, natural gas 0.49, glass-ceramic 0.77, electric coil 0.74. U.S. Department of Energy, as quoted: gas 0.40-0.44,
 * electric 0.74-0.80, induction 0.84. S. Khan, A. Saxena, IJERT 2(7), 2013: small gas burners at best 0.58. Pots differ, so each
 * value is met within what such tests scatter by, 0.08.
 */
@Tag("validation")
class PotEfficiencyTest {
    private static final double SCATTER = 0.08;
    private static final double POT_M2 = Math.PI / 4 * 0.20 * 0.20;

    /** Water between cold and boiling in a steel pot on a plate of the library: mean over the heating. */
    @ParameterizedTest
    @ValueSource(strings = {"hot-plate-1000-metal", "hot-plate-1500-metal", "hot-plate-2000-metal"})
    void anElectricPlate(String id) {
        Rig pot = pot(source(id));
        double sum = 0;
        int count = 0;
        for (double wall = 293.15; wall <= 373.15; wall += 10) {
            DeliveredHeat heat = DeliveredHeat.atFullPower(pot, ParameterValues.of(pot));
            sum += heat.watts(wall, wall) / heat.inputW(wall, wall);
            count++;
        }
        assertThat(sum / count).isBetween(0.74 - SCATTER, 0.80 + SCATTER);
    }

    /** On a gas hob of usual power, from the smallest burner to the large one. */
    @Test
    void aGasHob() {
        double small = FlameBench.under(1000, POT_M2).efficiency();
        double large = FlameBench.under(3000, POT_M2).efficiency();
        assertThat(small).isBetween(0.52 - SCATTER, 0.58 + SCATTER);
        assertThat(large).isBetween(0.40 - SCATTER, 0.52 + SCATTER);
        assertThat(FlameBench.under(1750, POT_M2).efficiency()).isCloseTo(0.50, within(SCATTER));
    }

    /** A hob's field straight into a pot of plain steel. */
    @Test
    void induction() {
        HeatSource hob = source("induction-2000-bare");
        ContactBody susceptor = hob.body().orElseThrow();
        Rig pot = pot(new HeatSource.Induction(
                hob.ratedPowerW(),
                Susceptor.FERROUS_BASE,
                hob.efficiency(),
                new ContactBody(
                        Contact.MACHINED_METAL,
                        0.018,
                        OptionalDouble.empty(),
                        susceptor.heatCapacity(),
                        susceptor.limitK(),
                        susceptor.thermostat(),
                        susceptor.lossAreaM2(),
                        susceptor.lossEmissivity(),
                        0,
                        1)));
        DeliveredHeat heat = DeliveredHeat.atFullPower(pot, ParameterValues.of(pot));
        assertThat(heat.watts(343.15, 343.15) / heat.inputW(343.15, 343.15)).isBetween(0.80, 0.90);
    }

    private static HeatSource source(String id) {
        return SourceLibrary.builtIn().sources().stream()
                .filter(s -> s.id().equals(id))
                .map(OfferedSource::source)
                .findFirst()
                .orElseThrow();
    }

    /** A boiler of plain steel is as good a pot as any: only its base and its room matter here. */
    private static Rig pot(HeatSource source) {
        return RigEdit.of("boiler.heatedArea", POT_M2)
                .applied(DemoRig.named("mirror-club"))
                .withHeatSource(source);
    }
}
