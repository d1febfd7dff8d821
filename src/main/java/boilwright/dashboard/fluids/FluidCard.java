package boilwright.dashboard.fluids;

import boilwright.dashboard.chart.SeriesChart;
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

    private static final double FIGURES_SHARE = 0.53;
    /** Width below which the buttons stand below the name, in letters. */
    private static final double SMALL_EMS = 48;

    private final Label title = new Label();
    private final Label caution = new Label();
    private final Label message = new Label();
    private final Button use = new Button();
    private final ToggleButton figures = new ToggleButton(WindowText.say("fluids.view.figures"));
    private final ToggleButton curves = new ToggleButton(WindowText.say("fluids.view.curves"));
    private final HBox views = new HBox(figures, curves);
    private final HBox buttons = new HBox(views, use);
    private final HBox head = new HBox(title, buttons);
    private final TemperatureChoice temperature = new TemperatureChoice(this::fill);
    private final DetailList details = new DetailList();
    private final SeriesChart chart;
    private final HBox body = new HBox();
    private List<PropertyLine> lines = List.of();
    private FluidRow row;

    /**
     * @param chart the chart of vapour pressures
     * @param use puts a fluid into the rig
     */
    FluidCard(SeriesChart chart, Consumer<FluidRow> use) {
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
        head.getStyleClass().add("fluid-head");
        head.setAlignment(Pos.CENTER_LEFT);
        buttons.getStyleClass().add("fluid-head");
        buttons.setAlignment(Pos.CENTER_LEFT);
        views.setAlignment(Pos.CENTER_LEFT);
        caution.getStyleClass().add("caution");
        caution.setId("fluids-caution");
        caution.setWrapText(true);
        message.getStyleClass().add("field-message");
        message.setWrapText(true);
        message.managedProperty().bind(message.textProperty().isNotEmpty());
        views();
        VBox.setVgrow(body, Priority.ALWAYS);
        body.getStyleClass().add("fluid-body");
        for (Region part : List.of(head, caution, temperature)) {
            part.setMinHeight(USE_PREF_SIZE);
        }
        getChildren().addAll(head, message, caution, temperature, body);
        setVisible(false);
        // One temperature for both: the chart's cursor and the figures.
        chart.cursorXProperty().addListener((property, before, now) -> temperature.pointAt(now.doubleValue()));
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
        boolean small = getWidth() < SMALL_EMS * caution.getFont().getSize();
        // Only when it has to be: what is moved loses the focus.
        if (small == head.getChildren().contains(buttons)) {
            head.getChildren().remove(buttons);
            getChildren().remove(buttons);
            if (small) {
                getChildren().add(1, buttons);
            } else {
                head.getChildren().add(buttons);
            }
        }
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
            part.setMinSize(0, 0);
            part.setPrefWidth(getWidth() * (part == details ? FIGURES_SHARE : 1 - FIGURES_SHARE));
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
        double atK = temperature.temperatureK();
        details.show(DetailLine.all(lines, atK));
        chart.cursorXProperty().set(atK);
    }
}
