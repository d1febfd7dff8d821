package boilwright.dashboard.fluids;

import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;
import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The temperature at which a fluid's figures are shown: where it boils in the pump, a cool room, or one that is typed. */
final class TemperatureChoice extends VBox {
    private final TextField input = new TextField();
    private final Label message = new Label();
    private final Runnable changed;
    private OptionalDouble chosenK = OptionalDouble.empty();
    private double boilsK = Double.NaN;
    private String shown = "";

    /**
     * @param changed told when another temperature is chosen
     */
    TemperatureChoice(Runnable changed) {
        this.changed = changed;
        getStyleClass().add("fluid-temperature");
        Label title = new Label(WindowText.say("fluids.temperature"));
        title.setLabelFor(input);
        title.setMinWidth(USE_PREF_SIZE);
        input.setId("fluids-temperature");
        input.setPrefColumnCount(7);
        input.setMinWidth(USE_PREF_SIZE);
        input.setAccessibleText(title.getText());
        input.setTooltip(new Tooltip(WindowText.say("fluids.temperature.explanation")));
        input.setOnAction(event -> take());
        input.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take();
            }
        });
        HBox entry = new HBox(title, input);
        entry.setAlignment(Pos.CENTER_LEFT);
        entry.getStyleClass().add("fluid-temperature-entry");
        FlowPane line = new FlowPane(
                entry,
                button("fluids.temperature.boiling", OptionalDouble.empty()),
                button("fluids.temperature.room", OptionalDouble.of(FluidRow.COOL_ROOM_K)));
        line.getStyleClass().add("fluid-temperature-line");
        message.getStyleClass().add("field-message");
        message.setWrapText(true);
        message.managedProperty().bind(message.textProperty().isNotEmpty());
        getChildren().addAll(line, message);
    }

    private Button button(String key, OptionalDouble temperatureK) {
        Button button = new Button(WindowText.say(key));
        button.setId(key.replace('.', '-'));
        button.getStyleClass().add("small");
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> choose(temperatureK));
        return button;
    }

    /** The temperature, K; where the fluid boils when nothing else was chosen. */
    double temperatureK() {
        return chosenK.orElse(boilsK);
    }

    /** Another fluid is shown, or it boils elsewhere; a cool room when it does not say where it boils. */
    void boilsAt(OptionalDouble temperatureK) {
        boilsK = temperatureK.orElse(FluidRow.COOL_ROOM_K);
        write();
    }

    /** Takes a temperature that was pointed at, K; one that is no number, or the one there is, changes nothing. */
    void pointAt(double kelvin) {
        if (!Double.isNaN(kelvin) && kelvin != temperatureK()) {
            choose(OptionalDouble.of(kelvin));
        }
    }

    private void choose(OptionalDouble temperatureK) {
        chosenK = temperatureK;
        write();
        changed.run();
    }

    private void write() {
        shown = QuantityWriter.writeAuto(temperatureK(), Dimension.TEMPERATURE);
        input.setText(shown);
        message.setText("");
    }

    private void take() {
        String text = input.getText().strip();
        if (text.equals(shown)) {
            message.setText("");
            return;
        }
        Reading reading = QuantityReader.read(text, Dimension.TEMPERATURE);
        if (reading instanceof Reading.Read read) {
            chosenK = OptionalDouble.of(read.si());
            shown = text;
            message.setText("");
            changed.run();
        } else {
            message.setText(((Reading.Refused) reading).fault().text());
        }
    }
}
