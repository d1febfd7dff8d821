package boilwright.companion;

import boilwright.sequence.Clock;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How the times that are still to come move by what was seen: what the plan computes between the switch of the heat and the
 * last thing seen, against what it took. What remains of the stretch that the heat governs is taken that much longer; what
 * follows it keeps its own length.
 *
 * @param clock the clock of the plan
 * @param planFromS computed time of what was seen last, s on the clock; of the heat's switch when nothing was seen
 * @param seenAtS when that came, s on the clock
 * @param factor how much longer what remains is taken
 * @param planUntilS end of the stretch that the heat governs, s
 * @param why where the factor comes from, whole sentences
 */
record Outlook(Clock clock, double planFromS, double seenAtS, double factor, double planUntilS, String why) {
    /** What is believed of a factor; engineering judgement. */
    static final double LEAST = 0.25;

    static final double GREATEST = 4;

    /** A factor nearer to 1 is told as "as computed". */
    private static final double AS_COMPUTED = 0.005;
    /** Power read below this share of the computed one explains a delay; engineering judgement. */
    private static final double WEAK = 0.95;

    private static final double LATE = 1.02;
    /** Computed stretches that are shorter say nothing, s. */
    private static final double LEAST_STRETCH_S = 1;

    /**
     * Something seen.
     *
     * @param seenS when, s on the clock
     * @param planS when it was computed, s on the clock
     * @param words what it was, as a sentence begins
     */
    record Evidence(double seenS, double planS, String words) {}

    /**
     * The outlook.
     *
     * @param clock the clock
     * @param planHeatS computed time of the heat's switch, s
     * @param heatS when it was switched, s; empty when it was not yet
     * @param nowS time on the clock, s
     * @param planUntilS end of the stretch that the heat governs, s
     * @param seen what was seen, in any order
     * @param power power read against computed, a share; empty when it was not read with the heat on
     */
    static Outlook of(
            Clock clock,
            double planHeatS,
            OptionalDouble heatS,
            double nowS,
            double planUntilS,
            List<Evidence> seen,
            OptionalDouble power) {
        if (heatS.isEmpty()) {
            return new Outlook(
                    clock, planHeatS, Math.max(planHeatS, nowS), 1, planUntilS, CompanionText.OUTLOOK_NO_HEAT.say());
        }
        double heat = heatS.getAsDouble();
        Evidence last = null;
        for (Evidence one : seen) {
            boolean tells = one.planS() > planHeatS + LEAST_STRETCH_S && one.seenS() > heat;
            if (tells && (last == null || one.seenS() >= last.seenS())) {
                last = one;
            }
        }
        if (last == null) {
            return new Outlook(clock, planHeatS, heat, 1, planUntilS, CompanionText.OUTLOOK_NOTHING_SEEN.say());
        }
        double raw = (last.seenS() - heat) / (last.planS() - planHeatS);
        double factor = Math.min(GREATEST, Math.max(LEAST, raw));
        String why = words(clock, last, last.seenS() - heat, last.planS() - planHeatS, factor);
        if (factor != raw) {
            why += " " + CompanionText.OUTLOOK_CLIPPED.say(figures(factor));
        }
        if (factor > LATE && clock == Clock.FROM_COLD && power.isPresent() && power.getAsDouble() < WEAK) {
            why += " " + CompanionText.OUTLOOK_WATTS.say(Math.round(100 * power.getAsDouble()) + " %");
        }
        return new Outlook(clock, last.planS(), last.seenS(), factor, planUntilS, why);
    }

    private static String words(Clock clock, Evidence last, double tookS, double computedS, double factor) {
        String took = QuantityWriter.writeAuto(tookS, Dimension.TIME);
        String computed = QuantityWriter.writeAuto(computedS, Dimension.TIME);
        boolean up = clock == Clock.FROM_COLD;
        if (Math.abs(factor - 1) < AS_COMPUTED) {
            return (up ? CompanionText.OUTLOOK_SAME_UP : CompanionText.OUTLOOK_SAME_DOWN).say(last.words(), took);
        }
        return (up ? CompanionText.OUTLOOK_UP : CompanionText.OUTLOOK_DOWN)
                .say(last.words(), took, computed, figures(factor));
    }

    private static String figures(double factor) {
        return String.format(Locale.ROOT, "%.2f", factor);
    }

    /** When something that was computed for a time of the clock is to be expected, s on the clock. */
    double expectedS(double planS) {
        if (planS <= planFromS) {
            return seenAtS - (planFromS - planS);
        }
        double governed = Math.min(planS, Math.max(planUntilS, planFromS));
        return seenAtS + factor * (governed - planFromS) + (planS - governed);
    }
}
