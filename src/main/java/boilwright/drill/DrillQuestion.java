package boilwright.drill;

import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.drill.DrillSet.NotPlayed;
import boilwright.errors.CancelledException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.thermal.Fault;
import boilwright.thermal.FaultDrill;
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

    public DrillQuestion {
        faults = List.copyOf(faults);
    }

    @Override
    public DrillSet answer(Model model, CancelToken cancel, ProgressSink progress) {
        CheckAnswer check = model.answer(new CheckQuestion(asked), cancel, progress);
        List<Fault> possible = new ArrayList<>();
        List<NotPlayed> notPlayed = new ArrayList<>();
        for (Fault fault : faults) {
            Optional<String> reason = FaultDrill.notPlayed(check.rig(), fault);
            if (reason.isPresent()) {
                notPlayed.add(new NotPlayed(fault, reason.get()));
            } else {
                possible.add(fault);
            }
        }
        DrillTeam team = new DrillTeam(possible, cancel, progress);
        List<DrillAnswer> played = team.play((fault, heard) -> Drills.play(check, fault, atS, lateS, cancel, heard));
        List<Interlock> interlocks = new Interlocks(check, played).list();
        Set<String> cautions = new LinkedHashSet<>();
        played.forEach(d -> cautions.addAll(d.cautions()));
        Set<String> notes = new LinkedHashSet<>();
        played.forEach(d -> notes.addAll(d.notes()));
        notes.add(DrillSentence.NOTE_SET_POINTS.say());
        return new DrillSet(
                check,
                verdict(played, interlocks),
                played,
                notPlayed,
                interlocks,
                List.copyOf(cautions),
                List.copyOf(notes));
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
