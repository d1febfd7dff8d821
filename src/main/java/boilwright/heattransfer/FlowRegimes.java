package boilwright.heattransfer;

/**
 * From laminar to turbulent: linear in the Reynolds number between 2300 and 4000, as V. Gnielinski, Int. J. Heat Mass
 * Transfer 63 (2013) 134, does for tubes (his paper of 1995, Forsch. Ing.-Wes. 61, 240, went to 1e4).
 */
final class FlowRegimes {
    /** Reynolds number up to which flow is laminar. */
    static final double LAMINAR_END = 2300;
    /** Reynolds number from which flow is turbulent. */
    static final double TURBULENT_START = 4000;

    private FlowRegimes() {}

    /** Whether the value between both ends has to be taken from {@link #between}. */
    static boolean isTransitional(double reynolds) {
        return reynolds < TURBULENT_START;
    }

    /** Linear between the laminar value at 2300 and the turbulent one at 4000. */
    static double between(double reynolds, double laminarEnd, double turbulentStart) {
        double share = (reynolds - LAMINAR_END) / (TURBULENT_START - LAMINAR_END);
        return (1 - share) * laminarEnd + share * turbulentStart;
    }
}
