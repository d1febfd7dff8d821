package boilwright.dashboard.work;

import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.errors.OutputNotWrittenException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.PriorityBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;

/**
 * The one background thread. The window's thread requests jobs; they run one after the other, the most urgent first; outcomes come
 * back on the window's thread. A newer question stops the older ones. All methods are called on the window's thread.
 */
public final class BackgroundWork {
    /** How urgent a job is, the most urgent first. */
    public enum Urgency {
        /** Reading and writing files; never stopped half way. */
        FILES,
        /** A question whose older answers nobody wants any more: requesting it stops every other question. */
        QUESTION,
        /** Copies against a crash and other memory: may wait for the answer, but is never stopped. */
        KEEPING,
        /** What may be known a little later; a question stops it. */
        AFTERWARDS
    }

    /** A job. */
    @FunctionalInterface
    public interface Job<T> {
        /** Does it; looks at the token now and then. */
        T run(CancelToken cancel, ProgressSink progress);
    }

    private final ThreadPoolExecutor thread =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new PriorityBlockingQueue<>(), BackgroundWork::named);
    private final Executor window;
    private final Consumer<Throwable> faults;
    private final List<Task<?>> open = new ArrayList<>();
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper(this, "busy");
    private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper(this, "progress");
    private long count;

    /**
     * @param window runs something on the window's thread, later
     * @param faults hears of what should never happen, on the background thread
     */
    public BackgroundWork(Executor window, Consumer<Throwable> faults) {
        this.window = window;
        this.faults = faults;
    }

    /**
     * Requests a job.
     *
     * @param urgency how urgent it is
     * @param job what to do, on the background thread
     * @param done gets the outcome, on the window's thread, unless a newer question overtook the job
     * @param refused gets the refusal instead: {@link InputRefusedException}, {@link ComputationException} or {@link
     *     OutputNotWrittenException}; a {@link CompletionException} after an unexpected fault, which is being dealt with
     */
    public <T> void request(Urgency urgency, Job<T> job, Consumer<T> done, Consumer<RuntimeException> refused) {
        if (urgency == Urgency.QUESTION) {
            stopQuestions();
        }
        Task<T> task = new Task<>(urgency, count++, job, done, refused);
        open.add(task);
        busy.set(true);
        thread.execute(task);
    }

    /** Stops every question that is open; files are still written. */
    public void stopQuestions() {
        List<Task<?>> questions = open.stream().filter(Task::isQuestion).toList();
        questions.forEach(task -> task.cancel.cancel());
        open.removeAll(questions);
    }

    /** Whether anything is being done. */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /** How far the job is that runs now, 0 to 1. */
    public ReadOnlyDoubleProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    /** Stops questions, lets files be written and takes no more. */
    public void close() {
        stopQuestions();
        thread.shutdown();
        try {
            thread.awaitTermination(5, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static Thread named(Runnable work) {
        Thread made = new Thread(work, "boilwright-work");
        made.setDaemon(true);
        return made;
    }

    private void ended(Task<?> task, Runnable what) {
        window.execute(() -> {
            boolean wanted = open.remove(task);
            busy.set(!open.isEmpty());
            progress.set(0);
            if (wanted) {
                what.run();
            }
        });
    }

    /** One job in the queue. */
    private final class Task<T> implements Runnable, Comparable<Task<?>>, ProgressSink {
        private final CancelToken cancel = new CancelToken();
        private final AtomicBoolean told = new AtomicBoolean();
        private final Urgency urgency;
        private final long number;
        private final Job<T> job;
        private final Consumer<T> done;
        private final Consumer<RuntimeException> refused;
        private volatile double reached;

        Task(Urgency urgency, long number, Job<T> job, Consumer<T> done, Consumer<RuntimeException> refused) {
            this.urgency = urgency;
            this.number = number;
            this.job = job;
            this.done = done;
            this.refused = refused;
        }

        boolean isQuestion() {
            return urgency == Urgency.QUESTION || urgency == Urgency.AFTERWARDS;
        }

        @Override
        public void run() {
            try {
                cancel.check();
                T outcome = job.run(cancel, this);
                cancel.check();
                ended(this, () -> done.accept(outcome));
            } catch (CancelledException overtaken) {
                ended(this, () -> {});
            } catch (InputRefusedException | ComputationException | OutputNotWrittenException refusal) {
                ended(this, () -> refused.accept(refusal));
            } catch (Throwable fault) { // errors too: the thread has to live on
                ended(this, () -> refused.accept(new CompletionException(fault)));
                faults.accept(fault);
            }
        }

        @Override
        public void progress(double fraction, String phase) {
            reached = fraction;
            // One message in flight at most, however often the computation reports.
            if (told.compareAndSet(false, true)) {
                window.execute(() -> {
                    told.set(false);
                    if (open.contains(this)) {
                        BackgroundWork.this.progress.set(reached);
                    }
                });
            }
        }

        @Override
        public int compareTo(Task<?> other) {
            int byUrgency = urgency.compareTo(other.urgency);
            return byUrgency != 0 ? byUrgency : Long.compare(number, other.number);
        }
    }
}
