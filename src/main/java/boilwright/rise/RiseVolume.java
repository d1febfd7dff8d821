package boilwright.rise;

import boilwright.errors.InputRefusedException;
import boilwright.errors.MessageKey;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;
import boilwright.units.UnitSpelling;
import java.util.Optional;
import java.util.Set;

/** Reads the volume that is shut off. */
public final class RiseVolume {
    private static final double LEAST_M3 = 1e-6;
    private static final double GREATEST_M3 = 1e4;

    private RiseVolume() {}

    /**
     * The volume, m3.
     *
     * @param text as it was typed, with its unit
     * @param accepted words of {@link Quantity} whose unusual values are meant
     * @throws InputRefusedException when it is no volume from 1 mL to 10 000 m3, or looks like a slip
     */
    public static double read(String text, Set<String> accepted) {
        Reading reading = QuantityReader.read(text, Quantity.VOLUME.dimension());
        boolean isMeant = Quantity.VOLUME.isAccepted(accepted);
        Optional<Reading.Read> read =
                reading instanceof Reading.Refused refused && isMeant ? refused.asWritten() : asRead(reading);
        if (read.isEmpty()) {
            Reading.Refused refused = (Reading.Refused) reading;
            MessageKey key =
                    refused.asWritten().isPresent() ? MessageKey.RISE_VOLUME_DOUBTFUL : MessageKey.RISE_VOLUME_REFUSED;
            throw refused(key, refused.fault().text());
        }
        double volume = read.get().si();
        UnitSpelling unit = read.get().unit();
        String shown = QuantityWriter.exact(volume, unit);
        Optional<UnitSpelling> meant = isMeant ? Optional.empty() : Quantity.VOLUME.meant(volume, unit);
        if (meant.isPresent()) {
            String likely = QuantityWriter.exact(meant.get().toSi(unit.fromSi(volume)), meant.get());
            throw refused(MessageKey.RISE_VOLUME_SLIP, shown, likely, Quantity.VOLUME.usual());
        }
        if (!(volume >= LEAST_M3 && volume <= GREATEST_M3)) {
            throw refused(MessageKey.RISE_VOLUME_RANGE, shown, "1 mL", "10000 m3");
        }
        return volume;
    }

    private static Optional<Reading.Read> asRead(Reading reading) {
        return reading instanceof Reading.Read read ? Optional.of(read) : Optional.empty();
    }

    private static InputRefusedException refused(MessageKey key, String... values) {
        return new InputRefusedException(RecordFaults.at(key, "--volume", values));
    }
}
