package boilwright.spread;

import boilwright.answers.Trial;
import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.SobolPoints;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Computes samples on several threads and hands them over in the order of their indices, so that what is made of them does not depend
 * on the number of threads. When stopped, what was handed over are the first samples, without a gap.
 */
final class SampleRunner {
    /** A thread does not run further ahead of the slowest sample than this: what waits to be handed over stays small. */
    private static final int AHEAD = 256;

    private final SpreadPlan plan;
    private final int dimensions;
    private final Sampled sampled;
    private final Collector collector;
    private final CancelToken cancel;
    private final ProgressSink progress;
    private final Map<Integer, Sample> waiting = new HashMap<>();
    private int next;
    private boolean broken;

    /** What is tried at every point; called by several threads at a time. */
    interface Sampled {
        Trial at(double[] point);
    }

    /** A sample that was computed: with its answer, or with the reason why there is none. */
    private record Sample(double[] point, Trial answer, Message refusal, boolean impossible) {}

    SampleRunner(
            SpreadPlan plan,
            int dimensions,
            Sampled sampled,
            Collector collector,
            CancelToken cancel,
            ProgressSink progress) {
        this.plan = plan;
        this.dimensions = dimensions;
        this.sampled = sampled;
        this.collector = collector;
        this.cancel = cancel;
        this.progress = progress;
    }

    /** Returns when all samples are handed over or the run was cancelled. */
    void run() {
        AtomicInteger number = new AtomicInteger();
        ExecutorService threads = Executors.newFixedThreadPool(plan.threads(), work -> {
            Thread thread = new Thread(work, "boilwright-spread-" + number.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int i = 0; i < plan.threads(); i++) {
                all.add(threads.submit(this::work));
            }
            for (Future<?> one : all) {
                one.get();
            }
        } catch (ExecutionException e) {
            throw unexpected(e.getCause());
        } catch (InterruptedException e) {
            stop();
            Thread.currentThread().interrupt();
            throw new CancelledException();
        } finally {
            threads.shutdown();
        }
    }

    private static RuntimeException unexpected(Throwable fault) {
        if (fault instanceof Error error) {
            throw error;
        }
        return fault instanceof RuntimeException exception ? exception : new IllegalStateException(fault);
    }

    private void work() {
        boolean whole = false;
        try {
            SobolPoints points = new SobolPoints(dimensions, plan.seed());
            for (int i = take(); i >= 0; i = take()) {
                hand(i, sample(points.point(i)));
            }
            whole = true;
        } catch (CancelledException e) {
            whole = true; // the sample that was under way is dropped
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            if (whole) {
                wake();
            } else {
                stop();
            }
        }
    }

    private Sample sample(double[] point) {
        try {
            return new Sample(point, sampled.at(point), null, false);
        } catch (InputRefusedException e) {
            return new Sample(point, null, e.faults().get(0), true);
        } catch (ComputationException e) {
            return new Sample(point, null, e.reason(), false);
        }
    }

    private synchronized int take() throws InterruptedException {
        while (!ended() && next - collector.done() >= AHEAD) {
            wait();
        }
        return ended() || next >= plan.runs() ? -1 : next++;
    }

    private synchronized void hand(int index, Sample sample) {
        waiting.put(index, sample);
        Sample ready;
        while ((ready = waiting.remove(collector.done())) != null) {
            if (ready.answer() != null) {
                collector.add(ready.point(), ready.answer());
            } else {
                collector.reject(ready.refusal(), ready.impossible());
            }
        }
        progress.progress((double) collector.done() / plan.runs(), "samples");
        notifyAll();
    }

    private boolean ended() {
        return broken || cancel.isCancelled();
    }

    private synchronized void wake() {
        notifyAll();
    }

    private synchronized void stop() {
        broken = true;
        notifyAll();
    }
}
