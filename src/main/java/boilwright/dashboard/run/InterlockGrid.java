package boilwright.dashboard.run;

import boilwright.answers.Say;
import boilwright.dashboard.text.WindowText;
import boilwright.drill.Interlock;
import boilwright.units.QuantityWriter;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** The trips that a rig should have: where they stand, how long they may wait, and how the rig stands with them. */
final class InterlockGrid extends GridPane {
    private static final int COLUMNS = 6;

    InterlockGrid() {
        setId("run-interlocks");
        getStyleClass().addAll("figures", "interlocks");
        ColumnConstraints last = new ColumnConstraints();
        last.setHgrow(Priority.ALWAYS);
        for (int i = 0; i < COLUMNS - 1; i++) {
            getColumnConstraints().add(new ColumnConstraints());
        }
        getColumnConstraints().add(last);
    }

    void show(List<Interlock> interlocks) {
        getChildren().clear();
        int row = 0;
        addRow(
                row++,
                head("run.interlock.watches"),
                head("run.interlock.usual"),
                head("run.interlock.trip"),
                head("run.interlock.resets"),
                head("run.interlock.within"),
                head("run.interlock.standing"));
        for (Interlock lock : interlocks) {
            String set = lock.setPoint().isPresent()
                    ? QuantityWriter.writeAuto(lock.setPoint().getAsDouble(), lock.dimension())
                    : "-";
            Label standing =
                    new Label(WindowText.say("run.interlock." + lock.standing().id()));
            standing.getStyleClass().add(lock.standing().isWanting() ? "interlock-wanting" : "interlock-fine");
            addRow(
                    row++,
                    name(lock.title()),
                    figure(QuantityWriter.writeAuto(lock.usual(), lock.dimension())),
                    figure(set),
                    figure(QuantityWriter.writeAuto(lock.hysteresis(), lock.differenceDimension())),
                    figure(
                            lock.longestDelayS().isPresent()
                                    ? Say.time(lock.longestDelayS().getAsDouble())
                                    : "-"),
                    standing);
            Label words = new Label(lock.sentence());
            words.setWrapText(true);
            words.setMinHeight(USE_PREF_SIZE);
            words.getStyleClass().add("basis");
            add(words, 0, row++, COLUMNS, 1);
        }
    }

    private static Label head(String key) {
        Label label = new Label(WindowText.say(key));
        label.getStyleClass().add("figure-name");
        return label;
    }

    private static Label name(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("block-title");
        return label;
    }

    private static Label figure(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("figure");
        label.setMinWidth(USE_PREF_SIZE);
        return label;
    }
}
