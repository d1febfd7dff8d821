package boilwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.MessageKey;
import boilwright.units.Reading.Read;
import boilwright.units.Reading.Refused;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityReaderTest {
    private final Locale locale = Locale.getDefault();

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(locale);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "60 mL | VOLUME | 6e-5 | mL",
                "60mL | VOLUME | 6e-5 | mL",
                "2.2e-5 m3 | VOLUME | 2.2e-5 | m3",
                "2.2E-5 m3 | VOLUME | 2.2e-5 | m3",
                "1.5 kW | POWER | 1500 | kW",
                "+1.5kW | POWER | 1500 | kW",
                ".5 kW | POWER | 500 | kW",
                "20 degC | TEMPERATURE | 293.15 | degC",
                "20\u00a0\u00b0C | TEMPERATURE | 293.15 | \u00b0C",
                "\u221210 degC | TEMPERATURE | 263.15 | degC",
                "0 K | TEMPERATURE | 0 | K",
                "-273.15 degC | TEMPERATURE | 0 | degC",
                "-459.67 degF | TEMPERATURE | 0 | degF",
                "10 K | TEMPERATURE_DIFFERENCE | 10 | K",
                "80 % | FRACTION | 0.8 | %",
                "80% | FRACTION | 0.8 | %",
                "0.8 | FRACTION | 0.8 | 1",
                "100e-6 m | LENGTH | 1e-4 | m",
                "0e-400 m | LENGTH | 0 | m",
                "3.3e-6 1/K | EXPANSION | 3.3e-6 | 1/K",
                "40 N/mm2 | PRESSURE | 4e7 | N/mm2",
                "-5 W | POWER | -5 | W"
            })
    void read(String text, Dimension dimension, double si, String unit) {
        for (String language : new String[] {"en-US", "de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"}) {
            Locale.setDefault(Locale.forLanguageTag(language));
            assertThat(QuantityReader.read(text, dimension)).as(language).isInstanceOfSatisfying(Read.class, read -> {
                assertThat(read.si()).isCloseTo(si, within(1e-15 * Math.max(1.0, Math.abs(si))));
                assertThat(read.unit().text()).isEqualTo(unit);
            });
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "1,5 kW | POWER | NUMBER_WITH_COMMA | 1.5",
                "1,5 | POWER | NUMBER_WITH_COMMA | 1.5",
                ",5 kW | POWER | NUMBER_WITH_COMMA | 0.5",
                "-0,125 | FRACTION | NUMBER_WITH_COMMA | -0.125",
                "2,2e-5 m3 | VOLUME | NUMBER_WITH_COMMA | 2.2e-5",
                "1.234,5 W | POWER | NUMBER_WITH_COMMA | 1234.5",
                "1,234.5 W | POWER | NUMBER_WITH_COMMA | 1234.5",
                "1,234,567 W | POWER | NUMBER_WITH_COMMA | 1234567",
                "1,500 W | POWER | NUMBER_WITH_UNCLEAR_COMMA | 1.500 or 1500",
                "1,, W | POWER | NUMBER_NOT_UNDERSTOOD | 1.5 kW",
                "1 500 W | POWER | NUMBER_WITH_BLANK | 1500",
                "1 234 567.5 W | POWER | NUMBER_WITH_BLANK | 1234567.5",
                "10^-5 m3 | VOLUME | NUMBER_POWER_WRITTEN_OUT | 1e-5",
                "2.2x10^-5 m3 | VOLUME | NUMBER_POWER_WRITTEN_OUT | 2.2e-5",
                "2.2 \u00d7 10^+5 Pa | PRESSURE | NUMBER_POWER_WRITTEN_OUT | 2.2e5",
                "NaN W | POWER | NUMBER_NOT_FINITE | 1.5 kW",
                "nan | FRACTION | NUMBER_NOT_FINITE | 80 %",
                "-Infinity W | POWER | NUMBER_NOT_FINITE | 1.5 kW",
                "inf W | POWER | NUMBER_NOT_FINITE | 1.5 kW",
                "0x10 W | POWER | NUMBER_NOT_UNDERSTOOD | 1.5 kW",
                "0x1p4 W | POWER | NUMBER_NOT_UNDERSTOOD | 1.5 kW",
                "1.2.3 W | POWER | NUMBER_NOT_UNDERSTOOD | 1.5 kW",
                "1_000 W | POWER | NUMBER_NOT_UNDERSTOOD | 1.5 kW",
                "5-10 W | POWER | NUMBER_NOT_UNDERSTOOD | 1.5 kW",
                "2e W | POWER | NUMBER_NOT_UNDERSTOOD | 1.5 kW",
                "1/2 in | LENGTH | NUMBER_NOT_UNDERSTOOD | 150 mm",
                "3 1 | FRACTION | NUMBER_NOT_UNDERSTOOD | 80 %",
                "about 5 W | POWER | NUMBER_NOT_UNDERSTOOD | 1.5 kW",
                "W | POWER | NUMBER_MISSING | 1.5 kW",
                "hot | TEMPERATURE | NUMBER_MISSING | 20 degC",
                "1e999 W | POWER | NUMBER_OUT_OF_REACH | 1e999 W",
                "1e308 MPa | PRESSURE | NUMBER_OUT_OF_REACH | 1e308 MPa",
                "1e-999 W | POWER | NUMBER_OUT_OF_REACH | 1e-999 W",
                "1e-323 um | LENGTH | NUMBER_OUT_OF_REACH | 1e-323 um",
                "60 | VOLUME | UNIT_MISSING | m3, L, mL, cm3, cc, gal",
                "3 kW | PRESSURE | UNIT_OF_OTHER_DIMENSION | is a power; a pressure is wanted",
                "10 degC | TEMPERATURE_DIFFERENCE | UNIT_OF_OTHER_DIMENSION | is a temperature; a temperature diff",
                "10 micron | LENGTH | UNIT_OF_OTHER_DIMENSION | is a pressure; a length is wanted",
                "0.5 m | FRACTION | UNIT_OF_OTHER_DIMENSION | %, no unit",
                "5 mtorr | PRESSURE | UNIT_UNKNOWN_NEAREST | `mTorr`",
                "5 torr | PRESSURE | UNIT_UNKNOWN_NEAREST | `Torr`",
                "5 millitorr | PRESSURE | UNIT_UNKNOWN_NEAREST | `mTorr`",
                "5 microns | PRESSURE | UNIT_UNKNOWN_NEAREST | `micron`",
                "5 microns | LENGTH | UNIT_UNKNOWN_NEAREST | `um`",
                "5 \u00b5m | LENGTH | UNIT_UNKNOWN_NEAREST | `um`",
                "20 C | TEMPERATURE | UNIT_UNKNOWN_NEAREST | `degC`",
                "20 k | TEMPERATURE | UNIT_UNKNOWN_NEAREST | `K`",
                "60 ml | VOLUME | UNIT_UNKNOWN_NEAREST | `mL`",
                "5 kw | POWER | UNIT_UNKNOWN_NEAREST | `kW`",
                "5 m\u00b2 | AREA | UNIT_UNKNOWN_NEAREST | `m2`",
                "5 W/m\u00b2K | HEAT_TRANSFER_COEFFICIENT | UNIT_UNKNOWN_NEAREST | `W/m2K`",
                "5 W/m2/K | HEAT_TRANSFER_COEFFICIENT | UNIT_UNKNOWN_NEAREST | `W/m2K`",
                "3e-6 /K | EXPANSION | UNIT_UNKNOWN_NEAREST | `1/K`",
                "3e-6 1/k | EXPANSION | UNIT_UNKNOWN_NEAREST | `1/K`",
                "1.5d W | POWER | UNIT_UNKNOWN | `d W`",
                "5 furlong | LENGTH | UNIT_UNKNOWN | m, cm, mm, um, in, ft",
                "-1 K | TEMPERATURE | BELOW_ABSOLUTE_ZERO | 0 K",
                "-300 degC | TEMPERATURE | BELOW_ABSOLUTE_ZERO | -273.15 degC",
                "-460 degF | TEMPERATURE | BELOW_ABSOLUTE_ZERO | -459.67 degF"
            })
    void refused(String text, Dimension dimension, MessageKey key, String said) {
        assertThat(QuantityReader.read(text, dimension)).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.fault().key()).isEqualTo(key);
            assertThat(refused.fault().text()).contains(said.replace('`', '"'));
            assertThat(refused.asWritten()).isEmpty();
        });
    }

    @ParameterizedTest
    @CsvSource({
        "10e-5 m3, 1e-4, 1e-5, 1e-4",
        "10E-5 m3, 1e-4, 1e-5, 1e-4",
        "10e3 m3, 1e4, 1e3, 1e4",
        "10e+3 m3, 1e4, 1e3, 1e4",
        "-10e-5 m3, -1e-4, -1e-5, -1e-4"
    })
    void slippedExponentNamesBothReadingsAndKeepsTheLiteralOne(String text, String written, String meant, double si) {
        assertThat(QuantityReader.read(text, Dimension.VOLUME)).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.fault().key()).isEqualTo(MessageKey.NUMBER_SLIPPED_EXPONENT);
            assertThat(refused.fault().arguments()).containsExactly(text, written, meant);
            assertThat(refused.asWritten().orElseThrow().si()).isEqualTo(si);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "\t", "\u00a0"})
    void emptyTextIsRefusedWithAnExample(String text) {
        assertThat(QuantityReader.read(text, Dimension.VOLUME))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.fault().text())
                                .isEqualTo("Nothing is written here; a volume is wanted, such as \"60 mL\"."));
    }

    @Test
    void messageShowsHostileTextOnOneShortLine() {
        for (String text :
                new String[] {"\u0000\u001b[2J\n\u202e", "1" + "0".repeat(1_000_000), "9".repeat(100) + "x\n"}) {
            String said = ((Refused) QuantityReader.read(text, Dimension.POWER))
                    .fault()
                    .text();
            assertThat(said).hasSizeLessThan(200).doesNotContainPattern("\\p{C}");
        }
    }
}
