package boilwright.dashboard.work;

import boilwright.dashboard.work.BackgroundWork.Job;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;

/** Quick questions of which only the last counts: the ones before it are passed over. Belongs to the window's thread. */
public final class Latest {
    private final AtomicLong last = new AtomicLong();
    private final BackgroundWork work;

    /** @param work where questions are answered */
    public Latest(BackgroundWork work) {
        this.work = work;
    }

    /**
     * Requests an answer.
     *
     * @param job works the answer out on the background thread
     * @param done gets it
     * @param refused gets the words of a refusal instead
     */
    public <T> void request(Job<T> job, Consumer<T> done, Consumer<String> refused) {
        long number = last.incrementAndGet();
        work.request(
                Urgency.AFTERWARDS,
                (cancel, progress) ->
                        number == last.get() ? Optional.of(job.run(cancel, progress)) : Optional.<T>empty(),
                answer -> {
                    if (number == last.get()) {
                        answer.ifPresent(done);
                    }
                },
                why -> {
                    if (number == last.get()) {
                        refused.accept(Answering.words(why));
                    }
                });
    }
}
