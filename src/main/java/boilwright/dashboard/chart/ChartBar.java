package boilwright.dashboard.chart;

import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.StringConverter;

/** The line above a chart: its title, units, the table and everything else in one menu. */
final class ChartBar extends HBox {
    private final Label title = new Label();
    private final ComboBox<String> titles = new ComboBox<>();
    private final ComboBox<UnitSpelling> xUnit = new ComboBox<>();
    private final ComboBox<UnitSpelling> yUnit = new ComboBox<>();
    private final ToggleButton table = new ToggleButton(WindowText.say("chart.table"));
    private final MenuButton more = new MenuButton(WindowText.say("chart.more"));
    private final CheckMenuItem xLog = new CheckMenuItem();
    private final CheckMenuItem yLog = new CheckMenuItem();
    private final Consumer<Choice> chosen;
    private boolean showing;

    /**
     * @param named hears which of several charts is wanted
     * @param chosen hears of other units and axes
     * @param gestures zoom
     * @param export writes a file
     */
    ChartBar(Consumer<String> named, Consumer<Choice> chosen, ChartGestures gestures, Consumer<ChartFormat> export) {
        this.chosen = chosen;
        getStyleClass().add("series-bar");
        setAlignment(Pos.CENTER_LEFT);
        title.getStyleClass().add("series-title");
        titles.getStyleClass().add("series-titles");
        titles.setAccessibleText(WindowText.say("chart.titles"));
        titles.valueProperty().addListener((property, before, now) -> {
            if (!showing && now != null) {
                named.accept(now);
            }
        });
        title.managedProperty().bind(title.visibleProperty());
        titles.managedProperty().bind(titles.visibleProperty());
        titles.visibleProperty().bind(title.visibleProperty().not());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        for (ComboBox<UnitSpelling> box : List.of(xUnit, yUnit)) {
            box.getStyleClass().add("series-unit");
            box.setConverter(new UnitWords());
            box.managedProperty().bind(box.visibleProperty());
            box.valueProperty().addListener((property, before, now) -> tell());
        }
        table.setId("chart-table");
        more.setId("chart-more");
        table.setAccessibleText(WindowText.say("chart.table.help"));
        more.getItems()
                .addAll(
                        item("chart.zoom-in", gestures::zoomIn),
                        item("chart.zoom-out", gestures::zoomOut),
                        item("chart.zoom-whole", gestures::whole),
                        new SeparatorMenuItem(),
                        xLog,
                        yLog,
                        new SeparatorMenuItem());
        for (CheckMenuItem log : List.of(xLog, yLog)) {
            log.selectedProperty().addListener((property, before, now) -> tell());
        }
        for (ChartFormat format : ChartFormat.values()) {
            MenuItem item = item("chart.export." + format.ending(), () -> export.accept(format));
            item.setId("chart-export-" + format.ending());
            more.getItems().add(item);
        }
        getChildren().addAll(title, titles, gap, xUnit, yUnit, table, more);
    }

    private static MenuItem item(String key, Runnable what) {
        MenuItem item = new MenuItem(WindowText.say(key));
        item.setOnAction(event -> what.run());
        return item;
    }

    private void tell() {
        if (!showing && yUnit.getValue() != null && xUnit.getValue() != null) {
            chosen.accept(new Choice(xUnit.getValue(), yUnit.getValue(), xLog.isSelected(), yLog.isSelected()));
        }
    }

    /**
     * Shows what is chosen.
     *
     * @param all titles of all the charts that are offered
     */
    void show(List<String> all, ChartData data, Choice choice) {
        showing = true;
        title.setText(data.title());
        title.setVisible(all.size() < 2);
        if (!titles.getItems().equals(all)) {
            titles.getItems().setAll(all);
        }
        titles.setValue(data.title());
        offer(xUnit, data.x(), choice.xUnit());
        offer(yUnit, data.y(), choice.yUnit());
        xUnit.setVisible(!data.x().isTime() && xUnit.getItems().size() > 1);
        yUnit.setVisible(yUnit.getItems().size() > 1);
        xLog.setText(WindowText.say("chart.log", data.x().title()));
        yLog.setText(WindowText.say("chart.log", data.y().title()));
        xLog.setVisible(data.x().dimension() != Dimension.TIME);
        xLog.setSelected(choice.xLog());
        yLog.setSelected(choice.yLog());
        showing = false;
    }

    private static void offer(ComboBox<UnitSpelling> box, Axis axis, UnitSpelling unit) {
        List<UnitSpelling> units = UnitTable.accepted(axis.dimension());
        if (!box.getItems().equals(units)) {
            box.getItems().setAll(units);
        }
        box.setValue(unit);
        box.setAccessibleText(WindowText.say("chart.unit", axis.title()));
    }

    /** Units as they are written; a plain number has no unit to write and gets a word. */
    private static final class UnitWords extends StringConverter<UnitSpelling> {
        @Override
        public String toString(UnitSpelling unit) {
            return unit == null ? "" : unit.isPlain() ? WindowText.say("chart.unit.plain") : unit.text();
        }

        @Override
        public UnitSpelling fromString(String text) {
            throw new UnsupportedOperationException("units are chosen, not typed");
        }
    }

    ToggleButton table() {
        return table;
    }
}
