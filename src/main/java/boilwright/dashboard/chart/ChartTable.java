package boilwright.dashboard.chart;

import boilwright.dashboard.text.WindowText;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

/** The very numbers of a chart as a table. */
final class ChartTable extends TableView<Integer> {
    private static final double FIRST_PX = 150;
    private static final double LEAST_PX = 104;
    private static final double CHARACTER_PX = 9;

    private ChartRows rows;

    ChartTable() {
        getStyleClass().add("series-table");
        // The picture decides how large the chart is; otherwise it would jump when the table comes.
        setMinSize(0, 0);
        setPrefSize(0, 0);
        setPlaceholder(new Label(WindowText.say("chart.nothing")));
    }

    /** Shows these numbers in these units. */
    void show(ChartData data, Choice choice) {
        rows = ChartRows.of(data, WindowText.say("chart.table.low"), WindowText.say("chart.table.high"));
        getColumns().clear();
        setAccessibleText(WindowText.say("chart.table.accessible", data.title()));
        add(ChartWords.xTitle(data, choice), row -> ChartWords.place(rows.place(row), data, choice.xUnit()));
        for (int k = 0; k < rows.columns(); k++) {
            int column = k;
            String title = choice.yUnit().isPlain()
                    ? rows.title(k)
                    : WindowText.say("chart.axis", rows.title(k), choice.yUnit().text());
            add(title, row -> rows.has(row, column) ? ChartWords.bare(rows.value(row, column), choice.yUnit()) : "");
        }
        setItems(FXCollections.observableList(
                IntStream.range(0, rows.size()).boxed().toList()));
    }

    private interface Words {
        String of(int row);
    }

    private void add(String title, Words words) {
        // The unit below the title keeps the columns narrow.
        String head = title.replace(", ", "\n");
        TableColumn<Integer, String> column = new TableColumn<>(head);
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(words.of(cell.getValue())));
        column.setSortable(false);
        column.setReorderable(false);
        int longest = head.lines().mapToInt(String::length).max().orElse(0);
        column.setPrefWidth(getColumns().isEmpty() ? FIRST_PX : Math.max(LEAST_PX, CHARACTER_PX * longest));
        column.getStyleClass().add("figure");
        getColumns().add(column);
    }

    /** Leads to the row of a place. */
    void lead(double place) {
        int row = rows == null || !Double.isFinite(place) ? -1 : rows.before(place);
        if (row >= 0) {
            getSelectionModel().select(row);
            scrollTo(Math.max(0, row - 3));
        }
    }
}
