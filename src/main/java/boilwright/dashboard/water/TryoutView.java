package boilwright.dashboard.water;

import boilwright.answers.WaterTrial;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Two sliders, what would come of their values, and the way into the rig. */
final class TryoutView extends VBox {
    private static final double LITRE_PER_MIN = 1e-3 / 60;

    private final Tryout tryout;
    private final Slider temperature = slider("water-try-temperature", "water.try.temperature");
    private final Slider flow = slider("water-try-flow", "water.try.flow");
    private final Label temperatureFigure = figure();
    private final Label flowFigure = figure();
    private final Label whatIf = new Label();
    private final Label refused = new Label();
    private final Button take = new Button(WindowText.say("water.try.take"));
    private final Button back = new Button(WindowText.say("water.try.back"));
    private final Tooltip why = new Tooltip();
    private boolean quiet;

    TryoutView(Tryout tryout) {
        this.tryout = tryout;
        getStyleClass().add("tryout");
        whatIf.setId("water-what-if");
        whatIf.setWrapText(true);
        whatIf.setMinHeight(USE_PREF_SIZE);
        refused.setWrapText(true);
        refused.getStyleClass().add("field-message");
        refused.managedProperty().bind(refused.textProperty().isNotEmpty());
        GridPane grid = new GridPane();
        grid.getStyleClass().add("tryout-grid");
        ColumnConstraints names = new ColumnConstraints();
        ColumnConstraints sliders = new ColumnConstraints();
        sliders.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(names, sliders);
        grid.addRow(0, name("water.try.temperature", temperature), temperature, temperatureFigure);
        grid.addRow(1, name("water.try.flow", flow), flow, flowFigure);
        getChildren().addAll(grid, whatIf, buttons(), refused);
        temperature.setBlockIncrement(0.5);
        flow.setBlockIncrement(0.1 * LITRE_PER_MIN);
        temperature.valueProperty().addListener((property, before, now) -> moved());
        flow.valueProperty().addListener((property, before, now) -> moved());
        tryout.temperatureKProperty().addListener((property, before, now) -> follow());
        tryout.flowM3PerSProperty().addListener((property, before, now) -> follow());
        tryout.outcomeProperty().addListener((property, before, now) -> say());
        tryout.refusalProperty().addListener((property, before, now) -> say());
    }

    private HBox buttons() {
        take.setId("water-take");
        take.setOnAction(event -> refused.setText(tryout.take()));
        back.setId("water-try-back");
        back.setOnAction(event -> tryout.reset());
        // A disabled button hears no mouse; what is around it tells why.
        StackPane around = new StackPane(take);
        around.setId("water-take-why");
        Tooltip.install(around, why);
        why.setWrapText(true);
        why.setMaxWidth(420);
        HBox row = new HBox(around, back);
        row.getStyleClass().add("form-buttons");
        return row;
    }

    private static Slider slider(String id, String key) {
        Slider slider = new Slider();
        slider.setId(id);
        slider.setAccessibleText(WindowText.say(key));
        slider.setMaxWidth(Double.MAX_VALUE);
        return slider;
    }

    private static Label name(String key, Slider slider) {
        Label label = new Label(WindowText.say(key));
        label.setLabelFor(slider);
        label.setMinWidth(USE_PREF_SIZE);
        return label;
    }

    private static Label figure() {
        Label label = new Label();
        label.getStyleClass().add("tryout-figure");
        label.setAlignment(Pos.CENTER_RIGHT);
        return label;
    }

    /** Begins anew with a rig's own values. */
    void begin(WaterFound found) {
        quiet = true;
        tryout.begin(found);
        SupplyHandle handle = tryout.handle();
        range(temperature, handle.lowestK(), handle.highestK());
        range(flow, Math.min(0.1 * LITRE_PER_MIN, tryout.ownFlow()), Math.max(LITRE_PER_MIN, 3 * tryout.ownFlow()));
        boolean water = !handle.temperaturePath().isEmpty();
        temperature.setDisable(!water || handle.fixedWhy().isPresent());
        flow.setDisable(!water);
        refused.setText("");
        quiet = false;
        follow();
        say();
    }

    private static void range(Slider slider, double low, double high) {
        // Never crossed on the way, or the slider would move its value.
        slider.setMin(Math.min(low, slider.getMin()));
        slider.setMax(high);
        slider.setMin(low);
    }

    private void moved() {
        if (!quiet) {
            tryout.temperatureKProperty().set(temperature.getValue());
            tryout.flowM3PerSProperty().set(flow.getValue());
        }
    }

    private void follow() {
        if (quiet || tryout.handle() == null) {
            return;
        }
        quiet = true;
        temperature.setValue(tryout.temperatureKProperty().get());
        flow.setValue(tryout.flowM3PerSProperty().get());
        quiet = false;
        temperatureFigure.setText(WaterWords.temperature(tryout.triedK()));
        flowFigure.setText(WaterWords.flow(tryout.triedFlow()));
        Optional<String> not = tryout.whyNot();
        take.setDisable(not.isPresent());
        why.setText(not.orElseGet(() -> WindowText.say("water.try.take.explanation")));
        take.setAccessibleHelp(why.getText());
        back.setDisable(!tryout.isTemperatureMoved() && !tryout.isFlowMoved());
    }

    private void say() {
        WaterTrial now = tryout.outcomeProperty().get();
        if (!tryout.refusalProperty().get().isEmpty()) {
            whatIf.setText(tryout.refusalProperty().get());
        } else if (now != null) {
            whatIf.setText(words(now));
        }
    }

    /** What comes of a trial, in one line. */
    static String words(WaterTrial trial) {
        List<String> parts = new ArrayList<>();
        trial.waterOutK().ifPresent(k -> parts.add(WindowText.say("water.try.out", WaterWords.temperature(k))));
        trial.filmMarginK()
                .ifPresent(k -> parts.add(WindowText.say(
                        "water.try.film", QuantityWriter.writeAuto(k, Dimension.TEMPERATURE_DIFFERENCE))));
        String duty = WaterWords.power(trial.dutyW());
        parts.add(
                trial.capacityW().isPresent()
                        ? WindowText.say(
                                "water.try.duty-of",
                                duty,
                                WaterWords.power(trial.capacityW().getAsDouble()))
                        : WindowText.say("water.try.duty", duty));
        trial.worst().ifPresent(m -> parts.add(WindowText.say("water.try.worst", WaterWords.margin(m))));
        return WindowText.say(
                "water.try.what-if",
                WaterWords.temperature(trial.inletK()),
                WaterWords.flow(trial.flowM3PerS()),
                String.join("; ", parts));
    }
}
