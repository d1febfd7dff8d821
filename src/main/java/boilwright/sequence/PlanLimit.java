package boilwright.sequence;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;

/**
 * A limit that belongs on the sheet.
 *
 * @param id name in files
 * @param title what it limits
 * @param value SI
 * @param dimension what it is
 */
public record PlanLimit(String id, String title, double value, Dimension dimension) {
    /** The value with its unit. */
    public String inWords() {
        return QuantityWriter.writeAuto(value, dimension);
    }
}
