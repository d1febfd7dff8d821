package boilwright.dashboard.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class LabelsTest {
    @Property(tries = 100, seed = "1253")
    void namesBesideThePlotNeverLieOverEachOther(
            @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0, max = 300) Double> wanted) {
        double[] best = wanted.stream().mapToDouble(Double::doubleValue).toArray();
        double[] places = LabelSpread.apart(best, 16, 0, 300);
        double[] sorted = places.clone();
        Arrays.sort(sorted);
        assertThat(sorted[0]).isGreaterThanOrEqualTo(8 - 1e-6);
        assertThat(sorted[sorted.length - 1]).isLessThanOrEqualTo(292 + 1e-6);
        for (int i = 1; i < sorted.length; i++) {
            assertThat(sorted[i] - sorted[i - 1]).isGreaterThan(16 - 1e-6);
        }
        for (int i = 0; i < best.length; i++) {
            for (int k = 0; k < best.length; k++) {
                assertThat(best[i] < best[k] && places[i] > places[k]).isFalse();
            }
        }
    }

    @Test
    void aNameWithRoomStaysWhereItBelongsAndMoreThanFitStandEvenly() {
        assertThat(LabelSpread.apart(new double[] {200, 50}, 16, 0, 300)).containsExactly(200, 50);
        assertThat(LabelSpread.apart(new double[] {100, 100}, 16, 0, 300)).containsExactly(92, 108);
        double[] tight = LabelSpread.apart(new double[] {5, 5, 5, 5}, 16, 0, 40);
        assertThat(tight).containsExactly(new double[] {5, 15, 25, 35}, Offset.offset(1e-9));
    }

    @Property(tries = 100, seed = "1254")
    void namesOfEventsLieOverNoNameAndNoStem(
            @ForAll @Size(min = 1, max = 25) List<@DoubleRange(min = 100, max = 700) Double> stems) {
        double[] x = stems.stream().mapToDouble(Double::doubleValue).toArray();
        double[] widths = new double[x.length];
        Arrays.setAll(widths, i -> 40 + 17 * (i % 5));
        MarkLanes.Place[] places = MarkLanes.place(x, widths, 3, 100, 700, 6);
        assertThat(places[0].lane()).isNotNegative();
        for (int i = 0; i < x.length; i++) {
            if (places[i].lane() < 0) {
                continue;
            }
            double from = places[i].toLeft() ? x[i] - widths[i] : x[i];
            double to = from + widths[i];
            assertThat(from).isGreaterThanOrEqualTo(100 - 1e-9);
            assertThat(to).isLessThanOrEqualTo(700 + 1e-9);
            for (int k = 0; k < x.length; k++) {
                if (k == i || places[k].lane() < places[i].lane()) {
                    continue;
                }
                assertThat(x[k] > from && x[k] < to)
                        .as("stem %s through the name of %s", k, i)
                        .isFalse();
                if (places[k].lane() == places[i].lane()) {
                    double left = places[k].toLeft() ? x[k] - widths[k] : x[k];
                    assertThat(left < to && from < left + widths[k]).isFalse();
                }
            }
        }
    }

    @Test
    void theMoreImportantNameGetsTheRoomAndThoseOutOfViewNone() {
        double[] x = {300, 301, 302, 50};
        double[] widths = {590, 590, 590, 590};
        MarkLanes.Place[] places = MarkLanes.place(x, new double[] {390, 390, 390, 10}, 1, 100, 700, 6);
        assertThat(places[0].lane()).isZero();
        assertThat(places[1].lane()).isNegative();
        assertThat(places[2].lane()).isNegative();
        assertThat(places[3].lane()).isNegative();
        assertThat(MarkLanes.place(x, widths, 5, 100, 700, 6)).allMatch(place -> place.lane() < 0);
    }
}
