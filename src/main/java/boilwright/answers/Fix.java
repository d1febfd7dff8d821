package boilwright.answers;

import boilwright.rig.Rig;

/**
 * One single change and what it does to the gauge.
 *
 * @param id what kind of change, and of what: {@code wide:vacuum.line[1]}
 * @param title the change in words
 * @param rig the changed rig
 * @param gaugePa pressure at the gauge then, Pa
 * @param factor pressure now over that, above 1
 */
public record Fix(String id, String title, Rig rig, double gaugePa, double factor) {
    static final String WAITING = "wait:";

    /** Whether it is no change of the rig, but mere pumping. */
    boolean isWaiting() {
        return id.startsWith(WAITING);
    }
}
