package boilwright.spread;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.answers.Trial;
import boilwright.errors.CancelledException;
import boilwright.files.ProgramVersion;
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

/**
 * How sure are the answers for a rig? The uncertain inputs are drawn and the same is asked of every sample. May be cancelled at any
 * time: the samples done until then are the answer, the same as if no more had been asked for; before the first there is none.
 *
 * @param asked the rig
 * @param plan how many samples, of what, on how many threads
 */
public record SpreadQuestion(Asked asked, SpreadPlan plan) implements Question<SpreadAnswer> {
    @Override
    public SpreadAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        SpreadInputs inputs = new SpreadInputs(asked.rig(), plan.ranges());
        Collector collector = new Collector(inputs.list(), trial(inputs.nominal(), cancel));
        new SampleRunner(
                        plan,
                        inputs.list().size(),
                        point -> trial(inputs.draw(point), cancel),
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
                asked.rig(),
                asked.fluid().title(),
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
                notes(asked.rig(), inputs, collector),
                ProgramVersion.current(),
                asked.dataVersion());
    }

    private Trial trial(SpreadInputs.Drawn drawn, CancelToken cancel) {
        Asked sample = asked.with(drawn.rig(), drawn.values());
        return switch (plan.scope()) {
            case REST -> Trial.atRest(sample);
            case CHECK -> Trial.ofCheck(sample, cancel);
            case WARMUP -> Trial.ofWarmup(sample, cancel);
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
