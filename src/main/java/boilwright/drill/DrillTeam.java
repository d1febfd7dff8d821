package boilwright.drill;

import boilwright.errors.CancelledException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.thermal.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Plays drills on a few threads; answers come in the order of the faults. */
final class DrillTeam {
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
