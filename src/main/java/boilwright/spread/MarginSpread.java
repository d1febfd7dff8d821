package boilwright.spread;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.units.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * One margin over all samples.
 *
 * @param id which
 * @param side whether the value must stay at least or at most at the limit
 * @param nominal the margin of the rig as it stands; empty when it has none there
 * @param band where value and ratio lie, and how often it fails
 * @param shares of the spread of ratio / (1 + ratio), by input, the largest first; empty when it does not spread or the samples are too few
 * @param noise share that an input without effect may seem to have; 0 without shares
 */
public record MarginSpread(
        MarginId id,
        Margin.Side side,
        Optional<Margin> nominal,
        Bands.MarginBand band,
        List<InputShare> shares,
        double noise) {
    public MarginSpread {
        shares = List.copyOf(shares);
    }

    /** Name that people read. */
    public String title() {
        return id.title();
    }

    /** What value and limit measure. */
    public Dimension dimension() {
        return id.dimension();
    }
}
