package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.units.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The lines of a fluid's data with their figures: the same as the model computes with. */
class PropertyLineTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();

    @Test
    void figuresAreThoseOfTheModel() {
        for (String id : LIBRARY.ids()) {
            FluidRecord fluid = LIBRARY.find(id);
            double low = fluid.lowestTemperature();
            double high = fluid.highestTemperature();
            for (double t : new double[] {low, low + 0.3 * (high - low), low + 0.7 * (high - low), high}) {
                assertThat(value(id, "vapour pressure", t)).isEqualTo(fluid.vapourPressure(t));
                assertThat(value(id, "latent heat", t)).isEqualTo(fluid.latentHeat(t));
                assertThat(value(id, "liquid density", t)).isEqualTo(fluid.liquidDensity(t));
                assertThat(value(id, "liquid specific heat", t)).isEqualTo(fluid.liquidSpecificHeat(t));
                assertThat(value(id, "liquid thermal conductivity", t)).isEqualTo(fluid.liquidConductivity(t));
                assertThat(value(id, "liquid viscosity", t)).isEqualTo(fluid.liquidViscosity(t));
                assertThat(value(id, "surface tension", t)).isEqualTo(fluid.surfaceTension(t));
                assertThat(value(id, "molar mass", t)).isEqualTo(fluid.molarMass());
            }
        }
    }

    @Test
    void thereIsNoFigureWhereTheFluidIsNotEvaluated() {
        PropertyLine line = line("mercury", "vapour pressure");
        assertThat(line.valueAt(239)).isEmpty();
        assertThat(line.valueAt(801)).isEmpty();
        assertThat(line.within(801)).isEmpty();
        assertThat(line.valueAt(800)).isPresent();
    }

    @Test
    void whatIsNotAvailableSaysWhy() {
        PropertyLine line = line("mercury", "flash point");
        assertThat(line.isAvailable()).isFalse();
        assertThat(line.valueAt(300)).isEmpty();
        assertThat(line.citation()).isEmpty();
        assertThat(line.place()).isEmpty();
        assertThat(line.entry().valueText()).isEqualTo("not available: it has none: it does not burn");
    }

    @Test
    void rangesDimensionsAndSourcesComeFromTheFile() {
        PropertyLine pressure = line("704-type", "vapour pressure");
        assertThat(pressure.dimension()).isEqualTo(Dimension.PRESSURE);
        assertThat(pressure.dependsOnTemperature()).isTrue();
        assertThat(pressure.vouchedK()).contains(new PropertyLine.Range(293.15, 503.15));
        assertThat(pressure.place()).isEqualTo("line through 2e-8 Torr at 25 C and 0.5 Torr at 215 C");
        assertThat(pressure.entry().source()).isEqualTo(pressure.citation() + "; " + pressure.place());
        PropertyLine boiler = line("704-type", "usual boiler pressure");
        assertThat(boiler.usual()).contains(new PropertyLine.Range(65, 270));
        assertThat(boiler.vouchedK()).isEmpty();
        assertThat(line("704-type", "highest bulk temperature").dimension()).isEqualTo(Dimension.TEMPERATURE);
        PropertyLine poison = line("mercury", "vapour poisonous at room temperature");
        assertThat(poison.isYesOrNo()).isTrue();
        assertThat(poison.valueAt(300)).isEmpty();
    }

    @Test
    void uncertaintyIsAFactorAShareOrAnAmount() {
        double p = value("704-type", "vapour pressure", 480);
        assertThat(line("704-type", "vapour pressure").within(480)).contains(new PropertyLine.Range(p / 1.5, p * 1.5));
        PropertyLine mass = line("704-type", "molar mass");
        assertThat(mass.within(300).orElseThrow().low()).isCloseTo(0.48481 * 0.9999, within(1e-12));
        assertThat(mass.within(300).orElseThrow().high()).isCloseTo(0.48481 * 1.0001, within(1e-12));
        assertThat(line("mercury", "highest temperature for letting in air").within(300))
                .contains(new PropertyLine.Range(303.15, 323.15));
    }

    private static double value(String id, String title, double temperatureK) {
        return line(id, title).valueAt(temperatureK).orElseThrow();
    }

    private static PropertyLine line(String id, String title) {
        List<PropertyLine> lines = LIBRARY.lines(id).stream()
                .filter(line -> line.entry().title().equals(title))
                .toList();
        assertThat(lines).as(title).hasSize(1);
        return lines.get(0);
    }
}
