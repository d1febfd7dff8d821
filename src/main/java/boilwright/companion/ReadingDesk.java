package boilwright.companion;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.LikelySlip;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Takes readings as people type them: understood, in range, and no likely slip of the unit. */
final class ReadingDesk {
    /** A reading that is this many times what is computed, or less than that part of it, is looked at for a slip. */
    private static final double USUAL_TIMES = 4;
    /** The same for temperatures, K. Both are engineering judgement. */
    private static final double USUAL_K = 60;

    private ReadingDesk() {}

    /**
     * What a text comes to.
     *
     * @param si the value; empty when it was not taken
     * @param outcome what to tell; nothing when it was taken
     */
    record Taken(OptionalDouble si, Optional<Outcome> outcome) {}

    /**
     * Reads a text.
     *
     * @param kind what it is a reading of
     * @param text number and unit
     * @param computed what it should be, SI; empty where nothing is computed
     * @param allTheSame whether a likely slip is meant as it stands
     */
    static Taken take(ReadingKind kind, String text, OptionalDouble computed, boolean allTheSame) {
        Reading reading = QuantityReader.read(text, kind.dimension());
        if (reading instanceof Reading.Refused refused) {
            if (refused.asWritten().isPresent() && allTheSame) {
                return inRange(kind, refused.asWritten().get().si());
            }
            String words = say(
                    MessageKey.RUN_READING_REFUSED,
                    kind.title(),
                    refused.fault().text());
            return none(refused.asWritten().isPresent() ? Outcome.warned(words) : Outcome.refused(words));
        }
        Reading.Read read = (Reading.Read) reading;
        Optional<String> meant = computed.isPresent() && !allTheSame
                ? LikelySlip.meant(usual(kind, computed.getAsDouble()), text, read)
                : Optional.empty();
        if (meant.isPresent()) {
            return none(Outcome.warned(say(
                    MessageKey.RUN_READING_SLIP,
                    kind.title(),
                    text.strip(),
                    QuantityWriter.writeAuto(computed.getAsDouble(), kind.dimension()),
                    meant.get())));
        }
        return inRange(kind, read.si());
    }

    private static Taken inRange(ReadingKind kind, double si) {
        if (si >= kind.least() && si <= kind.greatest()) {
            return new Taken(OptionalDouble.of(si), Optional.empty());
        }
        return none(Outcome.refused(say(
                MessageKey.RUN_READING_RANGE,
                kind.title(),
                QuantityWriter.writeAuto(si, kind.dimension()),
                QuantityWriter.writeAuto(kind.least(), kind.dimension()),
                QuantityWriter.writeAuto(kind.greatest(), kind.dimension()))));
    }

    private static Field usual(ReadingKind kind, double computed) {
        boolean temperature = kind.dimension() == Dimension.TEMPERATURE;
        double low = temperature ? computed - USUAL_K : computed / USUAL_TIMES;
        double high = temperature ? computed + USUAL_K : computed * USUAL_TIMES;
        return new Field(
                kind.id(),
                Field.Kind.QUANTITY,
                Optional.of(kind.dimension()),
                kind.unit(),
                kind.least(),
                kind.greatest(),
                low,
                high,
                false,
                "",
                "",
                List.of(),
                List.of());
    }

    private static Taken none(Outcome outcome) {
        return new Taken(OptionalDouble.empty(), Optional.of(outcome));
    }

    private static String say(MessageKey key, String... values) {
        return Message.of(key, values).text();
    }
}
