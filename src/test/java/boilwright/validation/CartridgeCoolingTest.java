package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.gasflow.ButaneProperties;
import boilwright.rig.HeatSource;
import boilwright.rig.Material;
import boilwright.thermal.FlameBench;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A butane cartridge that cools by its own evaporation.
 *
 * <p>Source: derived. M cp dT/dt = -mdot hv + UA (Ta - T) with the metal counted; the form is that of "Modeling the cooling
 * in a propane tank" (web log with open repository, 2024), which prints the other sign at the evaporation and leaves the
 * metal out. Without gain T = T0 + (hv/cl) ln((M cl + Cc)/(M0 cl + Cc)). 230 g of butane, 2400 J/(kg K), 365 kJ/kg, can 43.2
 * J/K, 140 g/h from 20 C; the gain of 0.3 W/K is assumed.
 *
 * <p>What is driven is the burner block's own derivative. Its flow is that of an orifice; a valve that opens as the pressure
 * falls holds it at 140 g/h, and a thin room (5 kPa) lets butane boil all the way down. Its latent heat rises as the fuel
 * cools (366 kJ/kg at 20 C, Watson 1943), so it may cool below the table by as much as latent heat exceeds 365 kJ/kg, and
 * never stay above it; the exact solution with the block's own latent heat (separation of variables) is met to 0.005 K.
 */
@Tag("validation")
class CartridgeCoolingTest {
    private static final double ROOM_K = 293.15;
    private static final double FLOW = 0.140 / 3600;
    private static final double FUEL_KG = 0.230;
    private static final double CAN = 43.2;
    private static final double THIN_ROOM_PA = 5000;

    private static HeatSource.Cartridge cartridge(double airConductance) {
        return new HeatSource.Cartridge(FUEL_KG, CAN / Material.MILD_STEEL.specificHeat(), airConductance, 0);
    }

    private static FlameBench burner(double airConductance, double roomPa) {
        return FlameBench.onCartridge(FLOW * ButaneProperties.GROSS_HEATING_VALUE, cartridge(airConductance), roomPa);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 300, 12.67", "0, 600, 4.97", "0, 900, -3.14", "0, 1200, -11.70", "0, 1800, -30.44",
        "0.3, 300, 13.21", "0.3, 600, 7.12", "0.3, 900, 1.70", "0.3, 1200, -3.11", "0.3, 1800, -11.02"
    })
    void atAHeldFlow(double airConductance, double seconds, double celsius) {
        double[] end = burner(airConductance, THIN_ROOM_PA).burn(seconds, true);
        assertThat(FUEL_KG - end[1]).isCloseTo(FLOW * seconds, within(1e-7));
        double reached = end[0] - 273.15;
        double most = ButaneProperties.latentHeat(end[0]) / 365e3 - 1;
        assertThat(reached).isLessThan(celsius + 0.01);
        assertThat(reached).isGreaterThan(20 - (20 - celsius) * (1 + most) - 0.01);
    }

    @ParameterizedTest
    @CsvSource({"300", "900", "1800"})
    void exactlyWithItsOwnLatentHeat(double seconds) {
        double reached = burner(0, THIN_ROOM_PA).burn(seconds, true)[0];
        double cl = ButaneProperties.LIQUID_SPECIFIC_HEAT;
        double wanted = Math.log(((FUEL_KG - FLOW * seconds) * cl + CAN) / (FUEL_KG * cl + CAN)) / cl;
        // the integral of dT/hv from 20 C down to the temperature reached, by Simpson's rule
        int intervals = 1000;
        double width = (reached - ROOM_K) / intervals;
        double sum = 0;
        for (int i = 0; i <= intervals; i++) {
            double weight = i == 0 || i == intervals ? 1 : i % 2 == 0 ? 2 : 4;
            sum += weight / ButaneProperties.latentHeat(ROOM_K + i * width);
        }
        double integral = sum * width / 3;
        assertThat(integral).isCloseTo(wanted, within(0.005 / ButaneProperties.latentHeat(reached)));
    }

    /** Butane boils at -0.5 C at 1 bar: a cartridge without gain reaches that before 900 s and gives nothing any more. */
    @Test
    void itStarvesWithoutGain() {
        FlameBench burner = burner(0, THIN_ROOM_PA);
        double at900 = burner.burn(900, true)[0];
        assertThat(burner(0, 101325).flowShare(at900)).isZero();
        assertThat(burner(0, 101325).flowShare(burner.burn(600, true)[0])).isPositive();
    }

    /** The unregulated burner throttles itself: it burns less and less and comes to rest at the boiling point. */
    @Test
    void anUnregulatedBurnerThrottlesItself() {
        FlameBench burner = burner(0, 101325);
        double before = 1;
        for (double seconds = 300; seconds <= 3600; seconds += 300) {
            double share = burner.flowShare(burner.burn(seconds, false)[0]);
            assertThat(share).isBetween(0.0, before + 1e-3);
            before = share;
        }
        assertThat(before).isLessThan(0.01);
        assertThat(burner.burn(3600, false)[0] - 273.15).isGreaterThan(-0.7);
    }
}
