package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.choice.SourceRow;
import boilwright.dashboard.chart.SeriesChart;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The choice of a heat source with a person at it. */
class WindowHeatChoiceTest extends AtTheWindow {
    @SuppressWarnings("unchecked")
    private TableView<SourceRow> table() {
        return open.find("source-table", TableView.class);
    }

    private SeriesChart chart() {
        return open.find("source-chart", SeriesChart.class);
    }

    private String text(String id) {
        return open.find(id, Label.class).getText();
    }

    private void sources() {
        share("neon-workshop", PageName.HEAT);
        open.answer();
        open.until("the sources", () -> table().getItems().size() > 10);
    }

    private void lookAtThePresentOne() {
        SourceRow present = table().getItems().stream()
                .filter(row -> row.id().equals("present"))
                .findFirst()
                .orElseThrow();
        open.onWindowsThread(() -> table().getSelectionModel().select(present));
    }

    @Test
    void sourcesStandSideBySideForTheNeonWorkshop() {
        sources();
        SourceRow first = table().getItems().get(0);
        assertThat(first.jetsFull()).isEqualTo(3);
        assertThat(text("heat-sentence")).contains(first.title());
        assertThat(text("heat-verdict")).contains("Recommended");
        assertThat(text("heat-powers")).contains("no power to set");
        assertThat(open.find("power-strip", Node.class).getAccessibleText()).contains("set now 1.50 kW");
        // the pump's need, the present source, the one looked at; where they cross, and where the jets are full
        assertThat(chart().data().series()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(chart().data().spots()).hasSizeGreaterThanOrEqualTo(3);
        open.onWindowsThread(() -> {
            TableColumn<SourceRow, ?> delivers = table().getColumns().stream()
                    .filter(column -> "heat.column.delivers".equals(column.getId()))
                    .findFirst()
                    .orElseThrow();
            delivers.setSortType(TableColumn.SortType.DESCENDING);
            table().getSortOrder().setAll(java.util.List.of(delivers));
            table().sort();
        });
        double most = table().getItems().get(0).check().needed().heatAvailableW();
        assertThat(table().getItems()).allMatch(row -> row.check().needed().heatAvailableW() <= most);
        lookAtThePresentOne();
        assertThat(text("heat-sentence")).contains("domed glass contact");
        assertThat(table().isFocusTraversable()).isTrue();
        open.act(Action.THEME);
        assertThat(open.find("power-strip", Node.class).isFocusTraversable()).isTrue();
    }

    /** The answer to what is not known of a source takes long: many rigs are computed for it. */
    @Test
    @Tag("deep")
    void theBandOfASourceAndWhatToMeasureFirstAreShown() {
        sources();
        lookAtThePresentOne();
        open.until("a band", () -> !chart().data().bands().isEmpty());
        open.until("what to measure", () -> !text("heat-measure-first").contains("are drawn when"));
    }
}
