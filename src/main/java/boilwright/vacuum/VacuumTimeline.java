package boilwright.vacuum;

/**
 * Pressures against time.
 *
 * @param timeS s after the backing pump has the foreline down, rising; do not change, like the arrays below
 * @param chamberPa pressure in the chamber, Pa
 * @param gaugePa pressure where the gauge sits, Pa
 * @param inletPa pressure at the pump's inlet, Pa
 * @param forelinePa pressure at the pump's outlet, Pa
 * @param crossover when the jets take over
 * @param balanceRelative worst balance of gas: what came less what left less what the chamber holds more, over the largest
 */
public record VacuumTimeline(
        double[] timeS,
        double[] chamberPa,
        double[] gaugePa,
        double[] inletPa,
        double[] forelinePa,
        Crossover crossover,
        double balanceRelative) {}
