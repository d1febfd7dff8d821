package boilwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityWriterTest {
    private final Locale locale = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(locale);
    }

    @ParameterizedTest
    @CsvSource({
        "1500, kW, POWER, 1.50 kW",
        "1500, W, POWER, 1500 W",
        "1234.5, W, POWER, 1230 W",
        "999.6, W, POWER, 1000 W",
        "1.125, W, POWER, 1.13 W",
        "-0.0, W, POWER, 0 W",
        "-12.34, W, POWER, -12.3 W",
        "0.000125, m3, VOLUME, 0.000125 m3",
        "2.2e-5, m3, VOLUME, 2.20e-5 m3",
        "3.3e12, Pa, PRESSURE, 3.30e12 Pa",
        "508.15, degC, TEMPERATURE, 235 degC",
        "273.15000000000003, degC, TEMPERATURE, 0 degC",
        "273.65, degC, TEMPERATURE, 0.500 degC",
        "0.5, %, FRACTION, 50.0 %",
        "1.3, 1, FRACTION, 1.30"
    })
    void threeFigures(double si, String unit, Dimension dimension, String expected) {
        for (String language : new String[] {"en-US", "de-DE", "ar-EG-u-nu-arab"}) {
            Locale.setDefault(Locale.forLanguageTag(language));
            assertThat(QuantityWriter.write(si, unit(unit, dimension))).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "850, POWER, 850 W",
        "999.4, POWER, 999 W",
        "999.6, POWER, 1.00 kW",
        "1500, POWER, 1.50 kW",
        "-1500, POWER, -1.50 kW",
        "0, POWER, 0 W",
        "133.322, PRESSURE, 133 Pa",
        "101325, PRESSURE, 101 kPa",
        "1.2e7, PRESSURE, 12.0 MPa",
        "508.15, TEMPERATURE, 235 degC",
        "4.5, TEMPERATURE_DIFFERENCE, 4.50 K",
        "0.15, LENGTH, 150 mm",
        "0, LENGTH, 0 mm",
        "0.00005, LENGTH, 50.0 um",
        "1.2, LENGTH, 1.20 m",
        "0.022, AREA, 220 cm2",
        "2.5e-5, AREA, 25.0 mm2",
        "0.25, AREA, 0.250 m2",
        "6e-5, VOLUME, 60.0 mL",
        "0.0012, VOLUME, 1.20 L",
        "2, VOLUME, 2.00 m3",
        "0.35, MASS, 350 g",
        "1.2, MASS, 1.20 kg",
        "0.002, MASS_FLOW, 2.00 g/s",
        "1e-6, MASS_FLOW, 3.60 g/h",
        "2, MASS_FLOW, 2.00 kg/s",
        "2.5e-5, VOLUME_FLOW, 1.50 L/min",
        "5e-7, VOLUME_FLOW, 30.0 mL/min",
        "0.15, VOLUME_FLOW, 150 L/s",
        "40000, HEAT_FLUX, 40.0 kW/m2",
        "1500, HEAT_CAPACITY, 1.50 kJ/K",
        "1500, SPECIFIC_HEAT, 1500 J/(kg K)",
        "220000, SPECIFIC_ENERGY, 220 kJ/kg",
        "60, HEAT_TRANSFER_COEFFICIENT, 60.0 W/(m2 K)",
        "1.1, THERMAL_CONDUCTIVITY, 1.10 W/(m K)",
        "0.04, DYNAMIC_VISCOSITY, 40.0 mPa s",
        "0.035, SURFACE_TENSION, 35.0 mN/m",
        "3.3e-6, EXPANSION, 3.30e-6 1/K",
        "0.484, MOLAR_MASS, 484 g/mol",
        "0.85, FRACTION, 85.0 %",
        "1.3, FRACTION, 1.30",
        "12.34, TIME, 12.3 s",
        "59.97, TIME, 1 min",
        "700, TIME, 11 min 40 s",
        "-700, TIME, -11 min 40 s",
        "3599.7, TIME, 1 h",
        "4320, TIME, 1 h 12 min"
    })
    void usualUnit(double si, Dimension dimension, String expected) {
        assertThat(QuantityWriter.writeAuto(si, dimension)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "6e-5, mL, VOLUME, 60 mL",
        "2.2e-5, m3, VOLUME, 2.2e-5 m3",
        "1e-5, m3, VOLUME, 1e-5 m3",
        "293.15, degC, TEMPERATURE, 20 degC",
        "0, degC, TEMPERATURE, -273.15 degC",
        "0.8, %, FRACTION, 80 %",
        "0.8, 1, FRACTION, 0.8",
        "0, W, POWER, 0 W",
        "1e12, W, POWER, 1e12 W",
        "0.1, W, POWER, 0.1 W",
        "0.3333333333333333, W, POWER, 0.3333333333333333 W"
    })
    void exact(double si, String unit, Dimension dimension, String expected) {
        assertThat(QuantityWriter.exact(si, unit(unit, dimension))).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNotANumberIsNotWritten(double value) {
        UnitSpelling watt = unit("W", Dimension.POWER);
        assertThatIllegalArgumentException().isThrownBy(() -> QuantityWriter.write(value, watt));
        assertThatIllegalArgumentException().isThrownBy(() -> QuantityWriter.exact(value, watt));
        for (Dimension dimension : Dimension.values()) {
            assertThatIllegalArgumentException().isThrownBy(() -> QuantityWriter.writeAuto(value, dimension));
        }
    }

    private static UnitSpelling unit(String text, Dimension dimension) {
        return UnitTable.find(text, dimension).orElseThrow();
    }
}
