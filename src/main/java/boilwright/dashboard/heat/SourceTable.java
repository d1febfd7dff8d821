package boilwright.dashboard.heat;

import boilwright.choice.CompareAnswer;
import boilwright.choice.SourceRow;
import boilwright.dashboard.text.WindowText;
import boilwright.spread.Bands.MarginBand;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;

/** Heat sources, a line each, to be sorted by any column; small bars beside the figures that are compared. */
final class SourceTable extends TableView<SourceRow> {
    private static final double LEAST_COLUMN = 56;
    /** A bar is full at this many times the heat needed. */
    private static final double FULL_BAR = 2.5;

    private final Map<String, MarginBand> bands = new HashMap<>();
    private String recommended = "";

    SourceTable() {
        setId("source-table");
        getStyleClass().add("dense");
        setAccessibleText(WindowText.say("heat.table"));
        setPlaceholder(new Label(WindowText.say("heat.table.waits")));
        setColumnResizePolicy(CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        TableColumn<SourceRow, String> name = new TableColumn<>(WindowText.say("heat.column.source"));
        name.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(mark(cell.getValue())));
        name.setMinWidth(170);
        name.setPrefWidth(230);
        getColumns().add(name);
        TableColumn<SourceRow, Double> margin =
                figure("heat.column.margin", SourceRow::ratio, row -> ratio(row.ratio()));
        margin.setCellFactory(column -> new BarCell());
        margin.setMinWidth(150);
        getColumns().add(margin);
        getColumns()
                .add(figure(
                        "heat.column.delivers",
                        row -> row.check().needed().heatAvailableW(),
                        row -> QuantityWriter.writeAuto(row.check().needed().heatAvailableW(), Dimension.POWER)));
        getColumns().add(figure("heat.column.full", SourceRow::jetsFull, row -> Integer.toString(row.jetsFull())));
        getColumns()
                .add(figure(
                        "heat.column.after",
                        row -> row.fullAfterS().orElse(Double.POSITIVE_INFINITY),
                        row -> row.fullAfterS().isPresent()
                                ? QuantityWriter.writeAuto(row.fullAfterS().getAsDouble(), Dimension.TIME)
                                : WindowText.say("heat.never")));
        getColumns()
                .add(figure("heat.column.oil", row -> row.oilRatio().orElse(Double.NaN), row -> ratio(row.oilRatio())));
        getColumns()
                .add(figure(
                        "heat.column.glass",
                        row -> row.glassRatio().orElse(Double.NaN),
                        row -> ratio(row.glassRatio())));
    }

    private static TableColumn<SourceRow, Double> figure(
            String key, ToDoubleFunction<SourceRow> value, Function<SourceRow, String> text) {
        TableColumn<SourceRow, Double> column = new TableColumn<>(WindowText.say(key));
        column.setId(key);
        column.setMinWidth(LEAST_COLUMN);
        column.getStyleClass().add("figure-column");
        column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(value.applyAsDouble(cell.getValue())));
        column.setComparator(Comparator.naturalOrder());
        column.setCellFactory(of -> new TableCell<>() {
            @Override
            protected void updateItem(Double item, boolean empty) {
                super.updateItem(item, empty);
                SourceRow row = empty ? null : getTableRow().getItem();
                setText(row == null ? "" : text.apply(row));
            }
        });
        return column;
    }

    private String mark(SourceRow row) {
        String words = WindowText.say("heat.state." + row.state().id());
        String own = row.id().equals(recommended) ? WindowText.say("heat.recommended") : words;
        return own + "  " + row.title();
    }

    /** Shows the rows, recommended one first. */
    void show(CompareAnswer answer) {
        recommended = answer.recommendedId().orElse("");
        bands.clear();
        getItems()
                .setAll(answer.rows().stream()
                        .sorted(Comparator.comparing(
                                        (SourceRow row) -> !row.id().equals(recommended))
                                .thenComparing(SourceRow::state)
                                .thenComparing(row -> -row.ratio()))
                        .toList());
        getSelectionModel().select(0);
    }

    /** Shows how far the heat margin of a source spreads. */
    void spread(String source, MarginBand band) {
        bands.put(source, band);
        refresh();
    }

    private static String ratio(OptionalDouble value) {
        return value.isPresent() ? ratio(value.getAsDouble()) : "-";
    }

    private static String ratio(double value) {
        return value > 99 ? ">99" : String.format(Locale.ROOT, "%.2f", value);
    }

    private final class BarCell extends TableCell<SourceRow, Double> {
        private final ProgressBar bar = new ProgressBar();
        private final Label figure = new Label();
        private final HBox box = new HBox(bar, figure);

        BarCell() {
            bar.getStyleClass().add("vacuum-bar");
            bar.setPrefWidth(60);
            bar.setMinWidth(40);
            box.setSpacing(6);
            box.setAlignment(Pos.CENTER_LEFT);
            figure.setMinWidth(USE_PREF_SIZE);
        }

        @Override
        protected void updateItem(Double item, boolean empty) {
            super.updateItem(item, empty);
            SourceRow row = empty ? null : getTableRow().getItem();
            setGraphic(row == null ? null : box);
            if (row != null) {
                bar.setProgress(Math.max(0, Math.min(1, row.ratio() / FULL_BAR)));
                MarginBand band = bands.get(row.id());
                String text = ratio(row.ratio());
                figure.setText(
                        band == null || band.ratio().isEmpty()
                                ? text
                                : WindowText.say(
                                        "heat.band",
                                        text,
                                        ratio(band.ratio().low()),
                                        ratio(band.ratio().high())));
                bar.setAccessibleText(figure.getText());
            }
        }
    }
}
