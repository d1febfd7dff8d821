package boilwright.rig;

import boilwright.units.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * One field of a rig: what it may hold, what is usual and where these ranges come from.
 *
 * @param path where it stands in a rig file, with {@code []} for the entries of a list: {@code stages[].throatGap}
 * @param kind what sort of value it holds
 * @param dimension what a quantity measures; empty for every other kind
 * @param unit spelling of the unit in which people usually write it, "1" for a plain number, empty when not a quantity
 * @param allowedLow least value accepted: SI for a quantity, characters for a text, entries for a list
 * @param allowedHigh greatest value accepted, counted alike
 * @param typicalLow least usual value, SI; outside the usual range a value is looked at for a likely slip
 * @param typicalHigh greatest usual value, SI
 * @param required whether a file without it is refused
 * @param source where the ranges come from
 * @param textKey key of its title and explanation, see {@link FieldTexts}
 * @param choices what a choice may hold, in the order offered; empty for every other kind
 * @param variants the kinds of heat source or cooling element that have this field; empty: it is always there
 */
public record Field(
        String path,
        Kind kind,
        Optional<Dimension> dimension,
        String unit,
        double allowedLow,
        double allowedHigh,
        double typicalLow,
        double typicalHigh,
        boolean required,
        String source,
        String textKey,
        List<String> choices,
        List<String> variants) {
    /** Sorts of value. */
    public enum Kind {
        /** A number with a unit, or a plain number where the unit is 1. */
        QUANTITY,
        /** Free text. */
        TEXT,
        /** One of a closed set of words. */
        CHOICE,
        /** A whole number. */
        INTEGER,
        /** A list of objects. */
        LIST,
        /** A list of texts. */
        TEXT_LIST,
        /** Fields of its own. */
        OBJECT
    }

    public Field {
        choices = List.copyOf(choices);
        variants = List.copyOf(variants);
    }

    /** The last part of the path: the name by which the file has it. */
    public String name() {
        return path.substring(path.lastIndexOf('.') + 1).replace("[]", "");
    }

    /** The path of the object that holds this field; empty for a field of the rig itself. */
    public String parent() {
        int dot = path.lastIndexOf('.');
        return dot < 0 ? "" : path.substring(0, dot);
    }

    /** Whether the field exists in the given variant of its object. */
    public boolean belongsTo(String variant) {
        return variants.isEmpty() || variants.contains(variant);
    }

    /** Whether a value, SI, may be used at all. */
    public boolean allows(double value) {
        return value >= allowedLow && value <= allowedHigh;
    }

    /** Whether a value, SI, is a usual one; a zero that is allowed counts as usual (none of it). */
    public boolean isTypical(double value) {
        return (value >= typicalLow && value <= typicalHigh) || (value == 0 && allowedLow == 0);
    }
}
