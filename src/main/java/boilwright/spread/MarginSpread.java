package boilwright.spread;

import boilwright.answers.Margin;
import boilwright.units.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * One margin over all samples.
 *
 * @param id stable id
 * @param title name that people read
 * @param side whether the value must stay at least or at most at the limit
 * @param dimension what value and limit measure
 * @param nominal the margin of the rig as it stands; empty when it has none there
 * @param band where value and ratio lie, and how often it fails
 * @param shares of the spread of ratio / (1 + ratio), by input, the largest first; empty when it does not spread or the samples are too few
 * @param noise share that an input without effect may seem to have; 0 without shares
 */
public record MarginSpread(
        String id,
        String title,
        Margin.Side side,
        Dimension dimension,
        Optional<Margin> nominal,
        Bands.MarginBand band,
        List<InputShare> shares,
        double noise) {
    public MarginSpread {
        shares = List.copyOf(shares);
    }
}
