package boilwright.estimate;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The guesses of one estimate while it is made. */
final class GuessBook {
    private static final MathContext FIGURES = new MathContext(3);

    private final Map<String, EstimateText> bases = new LinkedHashMap<>();

    /** Marks a field, whatever kind of value it holds. */
    <T> T mark(String path, T value, EstimateText basis) {
        bases.put(path, basis);
        return value;
    }

    /** A guessed quantity, SI, as it is: for temperatures and for figures that have a source. */
    double exactly(String path, double si, EstimateText basis) {
        bases.put(path, basis);
        return si;
    }

    /**
     * A guessed quantity, SI, with three figures, held within what is usual for its field: a guess must not look like a slip
     * of units.
     */
    double quantity(String path, double si, EstimateText basis) {
        bases.put(path, basis);
        return usual(path, si);
    }

    /**
     * A quantity within what is usual for its field, and to three figures in the unit in which it is written, so that files
     * have short numbers.
     */
    static double usual(String path, double si) {
        Field field = FieldCatalogue.find(path).orElseThrow();
        UnitSpelling unit =
                UnitTable.find(field.unit(), field.dimension().orElseThrow()).orElseThrow();
        BigDecimal figures = BigDecimal.valueOf(unit.fromSi(si)).round(FIGURES);
        String text = figures.toPlainString() + (unit.isPlain() ? "" : " " + unit.text());
        // Read as the file's reader will read it: the value in the file is then the very same.
        if (!(QuantityReader.read(text, unit.dimension()) instanceof Reading.Read read)) {
            throw new IllegalStateException("a guess cannot be written: " + text);
        }
        return Math.max(field.typicalLow(), Math.min(field.typicalHigh(), read.si()));
    }

    /** The guesses in the order in which they were made. */
    List<Guess> guesses() {
        return bases.entrySet().stream()
                .map(entry -> new Guess(entry.getKey(), entry.getValue().say()))
                .toList();
    }

    /** The paths of the fields that were guessed. */
    Set<String> paths() {
        return Set.copyOf(bases.keySet());
    }
}
