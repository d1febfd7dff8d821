package boilwright.dashboard.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.units.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChartRowsTest {
    private static final Axis X = Axis.of("flow", Dimension.VOLUME_FLOW);
    private static final Axis Y = Axis.of("pressure", Dimension.PRESSURE);

    @Test
    void curvesAtTheSamePlacesAreTheRowsThemselves() {
        ChartData data = ChartScene.temperatures(3, 500);
        ChartRows rows = ChartRows.of(data, "low", "high");
        assertThat(rows.size()).isEqualTo(500);
        for (int column = 0; column < 3; column++) {
            Series one = data.series().get(column);
            assertThat(rows.title(column)).isEqualTo(one.title());
            for (int row = 0; row < 500; row++) {
                assertThat(rows.place(row)).isEqualTo(one.x()[row]);
                assertThat(rows.value(row, column)).isEqualTo(one.y()[row]);
            }
        }
    }

    @Test
    void curvesAtDifferentPlacesAreMergedAndJumpsKeepBothRows() {
        Series one = new Series("one", new double[] {0, 1, 1, 3}, new double[] {10, 11, 21, 23});
        Series other = new Series("other", new double[] {1, 2}, new double[] {-1, Double.NaN});
        Band band = new Band("range", new double[] {3}, new double[] {5}, new double[] {6});
        ChartRows rows =
                ChartRows.of(ChartData.of("t", X, Y, List.of(one, other)).withBands(List.of(band)), "low", "high");
        assertThat(rows.columns()).isEqualTo(4);
        assertThat(rows.title(3)).isEqualTo("range, high");
        assertThat(rows.size()).isEqualTo(5);
        assertThat(List.of(rows.place(0), rows.place(1), rows.place(2), rows.place(3), rows.place(4)))
                .containsExactly(0.0, 1.0, 1.0, 2.0, 3.0);
        assertThat(rows.value(1, 0)).isEqualTo(11);
        assertThat(rows.value(2, 0)).isEqualTo(21);
        assertThat(rows.has(1, 1)).isTrue();
        assertThat(rows.has(2, 1)).isFalse();
        assertThat(rows.has(3, 1)).isTrue();
        assertThat(rows.value(3, 1)).isNaN();
        assertThat(rows.value(4, 3)).isEqualTo(6);
        assertThat(rows.before(1.5)).isEqualTo(2);
        assertThat(rows.before(-1)).isEqualTo(-1);
    }

    @Test
    void aCurveThatGoesBackIsNoCurve() {
        assertThatThrownBy(() -> new Series("back", new double[] {0, 2, 1}, new double[3]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("back");
        assertThatThrownBy(() -> new Series("short", new double[] {0, 1}, new double[3]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Band("odd", new double[] {Double.NaN}, new double[1], new double[1]))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
