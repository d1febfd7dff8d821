package boilwright.dashboard.water;

import boilwright.answers.WaterAnswer;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.VBox;

/** A thing in the circuit with its figures. */
final class ElementBox extends VBox {
    private ElementBox(String id, String name, List<String> lines, String told) {
        setId(id);
        getStyleClass().add("circuit-box");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(told);
        Tooltip.install(this, tip(told));
        setOnMousePressed(event -> requestFocus());
        getChildren().add(line(name, "circuit-name"));
        lines.forEach(text -> getChildren().add(line(text, "circuit-figure")));
    }

    private static Tooltip tip(String text) {
        Tooltip tip = new Tooltip(text);
        tip.setWrapText(true);
        tip.setMaxWidth(420);
        return tip;
    }

    private static Label line(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setMaxWidth(Double.MAX_VALUE);
        return label;
    }

    /**
     * An element of the cooling.
     *
     * @param density of the water where the flow is counted, at the supply, kg/m3
     */
    static ElementBox of(int index, WaterAnswer.Element element, double density) {
        String between = WindowText.say(
                "water.circuit.between",
                WaterWords.degrees(element.inletK()),
                WaterWords.temperature(element.outletK()));
        String flow = WaterWords.flow(element.flowKgPerS() / density);
        String heat = WaterWords.power(element.heatW());
        String pressure = WaterWords.pressure(element.pressureDropPa());
        StringBuilder told = new StringBuilder(WindowText.say(
                "water.circuit.element",
                element.name(),
                WaterWords.temperature(element.inletK()),
                WaterWords.temperature(element.outletK()),
                flow,
                heat,
                pressure));
        element.coefficient()
                .ifPresent(h -> told.append(' ')
                        .append(WindowText.say(
                                "water.circuit.coefficient",
                                QuantityWriter.writeAuto(h, Dimension.HEAT_TRANSFER_COEFFICIENT))));
        element.reynolds()
                .ifPresent(re -> told.append(' ')
                        .append(WindowText.say("water.circuit.reynolds", Long.toString(Math.round(re)))));
        return new ElementBox(
                "water-element-" + index,
                element.name(),
                List.of(between, flow, heatLine(element), pressure),
                told.toString());
    }

    private static String heatLine(WaterAnswer.Element element) {
        double watts = element.heatW();
        return watts < 0
                ? WindowText.say("water.circuit.lost", WaterWords.power(-watts))
                : WindowText.say("water.circuit.heat", WaterWords.power(watts));
    }

    /** The supply. */
    static ElementBox ofSupply(String name, List<String> lines) {
        ElementBox box = new ElementBox("water-supply", name, lines, name + ". " + String.join(", ", lines));
        box.getStyleClass().add("circuit-supply");
        return box;
    }
}
