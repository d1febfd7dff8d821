package boilwright.dashboard.companion;

import boilwright.companion.RunView;
import boilwright.dashboard.text.WindowText;
import boilwright.sequence.Clock;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Computed against actual: steps first, then readings. */
final class RunTable extends GridPane {
    private static final int COLUMNS = 6;
    /** The column of names; before it stand a mark and a number. */
    private static final int NAME = 2;
    /** Most readings that are shown; all are in the log. */
    private static final int MOST_READINGS = 5;

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
            column.setHgrow(i == NAME ? Priority.ALWAYS : Priority.NEVER);
            column.setHalignment(i == 0 || i == NAME ? HPos.LEFT : HPos.RIGHT);
            if (i != NAME) {
                column.setMinWidth(USE_PREF_SIZE);
            }
            getColumnConstraints().add(column);
        }
    }

    void show(RunView view) {
        List<Line> lines = new ArrayList<>();
        List<RunView.ReadingView> readings = view.readings();
        if (!readings.isEmpty()) {
            lines.add(head("companion.table.reading", "companion.table.read"));
            for (int i = readings.size() - 1; i >= Math.max(0, readings.size() - MOST_READINGS); i--) {
                lines.add(reading(readings.get(i)));
            }
        }
        boolean stopping = view.clock().equals(Optional.of(Clock.FROM_HOT));
        steps(view, stopping ? Clock.FROM_HOT : Clock.FROM_COLD, lines);
        steps(view, stopping ? Clock.FROM_COLD : Clock.FROM_HOT, lines);
        // made anew only when some word changed: this is asked every second
        if (!lines.equals(shown)) {
            shown = lines;
            fill();
        }
    }

    private static void steps(RunView view, Clock clock, List<Line> lines) {
        List<RunView.StepView> steps = view.steps().stream()
                .filter(step -> step.step().moment().clock() == clock)
                .toList();
        if (!steps.isEmpty()) {
            lines.add(head(
                    clock == Clock.FROM_COLD ? "companion.table.start" : "companion.table.stop",
                    "companion.table.done"));
            steps.forEach(step -> lines.add(step(step, view)));
        }
    }

    private static Line head(String title, String actual) {
        return new Line(
                "companion-table-head",
                List.of(
                        "",
                        "",
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
            // not the running time: the table would change every second
            double expected = step.expectedS().getAsDouble();
            actual = expected <= view.clockS()
                    ? WindowText.say("companion.due")
                    : WindowText.say("companion.table.about", Says.clock(expected));
        }
        String mark = step.done() ? "o" : now ? ">" : step.overdue() ? "!" : "";
        return new Line(
                now ? "companion-table-now" : "companion-table-line",
                List.of(
                        mark,
                        Integer.toString(step.number()),
                        Says.brief(step.step()),
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
                        "",
                        "",
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
            List<String> cells = shown.get(row).cells();
            boolean numbered = !cells.get(1).isEmpty();
            for (int column = numbered ? 0 : NAME; column < COLUMNS; column++) {
                Label label = new Label(cells.get(column));
                label.getStyleClass().add(shown.get(row).style());
                label.setMinHeight(USE_PREF_SIZE);
                GridPane.setValignment(label, VPos.TOP);
                if (column == NAME) {
                    label.setWrapText(true);
                } else if (column > NAME) {
                    label.getStyleClass().add("companion-table-figure");
                }
                if (column == NAME && !numbered) {
                    add(label, 0, row, NAME + 1, 1);
                } else {
                    add(label, column, row);
                }
            }
        }
    }
}
