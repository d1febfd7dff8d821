package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.ComputationException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Water and its mixtures behind one interface. */
class CoolantTest {
    private static List<Coolant> coolants() {
        List<Coolant> list = new ArrayList<>(List.of(Water.coolant()));
        for (Glycol glycol : Glycol.values()) {
            for (double share : new double[] {0.05, 0.2, 0.35, 0.5, 0.6}) {
                list.add(GlycolWater.of(glycol, share));
            }
        }
        return list;
    }

    @Test
    void enthalpyAndExpansionAreWhatTheyAreDefinedAs() {
        for (Coolant coolant : coolants()) {
            for (double t = coolant.lowestK() + 0.5; t < coolant.highestK() - 0.5; t += 3.7) {
                double dh = (coolant.enthalpy(t + 0.01) - coolant.enthalpy(t - 0.01)) / 0.02;
                assertThat(dh).isCloseTo(coolant.specificHeat(t), within(0.02));
                double dRho = (coolant.density(t + 0.1) - coolant.density(t - 0.1)) / 0.2;
                assertThat(coolant.expansion(t)).isCloseTo(-dRho / coolant.density(t), within(2e-7));
            }
            assertThat(coolant.enthalpy(273.15)).isCloseTo(0, within(1e-6));
        }
    }

    /** Also holds the signs of the coefficients: with a sign turned, a curve bends back somewhere. */
    @Test
    void viscosityFallsWithTemperatureAndGlycolThickens() {
        for (Coolant coolant : coolants()) {
            for (double t = coolant.lowestK(); t < coolant.highestK() - 2; t += 2) {
                assertThat(coolant.viscosity(t + 2)).as(coolant.title()).isLessThan(coolant.viscosity(t));
            }
        }
        for (Glycol glycol : Glycol.values()) {
            for (double t = 274; t < 373; t += 7) {
                for (double share = 0.05; share < 0.59; share += 0.05) {
                    Coolant thin = GlycolWater.of(glycol, share);
                    Coolant thick = GlycolWater.of(glycol, share + 0.05);
                    assertThat(thick.viscosity(t)).isGreaterThan(thin.viscosity(t));
                    assertThat(thick.conductivity(t)).isLessThan(thin.conductivity(t));
                    assertThat(thick.freezingK()).isLessThan(thin.freezingK());
                }
            }
        }
    }

    @Test
    void tellsIceLiquidAndSteamApart() {
        Coolant water = Water.coolant();
        assertThat(CoolantState.of(water, 273.15, 1e5)).isEqualTo(CoolantState.FREEZING);
        assertThat(CoolantState.of(water, 273.16, 1e5)).isEqualTo(CoolantState.LIQUID);
        assertThat(CoolantState.of(water, 373.1, 101325)).isEqualTo(CoolantState.LIQUID);
        assertThat(CoolantState.of(water, 373.2, 101325)).isEqualTo(CoolantState.BOILING);
        assertThat(CoolantState.of(water, 373.2, 3e5)).isEqualTo(CoolantState.LIQUID);
        assertThat(CoolantState.of(water, 300, 500)).isEqualTo(CoolantState.BOILING);
        assertThat(CoolantState.of(water, 300, 30e6)).isEqualTo(CoolantState.LIQUID);
        Coolant glycol = GlycolWater.of(Glycol.ETHYLENE, 0.3);
        assertThat(CoolantState.of(glycol, 263.15, 1e5)).isEqualTo(CoolantState.LIQUID);
        assertThat(CoolantState.of(glycol, 258, 1e5)).isEqualTo(CoolantState.FREEZING);
    }

    @Test
    void refusesWhatTheDataDoNotCover() {
        assertThatThrownBy(() -> GlycolWater.of(Glycol.ETHYLENE, 0.61))
                .isInstanceOf(ComputationException.class)
                .hasMessageContaining("0.05 to 0.6");
        assertThatThrownBy(() -> GlycolWater.of(Glycol.PROPYLENE, 0)).isInstanceOf(ComputationException.class);
        assertThatThrownBy(() -> GlycolWater.of(Glycol.PROPYLENE, Double.NaN)).isInstanceOf(ComputationException.class);
        Coolant thin = GlycolWater.of(Glycol.ETHYLENE, 0.1);
        assertThatThrownBy(() -> thin.viscosity(265))
                .isInstanceOf(ComputationException.class)
                .hasMessageContaining("ethylene glycol in water, 10 percent by mass");
        assertThatThrownBy(() -> thin.density(374)).isInstanceOf(ComputationException.class);
    }

    @Test
    void saysWhereItsFiguresComeFrom() {
        for (Glycol glycol : Glycol.values()) {
            GlycolWater mixture = GlycolWater.of(glycol, 0.3);
            assertThat(mixture.source()).contains("Melinder").contains("copies");
            for (String property : List.of("density", "specificHeat", "conductivity", "viscosity")) {
                assertThat(mixture.uncertainty(property)).isBetween(1e-4, 0.1);
            }
            assertThat(mixture.uncertainty("freezing")).isBetween(0.1, 3.0);
        }
    }

    @Test
    void dewPointIsTheAirsTemperatureWhenSaturatedAndFallsWithDryness() {
        assertThat(DewPoint.temperature(300, 1)).isCloseTo(300, within(1e-9));
        double t = DewPoint.temperature(298.15, 0.5);
        assertThat(DewPoint.saturationPressure(t)).isCloseTo(0.5 * DewPoint.saturationPressure(298.15), within(1e-6));
        assertThat(DewPoint.temperature(298.15, 0.4)).isLessThan(t);
    }
}
