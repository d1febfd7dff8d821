package boilwright.report;

import boilwright.thermal.EventKind;
import boilwright.thermal.TimeEvent;
import java.util.Locale;

/** What the events of a run are called in text, in pictures and on the screen. */
public final class EventWords {
    private EventWords() {}

    /** The event in a few words, with its stage. */
    public static String title(TimeEvent event) {
        String title = title(event.kind());
        if (event.stage().isEmpty()) {
            return title.endsWith(":") ? title.substring(0, title.length() - 1) : title;
        }
        return title + " " + event.stage();
    }

    private static String title(EventKind kind) {
        return switch (kind) {
            case HEAT_ON -> "heat on";
            case DEGASSED -> "oil degassed";
            case FIRST_VAPOUR -> "first vapour";
            case FRONT_AT_STAGE -> "vapour front reaches";
            case JET_LIT -> "jet lights:";
            case JET_FULL -> "jet at full flow:";
            case FULL_PUMPING -> "all jets at full flow";
            case CROSSOVER_ALLOWED -> "crossover allowed";
            case LIMIT_REACHED -> "limit reached";
            case FAULT -> "it fails";
            case WATER_STOPS -> "water stops";
            case BATTERY_ENDS -> "battery empty";
            case FUEL_EMPTY -> "fuel used up";
            case HEAT_OFF -> "heat off";
            case JET_LOST -> "jet lost:";
            case FLOW_ZERO -> "vapour flow ends:";
            case JETS_GONE -> "all jets gone";
            case AIR_ALLOWED -> "air may be let in";
            case TOUCH_SAFE -> "safe to touch";
            case WATER_MAY_STOP -> "water may stop";
            case BACKING_MAY_STOP -> "backing pump may stop";
        };
    }

    /** A time as hours, minutes and seconds, to the nearest second. */
    public static String clock(double seconds) {
        long whole = Math.abs(Math.round(seconds));
        String sign = seconds <= -0.5 ? "-" : "";
        return String.format(Locale.ROOT, "%s%d:%02d:%02d", sign, whole / 3600, whole / 60 % 60, whole % 60);
    }
}
