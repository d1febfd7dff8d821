package boilwright.choice;

import boilwright.answers.Asked;
import boilwright.answers.Cautions;
import boilwright.answers.HeatLimiter;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.choice.CompareAnswer.Unfit;
import boilwright.choice.SourceRow.State;
import boilwright.choice.SourceRow.Way;
import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.files.ProgramVersion;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.HeatSource;
import boilwright.rig.OfferedSource;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Which of several heat sources drives this pump, and what limits the others? Without an answer for the rig's own source there is none.
 *
 * @param asked the rig, whose own source is the first row, and the pumping in one session after full pumping is reached
 * @param sources the other sources, in the order of the rows
 * @param room where the rig stands
 * @param threads how many sources are worked out at once; the answer is the same for any number
 */
public record CompareQuestion(Asked asked, List<OfferedSource> sources, RoomAir room, int threads)
        implements Question<CompareAnswer> {
    /** Id of the rig's own source. */
    public static final String PRESENT = "present";

    public CompareQuestion {
        sources = List.copyOf(sources);
    }

    /**
     * The air of the room around the rig.
     *
     * @param volumeM3 its volume, m3
     * @param changesPerH its changes of air, 1/h
     */
    public record RoomAir(double volumeM3, double changesPerH) {
        /** A closed room of usual size. */
        public static final RoomAir USUAL = new RoomAir(TypicalValues.WORKROOM_M3, TypicalValues.AIR_CHANGES_PER_H);
    }

    private record Outcome(Optional<SourceRow> row, Optional<Unfit> unfit) {}

    @Override
    public CompareAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        SourceTrial trial = new SourceTrial(asked, model, cancel);
        List<Outcome> outcomes = outcomes(trial, progress);
        List<SourceRow> rows = besideNeed(
                trial, outcomes.stream().flatMap(o -> o.row().stream()).toList());
        List<Unfit> unfit = outcomes.stream().flatMap(o -> o.unfit().stream()).toList();
        Optional<SourceRow> best = recommended(rows);
        return new CompareAnswer(
                rig(),
                asked.fluid().title(),
                verdict(rows, best),
                asked.rig().sessionS(),
                HeatLimiter.wantedRatio(rig()),
                rows,
                unfit,
                best.map(SourceRow::id),
                best.map(CompareQuestion::asRun),
                carbonMonoxide(rows),
                cautions(rows),
                notes(),
                ProgramVersion.current(),
                asked.dataVersion());
    }

    /** What the pump takes, worked out once for each way of heating and as far as any source of it goes. */
    private List<SourceRow> besideNeed(SourceTrial trial, List<SourceRow> rows) {
        Map<Way, List<WallPoint>> needs = new EnumMap<>(Way.class);
        for (SourceRow row : rows) {
            needs.computeIfAbsent(row.way(), way -> trial.need(row, most(rows, way)));
        }
        return rows.stream().map(row -> row.beside(needs.get(row.way()))).toList();
    }

    private static double most(List<SourceRow> rows, Way way) {
        return rows.stream()
                .filter(row -> row.way() == way)
                .mapToDouble(row -> row.check().steady().heatDeliveredW())
                .max()
                .orElse(0);
    }

    private List<Outcome> outcomes(SourceTrial trial, ProgressSink progress) {
        int count = sources.size() + 1;
        AtomicInteger done = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(Math.max(1, Math.min(threads, count)));
        try {
            List<Future<Outcome>> waiting = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int index = i;
                waiting.add(pool.submit(() -> {
                    Outcome outcome = index == 0 ? present(trial) : offered(trial, sources.get(index - 1));
                    synchronized (done) {
                        progress.progress((double) done.incrementAndGet() / count, "compare");
                    }
                    return outcome;
                }));
            }
            List<Outcome> outcomes = new ArrayList<>();
            for (Future<Outcome> one : waiting) {
                outcomes.add(get(one));
            }
            return outcomes;
        } finally {
            pool.shutdownNow();
        }
    }

    private static Outcome get(Future<Outcome> one) {
        try {
            return one.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancelledException();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    private Rig rig() {
        return asked.rig();
    }

    private Outcome present(SourceTrial trial) {
        HeatSource source = rig().heatSource();
        String title = ChoiceText.PRESENT_TITLE.say(
                source.title(), QuantityWriter.writeAuto(source.ratedPowerW(), Dimension.POWER));
        return new Outcome(Optional.of(trial.row(PRESENT, title, source, "")), Optional.empty());
    }

    private Outcome offered(SourceTrial trial, OfferedSource offered) {
        SourceFit fit = SourceFit.of(rig(), offered);
        if (fit.source().isEmpty()) {
            return new Outcome(Optional.empty(), Optional.of(new Unfit(offered.id(), offered.title(), fit.words())));
        }
        try {
            return new Outcome(
                    Optional.of(trial.row(
                            offered.id(), offered.title(), fit.source().get(), fit.words())),
                    Optional.empty());
        } catch (ComputationException e) {
            // one source with which this pump leaves every known range must not take the others' answers away
            String reason = ChoiceText.NO_ANSWER.say(e.reason().text());
            return new Outcome(Optional.empty(), Optional.of(new Unfit(offered.id(), offered.title(), reason)));
        }
    }

    /**
     * The present source when it is enough. Else, of the best that there are, those that wear oil and glass least, and of these the one with the least
     * energy.
     */
    private static Optional<SourceRow> recommended(List<SourceRow> rows) {
        SourceRow present = rows.get(0);
        if (present.isEnough()) {
            return Optional.of(present);
        }
        return rows.stream()
                .filter(SourceRow::isEnough)
                .min(Comparator.comparing(SourceRow::state)
                        .thenComparingLong(CompareQuestion::wear)
                        .thenComparingDouble(r -> r.session().orElseThrow().totalJ())
                        .thenComparing(SourceRow::id));
    }

    /** Margins of oil and glass: a source that keeps well away from them is preferred. */
    private static boolean wears(MarginId id) {
        return switch (id.part()) {
            case OIL, GLASS -> id != MarginId.LIQUID && id != MarginId.SUPERHEAT && id != MarginId.OIL_LOSS;
            case HEAT, JETS, COOLING, GAS -> false;
        };
    }

    private static long wear(SourceRow row) {
        return row.check().margins().stream()
                .filter(m -> wears(m.id()))
                .filter(m -> m.status() == Margin.Status.TIGHT || m.status() == Margin.Status.FAILS)
                .count();
    }

    /** With the power that it is run at: all of it where no limit stands in the way, else what is held once hot. */
    private static Rig asRun(SourceRow row) {
        return row.state() == State.ENOUGH
                ? row.rig()
                : row.rig()
                        .withSchedule(SourceTrial.from(
                                row.rig().schedule().heatOnS(),
                                row.held().orElseThrow().share()));
    }

    private static String verdict(List<SourceRow> rows, Optional<SourceRow> best) {
        SourceRow present = rows.get(0);
        StringBuilder text = new StringBuilder(present.check()
                .withElsewhere(ChoiceText.COMPARE_PRESENT.say(present.title(), present.verdict()), List.of()));
        long enough = rows.stream().filter(SourceRow::isEnough).count();
        text.append(' ').append(ChoiceText.COMPARE_COUNT.say(Long.toString(enough), Integer.toString(rows.size())));
        if (best.isEmpty()) {
            return text.append(' ').append(ChoiceText.COMPARE_NONE.say()).toString();
        }
        String recommended = best.get() == present
                ? ChoiceText.COMPARE_KEEP.say()
                : ChoiceText.COMPARE_BEST.say(best.get().title(), best.get().verdict());
        return text.append(' ').append(recommended).toString();
    }

    private Optional<CarbonMonoxide> carbonMonoxide(List<SourceRow> rows) {
        double longest = rows.stream()
                .filter(r -> r.gas().isPresent())
                .mapToDouble(r -> asked.rig().sessionS())
                .max()
                .orElse(-1);
        return longest < 0
                ? Optional.empty()
                : Optional.of(CarbonMonoxide.of(room.volumeM3(), room.changesPerH(), longest));
    }

    private List<String> cautions(List<SourceRow> rows) {
        Set<String> all = new LinkedHashSet<>();
        for (SourceRow row : rows) {
            for (Cautions.Caution caution :
                    Cautions.placed(row.rig(), asked.fluid(), rig().room().temperatureK())) {
                all.add(caution.sentence());
            }
        }
        return List.copyOf(all);
    }

    private List<String> notes() {
        return List.of(
                ChoiceText.NOTE_COMPARE_FULL.say(),
                ChoiceText.NOTE_COMPARE_SESSION.say(
                        QuantityWriter.writeAuto(asked.rig().sessionS(), Dimension.TIME)),
                ChoiceText.NOTE_COMPARE_BASE.say(
                        QuantityWriter.writeAuto(rig().boiler().heatedAreaM2(), Dimension.AREA)),
                ChoiceText.NOTE_COMPARE_RULE.say(),
                ChoiceText.NOTE_COMPARE_GENERIC.say());
    }
}
