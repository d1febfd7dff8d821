package boilwright.spread;

import java.util.List;

/**
 * How an uncertainty run is to be made.
 *
 * @param runs number of samples, {@value #FEWEST_RUNS} to {@value #MOST_RUNS}
 * @param seed which of the random shifts of the samples; the same seed gives the same answer to the last bit
 * @param threads how many samples are computed at a time, 1 to {@value #MOST_THREADS}; changes nothing in the answer
 * @param scope what is asked of every sample
 * @param ranges ranges that a person gives
 */
public record SpreadPlan(int runs, long seed, int threads, SpreadScope scope, List<SpreadRange> ranges) {
    /** Below this number a band from 10 to 90 % means nothing. */
    public static final int FEWEST_RUNS = 20;
    /** Beyond this number the samples' own error is far below that of their ranges. */
    public static final int MOST_RUNS = 10_000_000;
    /** Most threads that are reasonable. */
    public static final int MOST_THREADS = 64;

    public SpreadPlan {
        if (runs < FEWEST_RUNS || runs > MOST_RUNS || threads < 1 || threads > MOST_THREADS) {
            throw new IllegalArgumentException(runs + " samples on " + threads + " threads");
        }
        ranges = List.copyOf(ranges);
    }

    /** A plan with the usual ranges on all processors. */
    public static SpreadPlan of(int runs, long seed, SpreadScope scope) {
        return new SpreadPlan(runs, seed, usualThreads(), scope, List.of());
    }

    /** As many threads as there are processors. */
    public static int usualThreads() {
        return Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
    }
}
