package boilwright.choice;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.RestAnswer;
import boilwright.numerics.Roots;
import boilwright.rig.Rig;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/** Finds the power window of a rig: from full jets up to the first limit that more power passes. */
final class WindowSearch {
    private static final double[] STEPS = {1, 1.15, 1.3, 1.5, 1.75, 2, 2.5, 3, 4};
    private static final double BELOW = 0.05;
    private static final double TOLERANCE = 1e-5;

    private final HeatTrial trial;
    private final DoubleFunction<Rig> atPower;

    /** @param atPower the rig with this power set, W */
    WindowSearch(HeatTrial trial, DoubleFunction<Rig> atPower) {
        this.trial = trial;
        this.atPower = atPower;
    }

    /** Whether more power brings a margin nearer to its limit. */
    static boolean worsensWithPower(MarginId id) {
        return switch (id) {
            case OIL_BULK,
                    OIL_FILM,
                    LIQUID,
                    SOURCE,
                    CARTRIDGE,
                    GLASS_BOILER,
                    GLASS_BODY,
                    COLUMN_MACH,
                    SUPERHEAT,
                    OIL_LOSS,
                    FILM_MARGIN,
                    CAP,
                    WATER_OUT,
                    CHILLER -> true;
            case HEAT,
                    JETS,
                    BOILER_PRESSURE,
                    FORELINE,
                    FUEL,
                    WATER_FLOW,
                    WATER_IN,
                    GAUGE,
                    OIL_VAPOUR,
                    THROUGHPUT,
                    OVERLOAD,
                    GAUGE_RANGE -> false;
        };
    }

    private record Worst(Optional<MarginId> id, String title, double excess) {}

    /** The watched margin nearest to its limit; its excess is below 0 once it fails. */
    private Worst worst(double watts) {
        Optional<RestAnswer> rest = trial.rest(atPower.apply(watts));
        if (rest.isEmpty()) {
            return new Worst(Optional.empty(), ChoiceText.LIMIT_NO_STATE.say(), -1);
        }
        return rest.get().margins().stream()
                .filter(m -> worsensWithPower(m.id()) && m.ratio().isPresent())
                .min(Comparator.comparingDouble(m -> m.ratio().getAsDouble()))
                .map(m -> new Worst(Optional.of(m.id()), m.title(), excess(m)))
                .orElse(new Worst(Optional.empty(), "", 1));
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
            return new PowerWindow(low, OptionalDouble.empty(), present, present, Optional.empty(), "", shortage);
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
        return new PowerWindow(low, OptionalDouble.empty(), present, top, Optional.empty(), "", sentence);
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
