package boilwright.spread;

import boilwright.thermal.EventKind;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What makes an event of one run the same as an event of another.
 *
 * @param kind what happens
 * @param stage the stage it belongs to; empty for the whole pump
 * @param what which limit, for one that is reached; else empty
 * @param occurrence 0 for the first of its kind in a run, 1 for the second
 */
public record EventKey(EventKind kind, String stage, String what, int occurrence) {
    /** The keys of the events of one run, in their order. */
    public static List<EventKey> of(List<TimeEvent> events) {
        Map<EventKey, Integer> seen = new HashMap<>();
        List<EventKey> keys = new ArrayList<>();
        for (TimeEvent event : events) {
            String what = event.kind() == EventKind.LIMIT_REACHED ? event.reason() : "";
            EventKey first = new EventKey(event.kind(), event.stage(), what, 0);
            int occurrence = seen.merge(first, 1, Integer::sum) - 1;
            keys.add(new EventKey(event.kind(), event.stage(), what, occurrence));
        }
        return keys;
    }
}
