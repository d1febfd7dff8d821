package boilwright.dashboard.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class ThinningTest {
    @Property(tries = 100, seed = "1252")
    void everyColumnKeepsItsFirstLowestHighestAndLastPoint(
            @ForAll @Size(min = 1, max = 400) List<@DoubleRange(min = -1000, max = 1000) Double> heights) {
        Thinning thin = new Thinning();
        Map<Integer, double[]> wanted = new HashMap<>();
        for (int i = 0; i < heights.size(); i++) {
            double x = i / 37.0;
            double y = heights.get(i);
            thin.add(i, x, y);
            double[] now = wanted.computeIfAbsent((int) x, c -> new double[] {y, y, y, y});
            now[1] = Math.min(now[1], y);
            now[2] = Math.max(now[2], y);
            now[3] = y;
        }
        thin.flush();
        Map<Integer, double[]> found = new HashMap<>();
        for (int i = 0; i < thin.count(); i++) {
            assertThat(i == 0 || thin.xs()[i] > thin.xs()[i - 1]).isTrue();
            double y = thin.ys()[i];
            double[] now = found.computeIfAbsent((int) thin.xs()[i], c -> new double[] {y, y, y, y});
            now[1] = Math.min(now[1], y);
            now[2] = Math.max(now[2], y);
            now[3] = y;
        }
        assertThat(found.keySet()).isEqualTo(wanted.keySet());
        wanted.forEach((column, ends) -> assertThat(found.get(column)).containsExactly(ends));
        assertThat(thin.count()).isLessThanOrEqualTo(4 * wanted.size());
    }
}
