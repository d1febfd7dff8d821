package boilwright.thermal;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A run in which something fails. Times count from the failure.
 *
 * @param heatCutAfterS when the heat was cut, s; empty for never
 * @param limits every limit that applies to the rig, with the time at which it was passed; empty when it was not
 * @param firstJetLostS when the first jet was lost, s
 * @param jetsGoneS when no jet was lit any more, s
 * @param watchedS how long the run was watched, s
 * @param brokenOff true when the run ended early because the oil boiled off or left every known range
 * @param run the run; its time counts from the failure when it started at rest, else from cold
 */
public record DrillRun(
        OptionalDouble heatCutAfterS,
        List<LimitTime> limits,
        OptionalDouble firstJetLostS,
        OptionalDouble jetsGoneS,
        double watchedS,
        boolean brokenOff,
        RunResult run) {
    public DrillRun {
        limits = List.copyOf(limits);
    }

    /**
     * A limit and when it was passed.
     *
     * @param limit which
     * @param value where it lies, K, but the condensed share for {@link DrillLimit#FILM} and kg for {@link
     *     DrillLimit#OIL_LOSS}, Pa for {@link DrillLimit#FORELINE}; for glass the wall's temperature
     * @param passedS when, s after the failure; empty when it was not passed; 0 when it was passed before
     * @param before whether it was passed before the failure already, which is then not to blame for it
     */
    public record LimitTime(DrillLimit limit, double value, OptionalDouble passedS, boolean before) {
        /** When it was passed, s; infinity when it was not. */
        public double orNever() {
            return passedS.orElse(Double.POSITIVE_INFINITY);
        }
    }
}
