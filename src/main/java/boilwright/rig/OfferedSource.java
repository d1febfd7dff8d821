package boilwright.rig;

import boilwright.units.Dimension;
import java.util.List;

/**
 * A heat source that a rig could have: one of the library or one of the user's own.
 *
 * @param id how it is named
 * @param title what people call it
 * @param source the source by itself: areas are those of its own face and may be larger than a boiler's base
 * @param citation where its figures come from, in words; empty when not said
 * @param fromMemory whether that was not seen
 * @param note what else to know, may be empty
 * @param ranges what is believed possible of single figures
 */
public record OfferedSource(
        String id,
        String title,
        HeatSource source,
        String citation,
        boolean fromMemory,
        String note,
        List<FigureRange> ranges) {
    public OfferedSource {
        ranges = List.copyOf(ranges);
    }

    /**
     * What is believed possible of a figure.
     *
     * @param field name of the field of a rig's heat source
     * @param dimension what it measures
     * @param low least value, SI
     * @param high greatest value, SI
     */
    public record FigureRange(String field, Dimension dimension, double low, double high) {}
}
