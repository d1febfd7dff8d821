package boilwright.rig.file;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.List;

/** What a field accepts, in words for messages and for the published schema. */
final class FieldWords {
    private static final int LONGEST_NUMBER = 8;

    private FieldWords() {}

    /** A value, SI, in the unit in which people write this field; three figures where it has no short text. */
    static String value(Field field, double si) {
        String exact = QuantityWriter.exact(si, unit(field));
        int digits = exact.indexOf(' ') < 0 ? exact.length() : exact.indexOf(' ');
        return digits <= LONGEST_NUMBER ? exact : QuantityWriter.write(si, unit(field));
    }

    /** The unit in which people write this field. */
    static UnitSpelling unit(Field field) {
        return UnitTable.find(field.unit(), field.dimension().orElseThrow()).orElseThrow();
    }

    /** The units in which this field may be written. */
    static List<String> units(Field field) {
        return UnitTable.accepted(field.dimension().orElseThrow()).stream()
                .filter(unit -> !unit.isPlain())
                .map(UnitSpelling::text)
                .toList();
    }

    /** Everything that the field accepts, in a few words. */
    static String accepted(Field field) {
        String range = field.kind() == Field.Kind.QUANTITY
                ? value(field, field.allowedLow()) + " to " + value(field, field.allowedHigh())
                : "";
        return switch (field.kind()) {
            case QUANTITY -> FieldWords.unit(field).isPlain() ? "a number, " + range : "a text with a unit, " + range;
            case TEXT -> "a text in quotation marks";
            case CHOICE -> Shown.quotedList(field.choices());
            case INTEGER -> "a whole number";
            case LIST -> "a list of objects in brackets";
            case TEXT_LIST -> "a list of texts in brackets";
            case OBJECT -> "an object in braces" + kinds(field);
        };
    }

    /** The kinds in which an object comes, when it does. */
    private static String kinds(Field object) {
        return FieldCatalogue.find(object.path() + ".kind")
                .map(kind -> ", whose kind is one of " + Shown.quotedList(kind.choices()))
                .orElse("");
    }
}
