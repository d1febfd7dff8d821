package boilwright.choice;

import boilwright.answers.Margin;
import boilwright.answers.RestAnswer;
import boilwright.numerics.Roots;
import boilwright.rig.Rig;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** Finds the power window of a rig: from full jets up to the first limit that more power passes. */
final class WindowSearch {
    /** Margins that more power brings nearer to their limits. */
    static final List<String> WATCHED = List.of(
            "oil-bulk",
            "oil-film",
            "glass-boiler",
            "glass-body",
            "source",
            "column-mach",
            "superheat",
            "liquid",
            "film-margin",
            "cap",
            "water-out",
            "chiller",
            "oil-loss");

    private static final double[] STEPS = {1, 1.15, 1.3, 1.5, 1.75, 2, 2.5, 3, 4};
    private static final double BELOW = 0.05;
    private static final double TOLERANCE = 1e-5;
    private static final String NO_STATE = "range";

    private final HeatTrial trial;
    private final DoubleFunction<Rig> atPower;

    /** @param atPower the rig with this power set, W */
    WindowSearch(HeatTrial trial, DoubleFunction<Rig> atPower) {
        this.trial = trial;
        this.atPower = atPower;
    }

    private record Worst(String id, String title, double excess) {}

    /** The watched margin nearest to its limit; its excess is below 0 once it fails. */
    private Worst worst(double watts) {
        Optional<RestAnswer> rest = trial.rest(atPower.apply(watts));
        if (rest.isEmpty()) {
            return new Worst(NO_STATE, ChoiceText.LIMIT_NO_STATE.say(), -1);
        }
        return rest.get().margins().stream()
                .filter(m -> WATCHED.contains(m.id()) && m.ratio().isPresent())
                .min(Comparator.comparingDouble(m -> m.ratio().getAsDouble()))
                .map(m -> new Worst(m.id(), m.title(), excess(m)))
                .orElse(new Worst("", "", 1));
    }

    private static double excess(Margin margin) {
        return margin.ratio().orElseThrow() - 1;
    }

    /**
     * The window.
     *
     * @param low power at which the weakest jet is just full, W; empty when none is enough
     * @param present power set now, W
     * @param shortage what keeps the jets from being full, a whole sentence; for when low is empty
     */
    PowerWindow find(OptionalDouble low, double present, String shortage) {
        if (low.isEmpty()) {
            return new PowerWindow(low, OptionalDouble.empty(), present, present, "", "", shortage);
        }
        double full = low.getAsDouble();
        double before = BELOW * full;
        double top = Math.max(STEPS[STEPS.length - 1] * full, 1.5 * present);
        for (double step : STEPS) {
            double power = step * full;
            if (worst(power).excess() < 0) {
                return limited(low, present, before, power, top);
            }
            before = power;
        }
        if (top > before && worst(top).excess() < 0) {
            return limited(low, present, before, top, top);
        }
        String sentence = ChoiceText.WINDOW_OPEN_ABOVE.say(watts(full), watts(top));
        return new PowerWindow(low, OptionalDouble.empty(), present, top, "", "", sentence);
    }

    private PowerWindow limited(OptionalDouble low, double present, double holds, double fails, double top) {
        double full = low.orElseThrow();
        Worst limit = worst(fails);
        double high = holds;
        if (worst(holds).excess() > 0) {
            high = Roots.bracketed(p -> worst(p).excess(), holds, fails, TOLERANCE, 0, "power of the first limit");
            // the one that is met there, which need not be the worst further up
            limit = worst(high * (1 + 4 * TOLERANCE));
        }
        String sentence = high >= full
                ? ChoiceText.WINDOW.say(watts(full), watts(high), limit.title())
                : ChoiceText.WINDOW_NONE.say(limit.title(), watts(high), watts(full));
        return new PowerWindow(low, OptionalDouble.of(high), present, top, limit.id(), limit.title(), sentence);
    }

    private static String watts(double watts) {
        return QuantityWriter.writeAuto(watts, Dimension.POWER);
    }
}
