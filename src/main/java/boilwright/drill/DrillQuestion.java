package boilwright.drill;

import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.answers.Say;
import boilwright.drill.DrillSet.NotPlayed;
import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.Fault;
import boilwright.thermal.FaultDrill;
import boilwright.thermal.StageState;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;

/**
 * What does each fault do at this rig, and what would catch it? Faults are played through several at a time; the answer does not
 * depend on the number of threads.
 *
 * @param asked the rig
 * @param faults which; those that the rig can't have are named with the reason
 * @param atS when, s from cold along the schedule; empty: at rest
 * @param lateS how long after it the heat is cut late, s
 */
public record DrillQuestion(Asked asked, List<Fault> faults, OptionalDouble atS, double lateS)
        implements Question<DrillSet> {
    /** How long after a fault the heat is cut late, when nobody says otherwise, s. */
    public static final double LATE_S = 120;

    /** Ratings that are tried for full jets, over what would be enough if no more of it were lost. */
    private static final double[] TRIES = {1.05, 1.3, 1.7};

    public DrillQuestion {
        faults = List.copyOf(faults);
    }

    @Override
    public DrillSet answer(Model model, CancelToken cancel, ProgressSink progress) {
        CheckAnswer own = model.answer(new CheckQuestion(asked), cancel, progress);
        // at rest without full jets nothing that fails would show, and that is no all-clear
        Optional<CheckAnswer> working = atS.isPresent() || isFull(own) ? Optional.of(own) : working(own, model, cancel);
        CheckAnswer check = working.orElse(own);
        List<Fault> possible = new ArrayList<>();
        List<NotPlayed> notPlayed = new ArrayList<>();
        for (Fault fault : faults) {
            Optional<String> reason = FaultDrill.notPlayed(check.rig(), fault)
                    .or(() -> working.isEmpty() ? Optional.of(DrillSentence.NOT_PLAYED_DARK.say()) : Optional.empty());
            if (reason.isPresent()) {
                notPlayed.add(new NotPlayed(fault, reason.get()));
            } else {
                possible.add(fault);
            }
        }
        DrillTeam team = new DrillTeam(possible, cancel, progress);
        List<DrillAnswer> played = team.play((fault, heard) -> Drills.play(check, fault, atS, lateS, cancel, heard));
        List<Interlock> interlocks = played.isEmpty() ? List.of() : new Interlocks(check, played).list();
        Set<String> cautions = new LinkedHashSet<>();
        played.forEach(d -> cautions.addAll(d.cautions()));
        Set<String> notes = new LinkedHashSet<>();
        played.forEach(d -> notes.addAll(d.notes()));
        notes.add(DrillSentence.NOTE_SET_POINTS.say());
        return new DrillSet(
                check,
                check == own
                        ? said(working.isPresent(), played, interlocks)
                        : DrillSentence.PLAYED_WITH.say(
                                        Say.power(check.rig().heatSource().ratedPowerW()))
                                + " " + verdict(played, interlocks),
                played,
                notPlayed,
                interlocks,
                List.copyOf(cautions),
                List.copyOf(notes));
    }

    private static String said(boolean works, List<DrillAnswer> played, List<Interlock> interlocks) {
        return works ? verdict(played, interlocks) : DrillSentence.NOT_PLAYED_DARK.say();
    }

    private static boolean isFull(CheckAnswer check) {
        return check.steady().stages().stream().allMatch(StageState::full);
    }

    /** The rig with a rating at which every jet is full; empty when none up to twice the heat that is needed brings them there. */
    private static Optional<CheckAnswer> working(CheckAnswer own, Model model, CancelToken cancel) {
        HeatSource source = own.rig().heatSource();
        double first = source.ratedPowerW()
                * own.needed().heatNeededW()
                / Math.max(1, own.needed().heatAvailableW());
        for (double more : TRIES) {
            double watts = more * first;
            Rig rig = own.rig()
                    .withHeatSource(source.withRatedPower(watts))
                    .withSchedule(new Schedule(List.of(new Schedule.Power(0, 1))));
            try {
                CheckAnswer then = model.answer(
                        new CheckQuestion(own.asked().with(rig, own.parameters())), cancel, ProgressSink.NONE);
                if (isFull(then)) {
                    return Optional.of(then);
                }
            } catch (ComputationException e) {
                // no state of rest with that rating: the next one
            }
        }
        return Optional.empty();
    }

    private static String verdict(List<DrillAnswer> played, List<Interlock> interlocks) {
        List<DrillAnswer> harming = played.stream().filter(DrillAnswer::harms).toList();
        String all = Integer.toString(played.size());
        StringBuilder text = new StringBuilder(
                harming.isEmpty()
                        ? DrillSentence.SET_NONE.say(all)
                        : DrillSentence.SET_SOME.say(
                                all,
                                Integer.toString(harming.size()),
                                harming.stream()
                                        .map(d -> DrillWords.after(
                                                DrillSentence.HARM_AFTER,
                                                DrillSentence.HARM_AT_ONCE,
                                                DrillWords.title(d.fault()),
                                                DrillAnswer.firstHarm(d.asItIs())
                                                        .orElseThrow()
                                                        .orNever()))
                                        .collect(Collectors.joining(", "))));
        String lacking = interlocks.stream()
                .filter(i -> i.standing().isWanting())
                .map(i -> DrillWords.title(i.kind()))
                .collect(Collectors.joining(", "));
        if (!lacking.isEmpty()) {
            text.append(' ').append(DrillSentence.SET_LACKING.say(lacking));
        }
        return text.toString();
    }

    /** Plays drills on a few threads; answers come in the order of the faults. */
    private static final class DrillTeam {
        /** More threads than this are not worth their start. */
        private static final int MOST_THREADS = 4;

        private final List<Fault> faults;
        private final CancelToken cancel;
        private final ProgressSink progress;

        DrillTeam(List<Fault> faults, CancelToken cancel, ProgressSink progress) {
            this.faults = faults;
            this.cancel = cancel;
            this.progress = progress;
        }

        /** One drill. */
        interface Player {
            DrillAnswer play(Fault fault, ProgressSink progress);
        }

        List<DrillAnswer> play(Player player) {
            if (faults.size() < 2) {
                return faults.stream().map(f -> player.play(f, progress)).toList();
            }
            int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
            ExecutorService team = Executors.newFixedThreadPool(threads, work -> {
                Thread thread = new Thread(work, "drill");
                thread.setDaemon(true);
                return thread;
            });
            try {
                List<Future<DrillAnswer>> waiting = faults.stream()
                        .map(f -> team.submit(() -> player.play(f, ProgressSink.NONE)))
                        .toList();
                List<DrillAnswer> played = new ArrayList<>();
                for (Future<DrillAnswer> one : waiting) {
                    progress.progress((double) played.size() / faults.size(), "drill");
                    played.add(one.get());
                }
                return played;
            } catch (ExecutionException e) {
                if (e.getCause() instanceof RuntimeException known) {
                    throw known;
                }
                throw new IllegalStateException(e.getCause());
            } catch (InterruptedException e) {
                cancel.cancel();
                Thread.currentThread().interrupt();
                throw new CancelledException();
            } finally {
                team.shutdownNow();
            }
        }
    }
}
