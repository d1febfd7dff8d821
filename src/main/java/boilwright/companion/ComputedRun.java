package boilwright.companion;

import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanStep;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;
import java.util.List;
import java.util.OptionalDouble;

/** What was computed for a plan, read at the times of its clocks. */
final class ComputedRun {
    /** Nearer than this to where the oil begins or ends, its temperature tells no time, K; engineering judgement. */
    private static final double TELLING_K = 5;

    private final PlanAnswer answer;
    private final List<PlanStep> steps;
    private final TimeSeries up;
    private final TimeSeries down;
    private final OptionalDouble heatS;
    private final double heatOffS;
    private final double zeroS;
    /** When the warm-up's own schedule first heats, s from its time 0. */
    private final double heatOnS;

    ComputedRun(PlanAnswer answer) {
        this.answer = answer;
        steps = answer.plan().orElseThrow().steps();
        up = answer.check().warmup().series();
        down = answer.cooldown().series();
        heatS = moment(Action.HEAT, Clock.FROM_COLD);
        heatOffS = moment(Action.HEAT_OFF, Clock.FROM_HOT).orElse(0);
        heatOnS = answer.check().rig().schedule().heatOnS();
        zeroS = heatS.orElse(0) - heatOnS;
    }

    /** When the first step of a kind comes on a clock, s; empty when the plan has none. */
    OptionalDouble moment(Action action, Clock clock) {
        return steps.stream()
                .filter(s -> s.action() == action && s.moment().clock() == clock)
                .mapToDouble(s -> s.moment().atS())
                .findFirst();
    }

    /** When heat goes on, s from cold. */
    OptionalDouble heatS() {
        return heatS;
    }

    /** Whether a stop is among the steps: without one a hot pump stays at rest. */
    boolean stops() {
        return moment(Action.HEAT_OFF, Clock.FROM_HOT).isPresent();
    }

    /**
     * What a reading should be.
     *
     * @param kind what is read
     * @param clock clock of the plan
     * @param seconds time on it as computed, s
     * @return SI; empty where nothing is computed
     */
    OptionalDouble at(ReadingKind kind, Clock clock, double seconds) {
        if (clock == Clock.FROM_COLD) {
            return warming(kind, seconds - zeroS);
        }
        return stops() && seconds >= heatOffS
                ? cooling(kind, seconds - heatOffS)
                : warming(kind, Double.POSITIVE_INFINITY);
    }

    private OptionalDouble warming(ReadingKind kind, double t) {
        if (kind == ReadingKind.FORELINE && t < 0) {
            return OptionalDouble.empty();
        }
        return switch (kind) {
            case FORELINE ->
                has(up, SeriesQuantity.FORELINE)
                        ? read(up, SeriesQuantity.FORELINE, t)
                        : OptionalDouble.of(answer.check().steady().forelinePa());
            case POWER -> t < heatOnS ? OptionalDouble.of(0) : read(up, SeriesQuantity.SOURCE_INPUT, t);
            default -> both(kind, up, t);
        };
    }

    private OptionalDouble cooling(ReadingKind kind, double t) {
        return switch (kind) {
            case FORELINE -> read(down, SeriesQuantity.FORELINE, t);
            case POWER -> OptionalDouble.of(0);
            default -> both(kind, down, t);
        };
    }

    private OptionalDouble both(ReadingKind kind, TimeSeries series, double t) {
        return switch (kind) {
            case BOILER -> read(series, SeriesQuantity.LIQUID_TEMPERATURE, t);
            case WATER_OUT -> read(series, SeriesQuantity.WATER_OUT, t);
            case WATER_IN -> waterIn(series, t);
            case WATER_FLOW -> positive(answer.check().steady().flow().volumeFlowM3PerS());
            case CHARGE -> OptionalDouble.of(answer.check().rig().chargeM3());
            // the chamber's pressure is no part of these runs
            default -> OptionalDouble.empty();
        };
    }

    private OptionalDouble waterIn(TimeSeries series, double t) {
        if (has(series, SeriesQuantity.WATER_IN)) {
            return read(series, SeriesQuantity.WATER_IN, t);
        }
        return has(series, SeriesQuantity.WATER_OUT)
                ? OptionalDouble.of(answer.check().rig().cooling().inletTemperatureK())
                : OptionalDouble.empty();
    }

    private static OptionalDouble positive(double value) {
        return value > 0 ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static boolean has(TimeSeries series, SeriesQuantity quantity) {
        return series.find(quantity).isPresent();
    }

    private static OptionalDouble read(TimeSeries series, SeriesQuantity quantity, double t) {
        return has(series, quantity)
                ? OptionalDouble.of(between(
                        series.column(SeriesQuantity.TIME).values(),
                        series.column(quantity).values(),
                        t))
                : OptionalDouble.empty();
    }

    /** Along straight lines; held before the first record and after the last; after a jump where two stand at one time. */
    private static double between(double[] time, double[] values, double t) {
        int last = time.length - 1;
        if (t >= time[last]) {
            return values[last];
        }
        int high = 0;
        while (time[high] <= t) {
            high++;
        }
        if (high == 0) {
            return values[0];
        }
        double share = (t - time[high - 1]) / (time[high] - time[high - 1]);
        return values[high - 1] + share * (values[high] - values[high - 1]);
    }

    /** When the oil passes a temperature on its way up, s from cold; empty where that tells no time. */
    OptionalDouble oilRisesTo(double kelvin) {
        double full = moment(Action.LOOK_FULL, Clock.FROM_COLD).orElse(Double.POSITIVE_INFINITY);
        OptionalDouble t = crossing(answer.check().warmup(), kelvin, 1, full - zeroS);
        return t.isPresent() ? OptionalDouble.of(t.getAsDouble() + zeroS) : t;
    }

    /** When the oil passes a temperature on its way down, s from hot; empty where that tells no time. */
    OptionalDouble oilFallsTo(double kelvin) {
        OptionalDouble t =
                stops() ? crossing(answer.cooldown(), kelvin, -1, Double.POSITIVE_INFINITY) : OptionalDouble.empty();
        return t.isPresent() ? OptionalDouble.of(t.getAsDouble() + heatOffS) : t;
    }

    private static OptionalDouble crossing(RunResult run, double kelvin, int sign, double untilS) {
        double[] time = run.series().column(SeriesQuantity.TIME).values();
        double[] oil = run.series().column(SeriesQuantity.LIQUID_TEMPERATURE).values();
        double end = between(time, oil, untilS);
        if (sign * (kelvin - oil[0]) < TELLING_K || sign * (end - kelvin) < TELLING_K) {
            return OptionalDouble.empty();
        }
        for (int i = 1; i < time.length; i++) {
            if (sign * (oil[i] - kelvin) >= 0) {
                double share = (kelvin - oil[i - 1]) / (oil[i] - oil[i - 1]);
                return OptionalDouble.of(time[i - 1] + share * (time[i] - time[i - 1]));
            }
        }
        return OptionalDouble.empty();
    }
}
