package boilwright.rise;

/**
 * How a pressure may rise in a chamber that is shut off, in s and Pa from the first reading: a level p0, a straight part of
 * slope a, and a bent part of initial slope b and time constant tau.
 *
 * <ul>
 *   <li>leak: p0 + a t; gas comes in at a constant rate.
 *   <li>surface gas: p0 + b tau (1 - exp(-t/tau)); the surfaces give gas off until they are in balance with it.
 *   <li>power law: p0 + b tau ln(1 + t/tau); the rate falls with one over the time since the surfaces began, a time tau
 *       before the first reading. It is the usual outgassing law q1 (t/1 h)^-1 (R. J. Elsey, Vacuum 25 (1975) 299 and
 *       347) summed up over the time.
 *   <li>mixed: p0 + a t + b tau (1 - exp(-t/tau)).
 * </ul>
 *
 * <p>The time constant is fitted as its logarithm.
 */
public enum RiseCurve implements LeastSquaresFit.Curve {
    /** No rise. */
    LEVEL("none", false, Bend.NONE),
    /** A straight line. */
    LEAK("leak", true, Bend.NONE),
    /** Release toward a balance. */
    SURFACE_GAS("surface-gas", false, Bend.BALANCE),
    /** Release that falls with one over the time. */
    POWER_LAW("surface-gas-power-law", false, Bend.POWER_LAW),
    /** A leak, and release toward a balance. */
    MIXED("mixed", true, Bend.BALANCE);

    private enum Bend {
        NONE,
        BALANCE,
        POWER_LAW
    }

    private final String id;
    private final boolean straight;
    private final Bend bend;

    RiseCurve(String id, boolean straight, Bend bend) {
        this.id = id;
        this.straight = straight;
        this.bend = bend;
    }

    /** Its name for other programs. */
    public String id() {
        return id;
    }

    /** Whether it has a straight part. */
    boolean hasStraight() {
        return straight;
    }

    /** Whether it has a bent part. */
    boolean hasBend() {
        return bend != Bend.NONE;
    }

    /** The place of the straight part's slope among the parameters. */
    int straightIndex() {
        return 1;
    }

    /** The place of the bent part's initial slope among the parameters; the logarithm of its time constant follows. */
    int bentIndex() {
        return straight ? 2 : 1;
    }

    /** The place of the logarithm of the time constant among the parameters. */
    int timeIndex() {
        return bentIndex() + 1;
    }

    @Override
    public int parameterCount() {
        return 1 + (straight ? 1 : 0) + (hasBend() ? 2 : 0);
    }

    @Override
    public double value(double x, double[] parameters) {
        return parameters[0] + straightPart(x, parameters) + bentPart(x, parameters);
    }

    /** What the straight part adds, Pa. */
    double straightPart(double x, double[] parameters) {
        return straight ? parameters[straightIndex()] * x : 0;
    }

    /** What the bent part adds, Pa. */
    double bentPart(double x, double[] parameters) {
        return hasBend() ? parameters[bentIndex()] * shape(x, Math.exp(parameters[timeIndex()])) : 0;
    }

    @Override
    public void gradient(double x, double[] parameters, double[] into) {
        into[0] = 1;
        if (straight) {
            into[straightIndex()] = x;
        }
        if (hasBend()) {
            double tau = Math.exp(parameters[timeIndex()]);
            into[bentIndex()] = shape(x, tau);
            into[timeIndex()] = parameters[bentIndex()] * tau * shapeByTau(x, tau);
        }
    }

    /** The bent part for an initial slope of one. */
    private double shape(double x, double tau) {
        return bend == Bend.BALANCE ? -tau * Math.expm1(-x / tau) : tau * Math.log1p(x / tau);
    }

    private double shapeByTau(double x, double tau) {
        double u = x / tau;
        return bend == Bend.BALANCE ? -Math.expm1(-u) - u * Math.exp(-u) : Math.log1p(u) - u / (1 + u);
    }
}
