package boilwright.spread;

import boilwright.answers.MarginId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The bands of an uncertainty run by margin and event, to be shown beside the values of one answer. Immutable. */
public final class Bands {
    /** No bands: none were asked for. */
    public static final Bands NONE = new Bands(0, Map.of(), Map.of());

    private final long samples;
    private final Map<MarginId, MarginBand> margins;
    private final Map<EventKey, EventBand> events;

    /**
     * How far a margin spreads.
     *
     * @param value of its value, SI
     * @param ratio of its ratio to the limit
     * @param failing how often the ratio is below 1, of the samples in which it is known
     */
    public record MarginBand(Band value, Band ratio, Chance failing) {}

    /**
     * How far the time of an event spreads.
     *
     * @param timeS of its time, s; an end that is empty never comes
     * @param never in how many samples it never came
     */
    public record EventBand(Band timeS, Chance never) {}

    private Bands(long samples, Map<MarginId, MarginBand> margins, Map<EventKey, EventBand> events) {
        this.samples = samples;
        this.margins = margins;
        this.events = events;
    }

    static Bands of(long samples, List<MarginSpread> margins, List<EventSpread> events) {
        Map<MarginId, MarginBand> byMargin = new LinkedHashMap<>();
        margins.forEach(m -> byMargin.put(m.id(), m.band()));
        Map<EventKey, EventBand> byEvent = new LinkedHashMap<>();
        events.forEach(e -> byEvent.put(e.key(), e.band()));
        return new Bands(samples, byMargin, byEvent);
    }

    /** How many samples they rest on. */
    public long samples() {
        return samples;
    }

    /** Whether there are none. */
    public boolean isEmpty() {
        return samples == 0;
    }

    /** The band of a margin. */
    public Optional<MarginBand> margin(MarginId id) {
        return Optional.ofNullable(margins.get(id));
    }

    /** The band of an event. */
    public Optional<EventBand> event(EventKey key) {
        return Optional.ofNullable(events.get(key));
    }
}
