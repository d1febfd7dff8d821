package boilwright.answers;

import boilwright.rig.Rig;
import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeEvent;
import boilwright.thermal.TimeSeries;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;

/** What a run comes near to on its way, each limit at the time at which it is first passed or, where it holds, come nearest to. */
final class RunMargins {
    private final Moment moment;
    private final TimeSeries series;
    private final double[] times;
    private final List<Margin> margins = new ArrayList<>();

    private RunMargins(Moment moment, TimeSeries series) {
        this.moment = moment;
        this.series = series;
        times = series.column(SeriesQuantity.TIME).values();
    }

    /** Margins along any run, in no order. */
    static List<Margin> of(Asked asked, RunResult run, Moment moment) {
        MarginRules rules = new MarginRules(asked.rig(), asked.fluid());
        RunMargins along = new RunMargins(moment, run.series());
        along.highest(SeriesQuantity.LIQUID_TEMPERATURE, k -> rules.oilBulk(k, Optional.of(asked.tables())));
        along.highest(SeriesQuantity.INNER_FACE, rules::oilFilm);
        if (asked.rig().limits().sourceK().isPresent()) {
            along.highest(
                    SeriesQuantity.SOURCE_TEMPERATURE, k -> rules.source(k).orElseThrow());
        }
        along.highest(SeriesQuantity.CARTRIDGE_TEMPERATURE, rules::cartridge);
        along.highest(SeriesQuantity.BOILER_GLASS_STRESS, rules::boilerGlass);
        along.highest(SeriesQuantity.BODY_GLASS_STRESS, rules::bodyGlass);
        along.highest(SeriesQuantity.CAP, rules::cap);
        along.highest(SeriesQuantity.HOTTEST_WATER, rules::waterOut);
        along.highest(SeriesQuantity.WATER_IN, rules::waterIn);
        along.lowest(SeriesQuantity.LEAST_FILM_MARGIN, rules::film);
        double charge = run.series().column(SeriesQuantity.OIL_MASS).values()[0];
        along.lowest(SeriesQuantity.OIL_MASS, kg -> rules.liquid(kg / charge));
        return along.margins;
    }

    /** The same along a warm-up, at whose end the jets should be full. */
    static List<Margin> ofWarmup(Asked asked, RunResult run) {
        List<Margin> margins = of(asked, run, Moment.WARMUP);
        double end = Arrays.stream(run.series().column(SeriesQuantity.TIME).values())
                .max()
                .orElseThrow();
        OptionalDouble full = time(run, EventKind.FULL_PUMPING);
        margins.add(new MarginRules(asked.rig(), asked.fluid())
                .weakestJet(weakestAtEnd(asked.rig(), run), full.isPresent())
                .at(Moment.WARMUP, full.orElse(end))
                .make());
        return margins;
    }

    /** How many jets carry their full flow where a warm-up ends. */
    static long fullAtEnd(Rig rig, RunResult run) {
        return IntStream.rangeClosed(1, rig.stages().size())
                .filter(k -> atEnd(run, k) >= MarginRules.FULL_FLOW)
                .count();
    }

    private static double atEnd(RunResult run, int stage) {
        double[] share = run.series()
                .column(SeriesQuantity.STAGE_FULL_FLOW_FRACTION, stage)
                .values();
        return share[share.length - 1];
    }

    private static double weakestAtEnd(Rig rig, RunResult run) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 1; k <= rig.stages().size(); k++) {
            least = Math.min(least, atEnd(run, k));
        }
        return least;
    }

    private static OptionalDouble time(RunResult run, EventKind kind) {
        return run.events().stream()
                .filter(e -> e.kind() == kind)
                .map(TimeEvent::timeS)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private void highest(SeriesQuantity quantity, DoubleFunction<MarginMaker> rule) {
        judged(quantity, rule, 1);
    }

    private void lowest(SeriesQuantity quantity, DoubleFunction<MarginMaker> rule) {
        judged(quantity, rule, -1);
    }

    /** Finds the worst value, which is the highest or, with sign -1, the lowest, and holds it against its limit. */
    private void judged(SeriesQuantity quantity, DoubleFunction<MarginMaker> rule, int sign) {
        double[] values = series.find(quantity).map(TimeSeries.Column::values).orElse(new double[0]);
        int worst = -1;
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i]) && (worst < 0 || sign * values[i] > sign * values[worst])) {
                worst = i;
            }
        }
        if (worst < 0) {
            return;
        }
        MarginMaker maker = rule.apply(values[worst]);
        int at = worst;
        if (maker.make().fails()) {
            for (int i = 0; i < values.length; i++) {
                if (Double.isFinite(values[i]) && rule.apply(values[i]).make().fails()) {
                    at = i;
                    break;
                }
            }
        }
        margins.add(maker.at(moment, times[at]).make());
    }

    /** Highest value of a column of a run's time line. */
    static double highest(RunResult run, SeriesQuantity quantity) {
        return Arrays.stream(run.series().column(quantity).values()).max().orElseThrow();
    }
}
