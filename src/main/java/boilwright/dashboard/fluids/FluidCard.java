package boilwright.dashboard.fluids;

import boilwright.dashboard.text.WindowText;
import boilwright.fluid.PropertyLine;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * One fluid in full: its name, its caution, every figure at a chosen temperature, and the chart of vapour pressures. Figures
 * and chart stand side by side where there is room; in a narrower page one of them is chosen.
 */
final class FluidCard extends VBox {
    /** Width from which figures and chart stand side by side, in letters. */
    private static final double WIDE_EMS = 84;

    private final Label title = new Label();
    private final Label caution = new Label();
    private final Label message = new Label();
    private final Button use = new Button();
    private final ToggleButton figures = new ToggleButton(WindowText.say("fluids.view.figures"));
    private final ToggleButton curves = new ToggleButton(WindowText.say("fluids.view.curves"));
    private final HBox views = new HBox(figures, curves);
    private final TemperatureChoice temperature = new TemperatureChoice(this::fill);
    private final DetailList details = new DetailList();
    private final Region chart;
    private final HBox body = new HBox();
    private List<PropertyLine> lines = List.of();
    private FluidRow row;

    /**
     * @param chart the chart of vapour pressures
     * @param use puts a fluid into the rig
     */
    FluidCard(Region chart, Consumer<FluidRow> use) {
        this.chart = chart;
        getStyleClass().add("fluid-card");
        title.getStyleClass().add("fluid-title");
        title.setId("fluids-title");
        title.setWrapText(true);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        this.use.setId("fluids-use");
        this.use.setMinWidth(USE_PREF_SIZE);
        this.use.setOnAction(event -> use.accept(row));
        HBox head = new HBox(title, views, this.use);
        head.getStyleClass().add("fluid-head");
        head.setAlignment(Pos.CENTER_LEFT);
        caution.getStyleClass().add("caution");
        caution.setId("fluids-caution");
        caution.setWrapText(true);
        message.getStyleClass().add("field-message");
        message.setWrapText(true);
        message.managedProperty().bind(message.textProperty().isNotEmpty());
        views();
        VBox.setVgrow(body, Priority.ALWAYS);
        body.getStyleClass().add("fluid-body");
        body.setMinHeight(0);
        for (Region part : List.of(head, caution, temperature)) {
            part.setMinHeight(USE_PREF_SIZE);
        }
        getChildren().addAll(head, message, caution, temperature, body);
        setVisible(false);
        widthProperty().addListener((property, before, now) -> arrange());
        caution.fontProperty().addListener((property, before, now) -> arrange());
        arrange();
    }

    private void views() {
        ToggleGroup group = new ToggleGroup();
        figures.setId("fluids-view-figures");
        curves.setId("fluids-view-curves");
        views.getStyleClass().add("fluid-views");
        views.setMinWidth(USE_PREF_SIZE);
        for (ToggleButton view : List.of(figures, curves)) {
            view.setToggleGroup(group);
            view.getStyleClass().add("small");
            // One of the two is always shown.
            view.setOnAction(event -> {
                view.setSelected(true);
                arrange();
            });
        }
        figures.getStyleClass().add("left-pill");
        curves.getStyleClass().add("right-pill");
        figures.setSelected(true);
    }

    private void arrange() {
        boolean wide = getWidth() > WIDE_EMS * caution.getFont().getSize();
        views.setVisible(!wide);
        views.setManaged(!wide);
        boolean withFigures = wide || figures.isSelected();
        for (Region part : List.of(temperature, caution)) {
            part.setVisible(withFigures);
            part.setManaged(withFigures);
        }
        List<Region> shown = wide ? List.of(details, chart) : List.of(figures.isSelected() ? details : chart);
        if (!body.getChildren().equals(shown)) {
            body.getChildren().setAll(shown);
        }
        for (Region part : shown) {
            part.setMinHeight(0);
            part.setPrefWidth(0);
            HBox.setHgrow(part, Priority.ALWAYS);
        }
    }

    /** Shows a fluid. */
    void show(FluidRow fluid, List<PropertyLine> known, String warning, boolean inRig) {
        boolean another = row == null || !row.id().equals(fluid.id());
        row = fluid;
        lines = known;
        title.setText(fluid.title());
        caution.setText(WindowText.say("pages.caution", warning));
        use.setText(WindowText.say(inRig ? "fluids.use.there" : "fluids.use"));
        use.setDisable(inRig);
        if (another) {
            message.setText("");
        }
        temperature.boilsAt(fluid.boilsK());
        setVisible(true);
        fill();
    }

    /** Says why a fluid was not taken; nothing takes it away. */
    void say(String words) {
        message.setText(words);
    }

    private void fill() {
        details.show(DetailLine.all(lines, temperature.temperatureK()));
    }
}
