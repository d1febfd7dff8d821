package boilwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.units.Reading.Read;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
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

    @Property(tries = 100, seed = "811")
    void exactTextReadsBackInEverySpelling(@ForAll @DoubleRange(min = -9.0, max = 9.0) double exponent) {
        double si = Math.pow(10.0, exponent);
        everySpelling().forEach(unit -> {
            String text = QuantityWriter.exact(si, unit);
            double tolerance = unit.hasOffset() ? 1e-12 * Math.max(si, 300.0) : 1e-12 * si;
            assertThat(QuantityReader.read(text, unit.dimension()))
                    .as(text)
                    .isInstanceOfSatisfying(Read.class, read -> {
                        assertThat(read.si()).isCloseTo(si, within(tolerance));
                        assertThat(read.unit().text()).isEqualTo(unit.text());
                    });
        });
    }

    @Property(tries = 100, seed = "812")
    void numbersWrittenByAPersonSurviveReadingAndWriting(@ForAll @IntRange(min = 1, max = 5_000_000) int thousandths) {
        String number = BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString();
        everySpelling().forEach(unit -> {
            String written = number + (unit.isPlain() ? "" : " " + unit.text());
            Read read = (Read) QuantityReader.read(written, unit.dimension());
            assertThat(QuantityWriter.exact(read.si(), unit)).isEqualTo(written);
        });
    }
}
