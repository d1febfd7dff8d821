package boilwright.rise;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The quantities of a pressure-rise test, with what is usual of them and the units that are written by mistake for others. What
 * is usual is common practice, no source.
 */
public enum Quantity {
    /** From the first reading to the last. */
    TIME(
            Dimension.TIME,
            30,
            48 * 3600,
            Map.of("s", List.of("min", "h"), "min", List.of("s", "h"), "h", List.of("min", "s"))),
    /** The first reading after the valve is closed. */
    PRESSURE(
            Dimension.PRESSURE,
            1e-6,
            300,
            Map.ofEntries(
                    Map.entry("Torr", List.of("mTorr")),
                    Map.entry("mmHg", List.of("mTorr")),
                    Map.entry("mTorr", List.of("Torr")),
                    Map.entry("micron", List.of("Torr")),
                    Map.entry("bar", List.of("mbar")),
                    Map.entry("mbar", List.of("Pa", "mTorr")),
                    Map.entry("ubar", List.of("mbar")),
                    Map.entry("Pa", List.of("mbar", "Torr")),
                    Map.entry("hPa", List.of("Pa")),
                    Map.entry("kPa", List.of("Pa")),
                    Map.entry("MPa", List.of("Pa")),
                    Map.entry("atm", List.of("Torr", "mTorr")),
                    Map.entry("psi", List.of("Torr", "mTorr")))),
    /** The volume that is shut off. */
    VOLUME(
            Dimension.VOLUME,
            1e-4,
            5,
            Map.of(
                    "m3",
                    List.of("L", "mL"),
                    "L",
                    List.of("m3", "mL"),
                    "mL",
                    List.of("L"),
                    "cm3",
                    List.of("L"),
                    "cc",
                    List.of("L")));

    private final Dimension dimension;
    private final double usualLow;
    private final double usualHigh;
    private final Map<String, List<String>> writtenFor;

    Quantity(Dimension dimension, double usualLow, double usualHigh, Map<String, List<String>> writtenFor) {
        this.dimension = dimension;
        this.usualLow = usualLow;
        this.usualHigh = usualHigh;
        this.writtenFor = writtenFor;
    }

    /**
     * Looks at the words by which a person says that an unusual value is meant.
     *
     * @throws InputRefusedException when one of them names no quantity
     */
    public static void checkAccepted(Collection<String> accepted) {
        List<String> known = Stream.of(values()).map(Quantity::word).toList();
        List<Message> faults = new ArrayList<>();
        for (String word : accepted) {
            if (!known.contains(word)) {
                faults.add(Message.of(
                        MessageKey.RISE_ACCEPT_UNKNOWN,
                        "--accept " + RecordText.printable(word),
                        String.join(", ", known)));
            }
        }
        if (!faults.isEmpty()) {
            throw new InputRefusedException(faults);
        }
    }

    /** The word by which a person says that an unusual value is meant. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    Dimension dimension() {
        return dimension;
    }

    /** Whether a person said that an unusual value is meant. */
    boolean isAccepted(Set<String> accepted) {
        return accepted.contains(word());
    }

    /** The unit that was probably meant; empty when the value is usual, or no usual slip explains it. */
    Optional<UnitSpelling> meant(double si, UnitSpelling unit) {
        if (isUsual(si)) {
            return Optional.empty();
        }
        double value = unit.fromSi(si);
        return writtenFor.getOrDefault(unit.text(), List.of()).stream()
                .map(text -> UnitTable.find(text, dimension).orElseThrow())
                .filter(other -> isUsual(other.toSi(value)))
                .findFirst();
    }

    /** What is usual, in words. */
    String usual() {
        return QuantityWriter.writeAuto(usualLow, dimension) + " to " + QuantityWriter.writeAuto(usualHigh, dimension);
    }

    private boolean isUsual(double si) {
        return si >= usualLow && si <= usualHigh;
    }
}
