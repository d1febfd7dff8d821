package boilwright.vacuum;

import java.util.OptionalDouble;

/** What the jets do with gas in the course of a run. Time 0 is the moment at which the backing pump has the foreline down. */
public interface JetTimeline {
    /** What they do at a time, s; after the end as at the end. */
    JetAction at(double timeS);

    /** Times at which that jumps, s, rising. */
    double[] jumpsS();

    /** When every jet is full for good, s; empty when that never happens. */
    OptionalDouble allFullS();
}
