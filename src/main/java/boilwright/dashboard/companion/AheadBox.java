package boilwright.dashboard.companion;

import boilwright.companion.RunView;
import boilwright.dashboard.text.WindowText;
import boilwright.sequence.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The clock, and what is still to come with how that was found. */
final class AheadBox extends HBox {
    private static final int MOST = 3;
    /** What is nearer than this is due, s. */
    private static final double DUE_S = 0.5;

    private final Label clock = new Label();
    private final Label from = Says.label("companion-from");
    private final List<Label> lines = new ArrayList<>();
    private final Label why = Says.label("companion-why");

    AheadBox() {
        getStyleClass().add("companion-ahead");
        setAlignment(Pos.CENTER_LEFT);
        clock.getStyleClass().add("companion-clock");
        clock.setId("companion-clock");
        clock.setMinWidth(Label.USE_PREF_SIZE);
        why.setId("companion-why");
        VBox ahead = new VBox();
        ahead.getStyleClass().add("companion-ahead-lines");
        for (int i = 0; i < MOST; i++) {
            Label line = Says.label(i == 0 ? "companion-ahead-first" : "companion-ahead-line");
            line.setId("companion-ahead-" + i);
            lines.add(line);
        }
        ahead.getChildren().addAll(lines);
        ahead.getChildren().add(why);
        HBox.setHgrow(ahead, Priority.ALWAYS);
        VBox time = new VBox(clock, from);
        time.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(time, ahead);
    }

    void show(RunView view, Instant now, ZoneId zone) {
        clock.setText(Says.clock(view.clockS()));
        String counted = view.clock()
                .map(c -> c == Clock.FROM_COLD ? "companion.from-cold" : "companion.from-hot")
                .orElse("companion.from-nothing");
        from.setText(WindowText.say(counted));
        clock.setAccessibleText(clock.getText() + ", " + from.getText());
        for (int i = 0; i < MOST; i++) {
            String words = "";
            if (i < view.remaining().size() && !view.ended()) {
                RunView.Ahead ahead = view.remaining().get(i);
                Instant at = now.plusMillis(Math.round(1000 * ahead.leftS()));
                words = ahead.leftS() < DUE_S
                        ? WindowText.say("companion.ahead.due", ahead.words())
                        : WindowText.say(
                                "companion.ahead", Says.span(ahead.leftS()), ahead.words(), Says.wall(at, zone));
            }
            Says.show(lines.get(i), words);
        }
        Says.show(why, view.ended() ? "" : view.why());
    }
}
