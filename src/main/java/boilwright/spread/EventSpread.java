package boilwright.spread;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One event over all samples.
 *
 * @param key which
 * @param nominalS its time in the rig as it stands, s; empty when it never comes there
 * @param band where its time lies, and how often it never comes
 * @param shares of the spread of T / (T + time), by input, the largest first, T being its nominal time (an hour when it has none) and never being 0; empty
 *     when it does not spread, when the samples are too few, or for an event that the rig as it stands knows nothing of
 * @param noise share that an input without effect may seem to have; 0 without shares
 */
public record EventSpread(
        EventKey key, OptionalDouble nominalS, Bands.EventBand band, List<InputShare> shares, double noise) {
    public EventSpread {
        shares = List.copyOf(shares);
    }
}
