package boilwright.spread;

import boilwright.answers.Trials;
import boilwright.answers.Trials.Trial;
import boilwright.errors.CancelledException;
import boilwright.files.ProgramVersion;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.Tally;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.thermal.EventKind;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** How sure are the answers for a rig? */
public final class Spread {
    private Spread() {}

    /**
     * Draws the uncertain inputs of a rig and asks the same question of every sample. May be cancelled at any time: the samples done until
     * then are the answer, the same as if no more had been asked for.
     *
     * @param rig the rig
     * @param fluid its fluid
     * @param dataVersion version of the fluid data
     * @param plan how many samples, of what, on how many threads
     * @param cancel stops the run
     * @param progress hears how far it is, on one of the run's threads
     * @throws boilwright.errors.InputRefusedException when a given range makes no sense for this rig
     * @throws boilwright.errors.ComputationException when the rig as it stands has no answer
     * @throws CancelledException when cancelled before the first sample was done
     */
    public static SpreadAnswer run(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            SpreadPlan plan,
            CancelToken cancel,
            ProgressSink progress) {
        SpreadInputs inputs = new SpreadInputs(rig, plan.ranges());
        Trials trials = new Trials(fluid);
        Collector collector = new Collector(inputs.list(), ask(trials, plan.scope(), inputs.nominal(), cancel));
        new SampleRunner(
                        plan,
                        inputs.list().size(),
                        point -> ask(trials, plan.scope(), inputs.draw(point), cancel),
                        collector,
                        cancel,
                        progress)
                .run();
        if (collector.done() == 0) {
            throw new CancelledException();
        }
        List<MarginSpread> margins = collector.margins();
        List<EventSpread> events = collector.events();
        return new SpreadAnswer(
                rig,
                fluid.title(),
                verdict(plan, collector, margins, events),
                plan.scope(),
                plan.seed(),
                plan.runs(),
                collector.done(),
                collector.accepted(),
                collector.failing(),
                inputs.list(),
                margins,
                events,
                collector.rejections(),
                new Adviser(inputs.list()).of(margins),
                notes(rig, inputs, collector),
                ProgramVersion.current(),
                dataVersion);
    }

    private static Trial ask(Trials trials, SpreadScope scope, SpreadInputs.Drawn drawn, CancelToken cancel) {
        return switch (scope) {
            case REST -> trials.atRest(drawn.rig(), drawn.values());
            case CHECK -> trials.check(drawn.rig(), drawn.values(), cancel);
            case WARMUP -> trials.warmup(drawn.rig(), drawn.values(), cancel);
        };
    }

    private static String verdict(
            SpreadPlan plan, Collector collector, List<MarginSpread> margins, List<EventSpread> events) {
        List<String> sentences = new ArrayList<>();
        String done = Integer.toString(collector.done());
        if (collector.done() < plan.runs()) {
            sentences.add(SpreadSentence.VERDICT_PARTIAL.say(done, Integer.toString(plan.runs())));
        }
        String accepted = Integer.toString(collector.accepted());
        Chance failing = collector.failing();
        if (!failing.isKnown()) {
            sentences.add(SpreadSentence.VERDICT_NO_ANSWER.say(done));
            return String.join(" ", sentences);
        }
        MarginSpread worst = margins.stream()
                .max(Comparator.comparingDouble(m -> m.band().failing().share()))
                .orElseThrow();
        if (failing.cases() == 0) {
            sentences.add(SpreadSentence.VERDICT_NONE_FAILS.say(accepted));
        } else if (failing.cases() == failing.samples()) {
            sentences.add(SpreadSentence.VERDICT_ALL_FAIL.say(accepted, worst.title()));
        } else {
            sentences.add(SpreadSentence.VERDICT_SOME_FAIL.say(
                    Percent.of(1 - failing.share()),
                    Percent.of(1 - failing.high()),
                    Percent.of(1 - failing.low()),
                    accepted,
                    worst.title(),
                    Percent.of(worst.band().failing().share())));
        }
        events.stream()
                .filter(e -> e.key().kind() == EventKind.FULL_PUMPING)
                .findFirst()
                .ifPresent(e -> sentences.add(time(e, accepted)));
        if (collector.accepted() < collector.done()) {
            sentences.add(SpreadSentence.VERDICT_REJECTED.say(
                    Integer.toString(collector.done() - collector.accepted()), done));
        }
        return String.join(" ", sentences);
    }

    private static String time(EventSpread pumping, String samples) {
        Band band = pumping.band().timeS();
        String comes = Percent.of(1 - pumping.band().never().share());
        return band.isEmpty()
                ? SpreadSentence.VERDICT_TIME_NEVER.say(comes)
                : SpreadSentence.VERDICT_TIME.say(
                        comes, samples, time(band.median()), time(band.low()), time(band.high()));
    }

    private static String time(OptionalDouble seconds) {
        return seconds.isPresent()
                ? QuantityWriter.writeAuto(seconds.getAsDouble(), Dimension.TIME)
                : SpreadSentence.NEVER.say();
    }

    private static List<String> notes(Rig rig, SpreadInputs inputs, Collector collector) {
        List<String> notes = new ArrayList<>();
        notes.add(SpreadSentence.NOTE_INPUTS.say(Integer.toString(inputs.list().size())));
        notes.add(SpreadSentence.NOTE_EXACT.say());
        Optional<String> set = Optional.of(Arrays.stream(Parameter.values())
                        .map(Parameter::id)
                        .filter(rig.parameters()::containsKey)
                        .filter(id -> inputs.list().stream().noneMatch(i -> i.id().equals(id)))
                        .collect(Collectors.joining(", ")))
                .filter(ids -> !ids.isEmpty());
        set.ifPresent(ids -> notes.add(SpreadSentence.NOTE_SET_BY_RIG.say(ids)));
        notes.add(SpreadSentence.NOTE_RANKING.say());
        notes.add(SpreadSentence.NOTE_ERROR.say());
        if (collector.accepted() > Tally.EXACT) {
            notes.add(SpreadSentence.NOTE_MANY.say());
        }
        return notes;
    }
}
