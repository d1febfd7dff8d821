package boilwright.dashboard.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TicksTest {
    @Property(tries = 100, seed = "1251")
    void stepsAreOneTwoOrFiveAndCoverTheRange(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double low,
            @ForAll @IntRange(min = -6, max = 6) int power,
            @ForAll @IntRange(min = 2, max = 20) int most) {
        double high = low + 3.7 * Math.pow(10, power);
        List<Ticks.Tick> ticks = Ticks.linear(low, high, most);
        double slack = 1e-8 * (high - low) + 1e-9 * Math.abs(low);
        assertThat(ticks).hasSizeBetween(most > 3 ? 2 : 0, most + 1);
        for (Ticks.Tick tick : ticks) {
            assertThat(tick.value()).isBetween(low - slack, high + slack);
            assertThat(Double.parseDouble(tick.text())).isEqualTo(tick.value());
        }
        for (int i = 1; i < ticks.size(); i++) {
            BigDecimal step = new BigDecimal(ticks.get(i).text())
                    .subtract(new BigDecimal(ticks.get(i - 1).text()));
            assertThat(step.stripTrailingZeros().unscaledValue().intValueExact())
                    .isIn(1, 2, 5);
        }
    }

    @Test
    void numbersAreWrittenAsShortAsTheyCanBeRead() {
        assertThat(texts(Ticks.linear(0, 1, 5))).containsExactly("0", "0.2", "0.4", "0.6", "0.8", "1");
        assertThat(texts(Ticks.linear(-20, 50, 4))).containsExactly("-20", "0", "20", "40");
        assertThat(texts(Ticks.linear(0, 3e8, 3))).containsExactly("0", "1e8", "2e8", "3e8");
        assertThat(texts(Ticks.linear(0, 2.5e-7, 3))).containsExactly("0", "1e-7", "2e-7");
    }

    @Test
    void decadesAreNumberedAndThinnedWhenThereAreMany() {
        assertThat(numbered(Ticks.logarithmic(0.01, 100, 6))).containsExactly("0.01", "0.1", "1", "10", "100");
        assertThat(Ticks.logarithmic(0.01, 100, 6)).hasSize(4 * 9 + 1);
        assertThat(numbered(Ticks.logarithmic(1e-9, 1e3, 5))).containsExactly("1e-9", "1e-6", "0.001", "1", "1000");
        assertThat(numbered(Ticks.logarithmic(1, 100, 12))).containsExactly("1", "2", "5", "10", "20", "50", "100");
    }

    @Test
    void withinOneDecadeTheStepsAreEvenAndNeverZero() {
        assertThat(texts(Ticks.logarithmic(21, 29, 5))).containsExactly("22", "24", "26", "28");
        assertThat(Ticks.logarithmic(0.4, 2, 3)).allMatch(tick -> tick.value() > 0);
    }

    @Test
    void clocksCountInTheirOwnSteps() {
        assertThat(Ticks.clockStep(70)).isEqualTo(120);
        assertThat(Ticks.clockStep(3_000)).isEqualTo(3600);
        assertThat(Ticks.clockStep(100_000)).isEqualTo(172_800);
        assertThat(texts(Ticks.clock(30, 4000, 1800))).containsExactly("0:30:00", "1:00:00");
        assertThat(Ticks.clock(-61)).isEqualTo("-0:01:01");
        assertThat(Ticks.clock(-0.2)).isEqualTo("0:00:00");
    }

    private static List<String> texts(List<Ticks.Tick> ticks) {
        return ticks.stream().map(Ticks.Tick::text).toList();
    }

    private static List<String> numbered(List<Ticks.Tick> ticks) {
        return texts(ticks).stream().filter(text -> !text.isEmpty()).toList();
    }
}
