package boilwright.dashboard.companion;

import boilwright.dashboard.text.WindowText;
import boilwright.sequence.Clock;
import boilwright.sequence.Moment;
import boilwright.sequence.PlanStep;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javafx.scene.control.Label;

/** Times and steps as this window words them. */
final class Says {
    private static final DateTimeFormatter WALL = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private Says() {}

    static String clock(double seconds) {
        return new Moment(Clock.FROM_COLD, Math.floor(seconds)).time();
    }

    static String wall(Instant time, ZoneId zone) {
        return WALL.format(time.atZone(zone));
    }

    static String day(Instant time, ZoneId zone) {
        return DAY.format(time.atZone(zone));
    }

    static String span(double seconds) {
        double whole = Math.rint(seconds);
        return whole < 60 ? (long) whole + " s" : QuantityWriter.writeAuto(whole, Dimension.TIME);
    }

    /** A difference of times with its sign. */
    static String difference(double seconds) {
        double whole = Math.rint(seconds);
        if (whole == 0) {
            return "0 s";
        }
        return (whole > 0 ? "+" : "\u2212") + clock(Math.abs(whole));
    }

    /** A step in the fewest words. */
    static String brief(PlanStep step) {
        return WindowText.say("companion.step." + step.action().id());
    }

    static String what(PlanStep step) {
        return step.words().what().isEmpty() ? brief(step) : step.words().what();
    }

    /** A wrapping label that is as tall as its words. */
    static Label label(String styleClass) {
        Label label = new Label();
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        return label;
    }

    /** Words, or nothing and no room taken. */
    static void show(Label label, String words) {
        label.setText(words);
        label.setVisible(!words.isEmpty());
        label.setManaged(!words.isEmpty());
    }
}
