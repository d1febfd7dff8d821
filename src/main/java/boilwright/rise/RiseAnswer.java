package boilwright.rise;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a record of a rising pressure says.
 *
 * @param record the record
 * @param volumeM3 volume that was shut off, m3
 * @param verdict what makes the pressure rise
 * @param sentence the same with its rates, as one sentence
 * @param leak the leak's rate, where the verdict counts on one
 * @param surfaceGas what the surfaces give off, where the verdict counts on it
 * @param initialRise all gas together at the first reading; empty when no rise shows
 * @param scores score of each curve, the less the better; empty for one with too many parameters for the readings
 * @param leastDifference the difference of scores that counts
 * @param line the curve that the rates are from; for an undecided record the one with the best score
 * @param notes what else to know, whole sentences
 */
public record RiseAnswer(
        RiseRecord record,
        double volumeM3,
        Verdict verdict,
        String sentence,
        Optional<Rate> leak,
        Optional<SurfaceGas> surfaceGas,
        Optional<Rate> initialRise,
        Map<RiseCurve, OptionalDouble> scores,
        double leastDifference,
        RiseLine line,
        List<String> notes) {
    public RiseAnswer {
        scores = Collections.unmodifiableMap(new EnumMap<>(scores));
        notes = List.copyOf(notes);
    }
}
