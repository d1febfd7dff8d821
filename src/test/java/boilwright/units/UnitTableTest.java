package boilwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.units.Reading.Read;
import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitTableTest {
    static Stream<UnitSpelling> everySpelling() {
        return Arrays.stream(Dimension.values()).flatMap(dimension -> UnitTable.accepted(dimension).stream());
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionHasUniqueSpellingsWithItsSiUnitAmongThem(Dimension dimension) {
        assertThat(UnitTable.accepted(dimension))
                .extracting(UnitSpelling::text)
                .doesNotHaveDuplicates()
                .contains(dimension.siUnit());
        UnitSpelling si = UnitTable.find(dimension.siUnit(), dimension).orElseThrow();
        assertThat(si.toSi(3.7)).isEqualTo(3.7);
        assertThat(si.fromSi(3.7)).isEqualTo(3.7);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyExampleIsReadAndDescribed(Dimension dimension) {
        assertThat(QuantityReader.read(dimension.example(), dimension)).isInstanceOf(Read.class);
        assertThat(dimension.inWords()).matches("an? [a-z ]+");
    }

    @Test
    void noWordsWithoutADimension() {
        assertThat(ResourceBundle.getBundle("boilwright.text.dimensions", Locale.ROOT)
                        .keySet())
                .hasSize(2 * Dimension.values().length);
    }

    @ParameterizedTest
    @MethodSource("everySpelling")
    void aSpellingFindsItself(UnitSpelling unit) {
        assertThat(UnitTable.find(unit.text())).contains(unit);
        assertThat(UnitTable.find(unit.text(), unit.dimension())).containsSame(unit);
        assertThat(unit).hasToString(unit.text());
    }

    @Test
    void kelvinIsATemperatureAndADifference() {
        assertThat(UnitTable.find("K"))
                .extracting(UnitSpelling::dimension)
                .containsExactly(Dimension.TEMPERATURE, Dimension.TEMPERATURE_DIFFERENCE);
        assertThat(UnitTable.find("furlong")).isEmpty();
    }
}
