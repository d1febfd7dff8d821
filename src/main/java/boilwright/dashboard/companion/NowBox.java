package boilwright.dashboard.companion;

import boilwright.companion.RunView;
import boilwright.dashboard.text.WindowText;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The step to do now, in large type, and those that come next. */
final class NowBox extends VBox {
    private static final int MOST_NEXT = 3;

    private final Label head = Says.label("companion-head");
    private final Label what = Says.label("companion-what");
    private final Label see = Says.label("companion-see");
    private final Label latest = Says.label("companion-latest");
    private final Label caution = Says.label("companion-caution");
    private final Label nextHead = Says.label("companion-head");
    private final Label next = Says.label("companion-next");

    NowBox() {
        getStyleClass().add("companion-now");
        what.setId("companion-what");
        see.setId("companion-see");
        next.setId("companion-next");
        nextHead.setText(WindowText.say("companion.next"));
        getChildren().addAll(head, what, see, latest, caution, nextHead, next);
    }

    void show(RunView view) {
        if (view.current().isEmpty() || view.ended()) {
            head.setText(WindowText.say("companion.now.none"));
            what.setText(WindowText.say(view.ended() ? "companion.now.ended" : "companion.now.done"));
            for (Label label : List.of(see, latest, caution, next)) {
                Says.show(label, "");
            }
            Says.show(nextHead, "");
            return;
        }
        RunView.StepView now = view.current().get();
        head.setText(WindowText.say(
                "companion.now",
                Integer.toString(now.number()),
                Integer.toString(view.steps().size())));
        what.setText(Says.what(now.step()));
        String hold = now.step().words().hold();
        Says.show(see, hold.isEmpty() ? "" : WindowText.say("companion.see", hold));
        Says.show(latest, latest(now));
        String hurt = now.step().words().caution();
        Says.show(caution, hurt.isEmpty() ? "" : WindowText.say("companion.caution", hurt));
        String after = view.steps().stream()
                .filter(step -> step.number() > now.number() && !step.done())
                .limit(MOST_NEXT)
                .map(step -> line(step, view.clockS()))
                .collect(Collectors.joining("\n"));
        Says.show(next, after);
        Says.show(nextHead, after.isEmpty() ? "" : WindowText.say("companion.next"));
    }

    private static String latest(RunView.StepView now) {
        String instead = now.step().words().otherwise();
        if (now.step().latestS().isEmpty()) {
            return instead.isEmpty() ? "" : WindowText.say("companion.else", instead);
        }
        String by = Says.clock(now.step().latestS().getAsDouble());
        return WindowText.say(now.overdue() ? "companion.overdue" : "companion.not-by", by, instead)
                .strip();
    }

    private static String line(RunView.StepView step, double nowS) {
        // a figure's width of blank, so that one figure stands under two
        String number = (step.number() < 10 ? "\u2007" : "") + step.number();
        boolean due = step.expectedS().isPresent() && step.expectedS().getAsDouble() <= nowS;
        String when = due
                ? WindowText.say("companion.due")
                : Says.clock(step.expectedS().orElse(step.step().moment().atS()));
        return WindowText.say("companion.next.line", number, when, Says.brief(step.step()));
    }
}
