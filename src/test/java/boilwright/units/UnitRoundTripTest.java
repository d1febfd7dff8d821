package boilwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.units.Reading.Read;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Every spelling, written and read back. Apart from the other tests, as another engine runs it and reports it. */
class UnitRoundTripTest {
    @Property(seed = "811")
    void exactTextReadsBackInEverySpelling(@ForAll @DoubleRange(min = -9.0, max = 9.0) double exponent) {
        double si = Math.pow(10.0, exponent);
        UnitTableTest.everySpelling().forEach(unit -> {
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

    @Property(seed = "812")
    void numbersWrittenByAPersonSurviveReadingAndWriting(@ForAll @IntRange(min = 1, max = 5_000_000) int thousandths) {
        String number = BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString();
        UnitTableTest.everySpelling().forEach(unit -> {
            String written = number + (unit.isPlain() ? "" : " " + unit.text());
            Read read = (Read) QuantityReader.read(written, unit.dimension());
            assertThat(QuantityWriter.exact(read.si(), unit)).isEqualTo(written);
        });
    }
}
