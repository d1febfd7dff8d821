package boilwright.dashboard.companion;

import boilwright.companion.RunView;
import boilwright.dashboard.text.WindowText;
import boilwright.sequence.Clock;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Computed against actual: steps first, then readings. */
final class RunTable extends GridPane {
    private static final int COLUMNS = 4;

    /**
     * A line.
     *
     * @param style what it is: a head, the step of now, or any other
     * @param cells texts
     */
    private record Line(String style, List<String> cells) {}

    private List<Line> shown = List.of();

    RunTable() {
        setId("companion-table");
        getStyleClass().add("companion-table");
        for (int i = 0; i < COLUMNS; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHgrow(i == 0 ? Priority.ALWAYS : Priority.NEVER);
            column.setHalignment(i == 0 ? HPos.LEFT : HPos.RIGHT);
            if (i > 0) {
                column.setMinWidth(USE_PREF_SIZE);
            }
            getColumnConstraints().add(column);
        }
    }

    void show(RunView view) {
        List<Line> lines = new ArrayList<>();
        if (!view.readings().isEmpty()) {
            lines.add(head("companion.table.reading", "companion.table.read"));
            for (int i = view.readings().size() - 1; i >= 0; i--) {
                lines.add(reading(view.readings().get(i)));
            }
        }
        Clock before = null;
        for (RunView.StepView step : view.steps()) {
            Clock clock = step.step().moment().clock();
            if (clock != before) {
                lines.add(head(
                        clock == Clock.FROM_COLD ? "companion.table.start" : "companion.table.stop",
                        "companion.table.done"));
                before = clock;
            }
            lines.add(step(step, view));
        }
        // made anew only when some word changed: this is asked every second
        if (!lines.equals(shown)) {
            shown = lines;
            fill();
        }
    }

    private static Line head(String title, String actual) {
        return new Line(
                "companion-table-head",
                List.of(
                        WindowText.say(title),
                        WindowText.say("companion.table.computed"),
                        WindowText.say(actual),
                        WindowText.say("companion.table.difference")));
    }

    private static Line step(RunView.StepView step, RunView view) {
        boolean now = view.current().filter(c -> c.number() == step.number()).isPresent();
        String actual = "";
        if (step.doneS().isPresent()) {
            actual = Says.clock(step.doneS().getAsDouble());
        } else if (step.done()) {
            actual = WindowText.say("companion.table.yes");
        } else if (step.expectedS().isPresent() && !now) {
            actual = WindowText.say(
                    "companion.table.about", Says.clock(step.expectedS().getAsDouble()));
        }
        String mark = step.done() ? "o" : now ? ">" : step.overdue() ? "!" : "\u2007";
        return new Line(
                now ? "companion-table-now" : "companion-table-line",
                List.of(
                        mark + " " + step.number() + " " + Says.brief(step.step()),
                        step.step().moment().time(),
                        actual,
                        step.lateS().isPresent() ? Says.difference(step.lateS().getAsDouble()) : ""));
    }

    private static Line reading(RunView.ReadingView reading) {
        Dimension dimension = reading.kind().dimension();
        String at = reading.clockS().isPresent() ? Says.clock(reading.clockS().getAsDouble()) + " " : "";
        OptionalDouble computed = reading.computed();
        return new Line(
                "companion-table-line",
                List.of(
                        at + reading.kind().title(),
                        computed.isPresent() ? QuantityWriter.writeAuto(computed.getAsDouble(), dimension) : "\u2013",
                        QuantityWriter.writeAuto(reading.value(), dimension),
                        computed.isPresent() ? difference(reading.value(), computed.getAsDouble(), dimension) : ""));
    }

    private static String difference(double value, double computed, Dimension dimension) {
        double off = value - computed;
        if (dimension == Dimension.TEMPERATURE) {
            return sign(off) + QuantityWriter.writeAuto(Math.abs(off), Dimension.TEMPERATURE_DIFFERENCE);
        }
        if (computed == 0) {
            return off == 0 ? "0 %" : "";
        }
        return sign(off) + Math.round(100 * Math.abs(off / computed)) + " %";
    }

    private static String sign(double off) {
        return off < 0 ? "\u2212" : "+";
    }

    private void fill() {
        getChildren().clear();
        for (int row = 0; row < shown.size(); row++) {
            Line line = shown.get(row);
            for (int column = 0; column < COLUMNS; column++) {
                Label label = new Label(line.cells().get(column));
                label.getStyleClass().add(line.style());
                if (column == 0) {
                    label.setWrapText(true);
                }
                label.setMinHeight(USE_PREF_SIZE);
                add(label, column, row);
            }
        }
    }
}
