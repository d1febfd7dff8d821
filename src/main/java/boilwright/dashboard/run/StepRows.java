package boilwright.dashboard.run;

import boilwright.dashboard.text.WindowText;
import boilwright.sequence.Clock;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanStep;
import boilwright.sequence.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The steps of a plan one below the other; the chosen one shows what must be seen, what else, why, and its caution. */
final class StepRows extends VBox {
    private static final char FIGURE_SPACE = '\u2007';

    private record Row(ToggleButton head, VBox details) {}

    private final List<Row> rows = new ArrayList<>();
    private IntConsumer chosen = step -> {};

    StepRows() {
        setId("run-steps");
        getStyleClass().add("plan-steps");
    }

    /** Whom to tell when a step is chosen, by its index; -1 when none is any more. */
    void onChosen(IntConsumer listener) {
        chosen = listener;
    }

    void show(Plan plan) {
        getChildren().clear();
        rows.clear();
        Clock clock = null;
        for (int i = 0; i < plan.steps().size(); i++) {
            PlanStep step = plan.steps().get(i);
            if (step.moment().clock() != clock) {
                clock = step.moment().clock();
                Label title = new Label(WindowText.say(key(plan.variant(), clock)));
                title.getStyleClass().add("plan-clock");
                getChildren().add(title);
            }
            Row row = row(i, step);
            rows.add(row);
            getChildren().addAll(row.head(), row.details());
        }
    }

    private static String key(Variant variant, Clock clock) {
        if (clock == Clock.FROM_COLD) {
            return "run.steps.start";
        }
        return variant == Variant.STANDBY ? "run.steps.pause" : "run.steps.stop";
    }

    private Row row(int i, PlanStep step) {
        ToggleButton head = new ToggleButton(
                (i + 1) + "   " + step.moment().time() + "   " + step.words().what());
        head.setId("run-step-" + (i + 1));
        head.getStyleClass().setAll("toggle-button", "plan-step");
        head.setWrapText(true);
        head.setAlignment(Pos.CENTER_LEFT);
        head.setMaxWidth(Double.MAX_VALUE);
        head.setMinHeight(USE_PREF_SIZE);
        VBox details = new VBox();
        details.getStyleClass().add("plan-details");
        say(details, "run.step.see", step.words().hold(), "plan-see");
        String late = step.latestS().isPresent()
                ? WindowText.say(
                        "run.step.late",
                        new boilwright.sequence.Moment(
                                        step.moment().clock(), step.latestS().getAsDouble())
                                .time())
                : WindowText.say("run.step.else");
        if (!step.words().otherwise().isEmpty()) {
            details.getChildren().add(label(late + " " + step.words().otherwise(), "plan-else"));
        }
        say(details, "run.step.why", step.words().why(), "basis");
        say(details, "pages.caution", step.words().caution(), "caution");
        details.setVisible(false);
        details.managedProperty().bind(details.visibleProperty());
        head.setOnAction(event -> {
            select(head.isSelected() ? i : -1);
            chosen.accept(head.isSelected() ? i : -1);
        });
        VBox.setVgrow(details, Priority.NEVER);
        return new Row(head, details);
    }

    /** A number as wide as any of two figures. */
    private static String number(int step) {
        return step < 10 ? FIGURE_SPACE + Integer.toString(step) : Integer.toString(step);
    }

    private static void say(VBox box, String key, String words, String style) {
        if (!words.isEmpty()) {
            box.getChildren().add(label(WindowText.say(key, words), style));
        }
    }

    private static Label label(String words, String style) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }

    /** Opens one step and closes the others; -1 closes all. */
    void select(int chosenStep) {
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).head().setSelected(i == chosenStep);
            rows.get(i).details().setVisible(i == chosenStep);
        }
    }
}
