package boilwright.report;

import boilwright.thermal.TimeEvent;
import java.util.Locale;
import java.util.Map;

/** What the events of a run are called in text, in pictures and on the screen. */
public final class EventWords {
    private static final Map<String, String> TITLES = Map.ofEntries(
            Map.entry("heat-on", "heat on"),
            Map.entry("degassed", "oil degassed"),
            Map.entry("first-vapour", "first vapour"),
            Map.entry("front-at-stage", "vapour front reaches"),
            Map.entry("jet-lit", "jet lights:"),
            Map.entry("jet-full", "jet at full flow:"),
            Map.entry("full-pumping", "all jets at full flow"),
            Map.entry("crossover-allowed", "crossover allowed"),
            Map.entry("limit-reached", "limit reached"),
            Map.entry("fault", "it fails"),
            Map.entry("battery-ends", "battery empty"),
            Map.entry("fuel-empty", "fuel used up"),
            Map.entry("heat-off", "heat off"),
            Map.entry("jet-lost", "jet lost:"),
            Map.entry("flow-zero", "vapour flow ends:"),
            Map.entry("jets-gone", "all jets gone"),
            Map.entry("air-allowed", "air may be let in"),
            Map.entry("touch-safe", "safe to touch"),
            Map.entry("water-may-stop", "water may stop"),
            Map.entry("backing-may-stop", "backing pump may stop"));

    private EventWords() {}

    /** The event in a few words, with its stage. */
    public static String title(TimeEvent event) {
        String title = TITLES.getOrDefault(event.id(), event.id().replace('-', ' '));
        if (event.stage().isEmpty()) {
            return title.endsWith(":") ? title.substring(0, title.length() - 1) : title;
        }
        return title + " " + event.stage();
    }

    /** A time as hours, minutes and seconds, to the nearest second. */
    public static String clock(double seconds) {
        long whole = Math.abs(Math.round(seconds));
        String sign = seconds <= -0.5 ? "-" : "";
        return String.format(Locale.ROOT, "%s%d:%02d:%02d", sign, whole / 3600, whole / 60 % 60, whole % 60);
    }
}
