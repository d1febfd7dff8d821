package boilwright.gasflow;

/**
 * How the gas that a surface gives off falls with time, q = q1 (t/1 h)^-a (R. J. Elsey, Vacuum 25 (1975) 299; J. F. O'Hanlon, A
 * User's Guide to Vacuum Technology): a about 1 for metals and glass, about one half where gas comes from inside by diffusion.
 * Held constant before one minute, where the power law would grow beyond measure.
 */
public final class OutgassingLaw {
    /** Start of the power law, s. */
    private static final double FIRST_S = 60;

    private static final double HOUR_S = 3600;

    private OutgassingLaw() {}

    /**
     * Rate at a time.
     *
     * @param afterOneHour q1, Pa m3/s per m2
     * @param exponent a, 0 or more
     * @param timeS time since the surface was pumped, s
     * @return Pa m3/s per m2
     */
    public static double rate(double afterOneHour, double exponent, double timeS) {
        return afterOneHour * Math.pow(Math.max(FIRST_S, timeS) / HOUR_S, -exponent);
    }
}
