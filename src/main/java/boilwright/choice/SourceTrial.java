package boilwright.choice;

import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.HeatLimiter;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Model;
import boilwright.answers.RestAnswer;
import boilwright.choice.SourceRow.Held;
import boilwright.choice.SourceRow.Session;
import boilwright.choice.SourceRow.State;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.Roots;
import boilwright.rig.HeatSource;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.DeliveredHeat;
import boilwright.thermal.EventKind;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.StageState;
import boilwright.thermal.TimeEvent;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Works one source out on a rig: check, setting once hot, session, gas and curves. */
final class SourceTrial {
    /** What is held once hot: full jets even when the mains are a tenth low (tolerance of the mains, common practice). */
    static final double HOLDING_RATIO = 1.1;

    private final Asked asked;
    private final Model model;
    private final CancelToken cancel;

    SourceTrial(Asked asked, Model model, CancelToken cancel) {
        this.asked = asked;
        this.model = model;
        this.cancel = cancel;
    }

    /** Nothing until then, this share of the rated power from then on. */
    static Schedule from(double heatOnS, double share) {
        return heatOnS > 0
                ? new Schedule(List.of(new Schedule.Power(0, 0), new Schedule.Power(heatOnS, share)))
                : new Schedule(List.of(new Schedule.Power(0, share)));
    }

    /** The row of a source that goes with the boiler. */
    SourceRow row(String id, String title, HeatSource source, String condition) {
        double heatOn = asked.rig().schedule().heatOnS();
        // the present source is judged as it is run, so that check says the same of it
        Rig rig = id.equals(CompareQuestion.PRESENT)
                ? asked.rig()
                : asked.rig().withHeatSource(source).withSchedule(from(heatOn, 1));
        CheckAnswer check = model.answer(new CheckQuestion(asked.with(rig)), cancel, ProgressSink.NONE);
        ParameterValues values = check.parameters();
        NeededState needed = check.needed();
        double wanted = HeatLimiter.wantedRatio(rig);
        double ratio = needed.heatAvailableW() / needed.heatNeededW();
        int full = count(check, StageState::full);
        boolean all = full == rig.stages().size() && ratio >= 1;
        String broken = broken(check.margins());
        Optional<Held> held = all ? Optional.of(held(rig, values, needed, ratio)) : Optional.empty();
        OptionalDouble pumping = time(check.warmup(), EventKind.FULL_PUMPING);
        OptionalDouble fullAfter =
                pumping.isPresent() ? OptionalDouble.of(pumping.getAsDouble() - heatOn) : OptionalDouble.empty();
        Optional<Session> session = held.isPresent() && pumping.isPresent()
                ? Optional.of(new Session(
                        inputJ(
                                check.warmup(),
                                heatOn,
                                Math.min(
                                        pumping.getAsDouble(),
                                        heatOn + asked.rig().sessionS())),
                        held.get().inputW() * Math.max(0, asked.rig().sessionS() - fullAfter.getAsDouble())))
                : Optional.empty();
        State state = state(rig, all && pumping.isPresent(), ratio >= wanted, broken, held);
        Optional<HeatLimiter> limiter = ratio < wanted || state == State.SHORT
                ? Optional.of(HeatLimiter.of(rig, values, needed))
                : Optional.empty();
        RowWords words = new RowWords(
                state, ratio, fullAfter, held, broken, limiter, rig.stages().size(), full);
        return new SourceRow(
                id,
                title,
                state,
                words.verdict(),
                condition,
                rig,
                check,
                ratio,
                count(check, StageState::lit),
                full,
                fullAfter,
                worst(check, MarginId.OIL_BULK, MarginId.OIL_FILM),
                worst(check, MarginId.GLASS_BOILER, MarginId.GLASS_BODY),
                limiter,
                broken,
                held,
                session,
                GasTrial.of(rig, check, heatOn, session, values),
                curves(check));
    }

    private HeatCurves curves(CheckAnswer check) {
        HeatTrial trial = new HeatTrial(check.asked(), cancel);
        RestAnswer rest = new RestAnswer(check.steady(), check.needed(), check.margins());
        // what the pump takes is the same for many sources and joins later
        return NeedCurve.curves(check.rig(), trial, List.of(), Optional.of(rest));
    }

    /** What the pump takes when it is heated as by this row's source, up to some heat, W. */
    List<WallPoint> need(SourceRow row, double upToW) {
        return NeedCurve.of(row.rig(), new HeatTrial(row.check().asked(), cancel), upToW);
    }

    private State state(Rig rig, boolean all, boolean withMargin, String broken, Optional<Held> held) {
        if (!all) {
            return State.SHORT;
        }
        if (!withMargin) {
            return State.TIGHT;
        }
        if (broken.isEmpty()) {
            return State.ENOUGH;
        }
        Rig down = rig.withSchedule(
                from(rig.schedule().heatOnS(), held.orElseThrow().share()));
        CheckAnswer then = model.answer(new CheckQuestion(asked.with(down)), cancel, ProgressSink.NONE);
        boolean full = then.steady().stages().stream().allMatch(StageState::full);
        return full && broken(then.margins()).isEmpty() ? State.TURN_DOWN : State.OVER;
    }

    /** Setting at which a tenth more heat than needed reaches the boiler at the temperature of full jets. */
    private static Held held(Rig rig, ParameterValues values, NeededState needed, double ratio) {
        double face = needed.state().outerFaceK();
        double oil = needed.state().liquidTemperatureK();
        double share = 1;
        if (ratio > HOLDING_RATIO) {
            share = Roots.bracketed(
                    f -> DeliveredHeat.at(rig, values, new Schedule.Power(0, f)).watts(face, oil)
                            - HOLDING_RATIO * needed.heatNeededW(),
                    0,
                    1,
                    1e-9,
                    0,
                    "the setting once hot");
        }
        return new Held(
                share,
                DeliveredHeat.at(rig, values, new Schedule.Power(0, share)).inputW(face, oil));
    }

    /** Energy taken between two times of a run, J; the first is that of a record. */
    static double inputJ(RunResult run, double fromS, double untilS) {
        double[] times = run.series().column(SeriesQuantity.TIME).values();
        double[] input = run.series().column(SeriesQuantity.SOURCE_INPUT).values();
        double sum = 0;
        for (int i = 1; i < times.length && times[i - 1] < untilS; i++) {
            double span = times[i] - times[i - 1];
            if (times[i - 1] >= fromS && span > 0) {
                double end = Math.min(untilS, times[i]);
                double atEnd = input[i - 1] + (input[i] - input[i - 1]) * (end - times[i - 1]) / span;
                sum += (end - times[i - 1]) * (input[i - 1] + atEnd) / 2;
            }
        }
        return sum;
    }

    static String broken(List<Margin> margins) {
        return margins.stream()
                .filter(m -> WindowSearch.worsensWithPower(m.id()) && m.status() == Margin.Status.FAILS)
                .map(Margin::title)
                .collect(Collectors.joining(", "));
    }

    private static int count(CheckAnswer check, java.util.function.Predicate<StageState> which) {
        return (int) check.steady().stages().stream().filter(which).count();
    }

    private static OptionalDouble worst(CheckAnswer check, MarginId... ids) {
        return check.margins().stream()
                .filter(m -> Arrays.asList(ids).contains(m.id()) && m.ratio().isPresent())
                .mapToDouble(m -> m.ratio().getAsDouble())
                .min();
    }

    static OptionalDouble time(RunResult run, EventKind kind) {
        return run.events().stream()
                .filter(e -> e.kind() == kind)
                .map(TimeEvent::timeS)
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** One sentence about a row. */
    private record RowWords(
            State state,
            double ratio,
            OptionalDouble fullAfterS,
            Optional<Held> held,
            String broken,
            Optional<HeatLimiter> limiter,
            int stages,
            int full) {
        String verdict() {
            String times = String.format(Locale.ROOT, "%.2f", ratio);
            return switch (state) {
                case ENOUGH -> ChoiceText.ROW_ENOUGH.say(times, after(), share());
                case TURN_DOWN -> ChoiceText.ROW_TURN_DOWN.say(times, after(), broken, share());
                case TIGHT ->
                    ChoiceText.ROW_TIGHT.say(times, limiter.orElseThrow().reason());
                case OVER -> ChoiceText.ROW_OVER.say(times, broken);
                case SHORT ->
                    ChoiceText.ROW_SHORT.say(
                            Integer.toString(full),
                            Integer.toString(stages),
                            times,
                            limiter.orElseThrow().reason());
            };
        }

        private String after() {
            return fullAfterS.isPresent() ? QuantityWriter.writeAuto(fullAfterS.getAsDouble(), Dimension.TIME) : "-";
        }

        private String share() {
            return Long.toString(Math.round(100 * held.orElseThrow().share()));
        }
    }
}
