package boilwright.dashboard.vacuum;

import boilwright.answers.VacuumAnswer;
import boilwright.answers.VacuumWords;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.vacuum.SourceShare;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Where the pressure at the gauge comes from: a bar for each source, largest first. */
final class SourceBars extends GridPane {
    SourceBars() {
        setId("vacuum-sources");
        getStyleClass().addAll("figures", "vacuum-sources");
        ColumnConstraints names = new ColumnConstraints();
        ColumnConstraints bars = new ColumnConstraints();
        ColumnConstraints shares = new ColumnConstraints();
        ColumnConstraints rest = new ColumnConstraints();
        names.setHgrow(Priority.ALWAYS);
        names.setPercentWidth(38);
        rest.setPercentWidth(36);
        getColumnConstraints().setAll(names, bars, shares, rest);
    }

    void show(VacuumAnswer answer) {
        getChildren().clear();
        int row = 0;
        for (SourceShare share : answer.end().sources()) {
            String name = VacuumWords.name(share.source(), answer.end());
            String part = QuantityWriter.writeAuto(share.share(), Dimension.FRACTION);
            Label title = new Label(name);
            title.getStyleClass().add("figure-name");
            title.setWrapText(true);
            title.setMinHeight(USE_PREF_SIZE);
            ProgressBar bar = new ProgressBar(share.share());
            bar.getStyleClass().add("vacuum-bar");
            bar.setAccessibleText(name + ", " + part);
            title.setLabelFor(bar);
            Label figure = new Label(part);
            figure.getStyleClass().add("figure");
            figure.setMinWidth(USE_PREF_SIZE);
            Label gas = new Label(
                    share.source().flow() > 0
                            ? WindowText.say(
                                    "vacuum.source.gas",
                                    gas(share.source().flow()),
                                    gas(share.source().low()),
                                    gas(share.source().high()))
                            : QuantityWriter.writeAuto(share.atGaugePa(), Dimension.PRESSURE));
            gas.getStyleClass().add("figure-name");
            gas.setWrapText(true);
            gas.setMinHeight(USE_PREF_SIZE);
            addRow(row++, title, bar, figure, gas);
        }
    }

    private static String gas(double flow) {
        return QuantityWriter.writeAuto(flow, Dimension.GAS_FLOW);
    }
}
