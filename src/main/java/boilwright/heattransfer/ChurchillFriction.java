package boilwright.heattransfer;

/**
 * Darcy friction factor of a round tube over every flow: laminar, transition and turbulent, smooth and rough, in one smooth
 * formula (S. W. Churchill, Chem. Eng. 84 (24), 7 November 1977, p. 91): f = 8 ((8/Re)^12 + (A + B)^(-3/2))^(1/12), A = (2.457
 * ln(1/((7/Re)^0.9 + 0.27 e/d)))^16, B = (37530/Re)^16. Below a Reynolds number of 2000 it is 64/Re within 0.2 percent. It
 * follows Colebrook's equation within 1 percent for 1e4 <= Re <= 1e7 and e/d <= 0.001 (for any roughness to 0.05 from 1e5),
 * within 3 percent from 4000.
 */
public final class ChurchillFriction {
    private static final double LAMINAR = 64;

    private ChurchillFriction() {}

    /**
     * Friction factor times Reynolds number, which stays finite, 64, when the flow stops; see {@link DarcyWeisbach}.
     *
     * @param reynolds on the bore, at least 0
     * @param relativeRoughness 0 to 0.05
     */
    public static double timesReynolds(double reynolds, double relativeRoughness) {
        if (reynolds < 1) {
            // the turbulent part is below 1e-100 here, and its powers would overflow
            return LAMINAR;
        }
        double turbulent = turbulent(reynolds, relativeRoughness) * reynolds / LAMINAR;
        return LAMINAR * Math.pow(1 + Math.pow(turbulent, 12), 1.0 / 12);
    }

    /**
     * The part of the formula that rules turbulent flow, 8 (A + B)^(-1/8), without the laminar term; it dies away below the
     * transition.
     *
     * @param reynolds on the bore, at least 1
     * @param relativeRoughness 0 to 0.05
     */
    public static double turbulent(double reynolds, double relativeRoughness) {
        double wall = Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness;
        double a = Math.pow(-2.457 * Math.log(wall), 16);
        double b = Math.pow(37530 / reynolds, 16);
        return 8 * Math.pow(a + b, -1.0 / 8);
    }
}
