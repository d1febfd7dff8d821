package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rig.Column;
import boilwright.rig.Material;
import boilwright.thermal.ColumnBench;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What condenses while a cold pipe warms up.
 *
 * <p>Source: steam practice, "Calculating condensate loads" (handbook sheet): warm-up load W cp dT / L. Worked example
 * (from memory, closes exactly): 100 m of DN100 steel pipe at 16.1 kg/m with nine flange pairs of 16.0 kg and a valve of 44
 * kg, 1798 kg, 0.49 kJ/(kg K), from 20 to 198 C with 1947.8 kJ/kg in 30 minutes: 161.0 kg/h. 0.5 % allowed.
 *
 * <p>What is driven is the program's own column, 60 cells, without loss, until it is warm, with a fluid of that latent
 * heat. The column's heat capacity is that of the pipe. With a specific heat of the condensate the load must lie between
 * W cp dT / (L + c dT) and W cp dT / L, because it returns at the temperature of the lowest cell.
 */
@Tag("validation")
class WarmUpCondensateTest {
    private static final double CAPACITY = 1798 * 490.0;
    private static final double RISE_K = 178;
    private static final double LATENT = 1947.8e3;

    /** A column of mild steel with the heat capacity of the pipe. */
    private static ColumnBench pipe(double specificHeat) {
        double bore = 1.0;
        double height = 2.0;
        double metal =
                CAPACITY / (Material.MILD_STEEL.density() * Material.MILD_STEEL.specificHeat() * Math.PI * height);
        double wall = (Math.sqrt(bore * bore + 4 * metal) - bore) / 2;
        return new ColumnBench(
                new ConstantFluid(293.15 + RISE_K, LATENT, specificHeat).tabulated(),
                new Column.Segment(height, bore, wall, Material.MILD_STEEL, 0),
                0,
                ConstantFluid.BOILING_PA,
                293.15,
                60,
                true);
    }

    @Test
    void thePipeIsThatOfTheExample() {
        assertThat(pipe(1e-3).heatCapacity()).isCloseTo(CAPACITY, within(1.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {90e3, 300e3})
    void theLoadDoesNotDependOnHowFastItWarms(double powerW) {
        ColumnBench pipe = pipe(1e-3);
        pipe.holdPower(powerW);
        double duration = CAPACITY * RISE_K / powerW;
        for (double share : new double[] {0.25, 0.5, 3}) {
            pipe.runTo(share * duration);
            assertThat(pipe.condensateKg() * LATENT / pipe.storedJ())
                    .as("condensate at %s of the time", share)
                    .isCloseTo(1, within(1e-5));
        }
        double perHour = pipe.condensateKg() / 0.5;
        assertThat(perHour / 161.0).isCloseTo(1, within(0.005));
    }

    @Test
    void condensateThatLeavesColderCarriesMoreHeat() {
        double c = 2000;
        ColumnBench pipe = pipe(c);
        pipe.holdPower(90e3);
        pipe.runTo(3 * CAPACITY * RISE_K / 90e3);
        assertThat(pipe.heatJ() / pipe.storedJ()).isCloseTo(1, within(1e-4));
        double load = pipe.condensateKg();
        assertThat(load).isBetween(pipe.storedJ() / (LATENT + c * RISE_K), pipe.storedJ() / LATENT);
    }
}
