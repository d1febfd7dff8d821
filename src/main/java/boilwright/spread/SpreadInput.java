package boilwright.spread;

import boilwright.units.Dimension;
import java.util.List;

/**
 * One uncertain input of a rig with its range. Guessed fields of all entries of a list rest on one guess and are one input.
 *
 * @param id of an uncertain default, or path of a field, with {@code []} where entries of a list move together
 * @param title what it is called, in a few words
 * @param shape how its values are weighted
 * @param nominal value in the rig as it stands, SI; of the last field where several move together, and so are low and high
 * @param low least value drawn, SI
 * @param high greatest value drawn, SI
 * @param dimension what it measures
 * @param source where the range comes from
 * @param fields paths of the rig's fields that it stands for; none for an uncertain default
 */
public record SpreadInput(
        String id,
        String title,
        Shape shape,
        double nominal,
        double low,
        double high,
        Dimension dimension,
        String source,
        List<String> fields) {
    public SpreadInput {
        fields = List.copyOf(fields);
    }
}
