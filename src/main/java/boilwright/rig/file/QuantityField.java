package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.LikelySlip;
import boilwright.rig.file.Json.JsonNumber;
import boilwright.rig.file.Json.JsonText;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.Optional;
import java.util.Set;

/** Reads one quantity of a rig file: number, unit, range, and whether it looks like a slip. */
final class QuantityField {
    /** Fields whose zero would shut the water off: whoever writes it means something else than a small number. */
    private static final Set<String> WAYS_OF_THE_WATER =
            Set.of("cooling.elements[].tubeInnerDiameter", "cooling.elements[].gap", "cooling.elements[].flowAtOneBar");

    private QuantityField() {}

    /**
     * The value in SI.
     *
     * @return NaN when it was refused; the fault is reported then
     */
    static double read(Field field, String path, Json json, Findings findings) {
        boolean plain = FieldWords.unit(field).isPlain();
        if (json instanceof JsonText text) {
            return read(field, path, text.value(), json.shown(), findings);
        }
        if (json instanceof JsonNumber number && plain) {
            return read(field, path, number.literal(), json.shown(), findings);
        }
        if (json instanceof JsonNumber) {
            String example = "\"" + json.shown() + " " + field.unit() + "\"";
            String units = Shown.list(FieldWords.units(field));
            findings.reportField(path, MessageKey.RIG_FIELD_NEEDS_UNIT, json.shown(), example, units);
            return Double.NaN;
        }
        findings.reportField(path, MessageKey.RIG_FIELD_TYPE, json.shown(), FieldWords.accepted(field));
        return Double.NaN;
    }

    private static double read(Field field, String path, String text, String shown, Findings findings) {
        Optional<Reading.Read> read = understood(field, path, text, findings);
        return read.isPresent() ? checked(field, path, text, shown, read.get(), findings) : Double.NaN;
    }

    private static Optional<Reading.Read> understood(Field field, String path, String text, Findings findings) {
        Reading reading = QuantityReader.read(text, field.dimension().orElseThrow());
        if (reading instanceof Reading.Read read) {
            return Optional.of(read);
        }
        Reading.Refused refused = (Reading.Refused) reading;
        if (refused.asWritten().isPresent() && findings.accepts(path)) {
            return refused.asWritten();
        }
        MessageKey key =
                refused.asWritten().isPresent() ? MessageKey.RIG_FIELD_QUANTITY_SLIP : MessageKey.RIG_FIELD_QUANTITY;
        findings.reportField(path, key, refused.fault().text());
        return Optional.empty();
    }

    private static double checked(
            Field field, String path, String text, String shown, Reading.Read read, Findings findings) {
        Optional<String> meant = LikelySlip.meant(field, text, read).map(likely -> Shown.plain(likely));
        String low = FieldWords.value(field, field.allowedLow());
        String high = FieldWords.value(field, field.allowedHigh());
        if (read.si() == 0 && WAYS_OF_THE_WATER.contains(field.path())) {
            findings.reportField(path, MessageKey.RIG_NO_WAY_FOR_WATER, shown, low, high);
            return Double.NaN;
        }
        if (!field.allows(read.si())) {
            meant.ifPresentOrElse(
                    likely -> findings.reportField(path, MessageKey.RIG_FIELD_RANGE_SLIP, shown, likely, low, high),
                    () -> findings.reportField(path, MessageKey.RIG_FIELD_RANGE, shown, low, high));
            return Double.NaN;
        }
        if (meant.isPresent() && !findings.accepts(path)) {
            String usualLow = FieldWords.value(field, field.typicalLow());
            String usualHigh = FieldWords.value(field, field.typicalHigh());
            findings.reportField(path, MessageKey.RIG_FIELD_SLIP, shown, meant.get(), usualLow, usualHigh);
            return Double.NaN;
        }
        return read.si();
    }
}
