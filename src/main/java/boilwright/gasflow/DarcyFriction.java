package boilwright.gasflow;

/**
 * Darcy friction factor of a round duct: pressure drop = f (L/d) rho v^2/2. For liquids as well as gases.
 */
public final class DarcyFriction {
    private DarcyFriction() {}

    /**
     * All regimes and roughness in one formula, S. W. Churchill, Chem. Eng. 84 (24) (1977) 91: 8 ((8/Re)^12 + (A + B)^-1.5)^(1/12), A =
     * (2.457 ln(1/((7/Re)^0.9 + 0.27 e/d)))^16, B = (37530/Re)^16. Between 2000 and 4000 it dips and climbs as a real pipe
     * may; it is smooth everywhere.
     *
     * @param reynolds on the bore, above 0
     * @param relativeRoughness e/d, 0 (smooth) to 0.05
     */
    public static double churchill(double reynolds, double relativeRoughness) {
        double inside = Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness;
        double a = sixteenth(-2.457 * Math.log(inside));
        double b = sixteenth(37530 / reynolds);
        double laminar = 8 / reynolds;
        double cubed = laminar * laminar * laminar;
        double sum = a + b;
        double rest = 1 / (sum * Math.sqrt(sum));
        return 8 * Math.pow(cubed * cubed * cubed * cubed + rest, 1.0 / 12);
    }

    /**
     * Smooth duct in the simplest form, the larger of Poiseuille's 64/Re and H. Blasius' 0.316 Re^(-1/4) (VDI-Forschungsheft
     * 131 (1913); up to Re 1e5). Continuous; they meet near Re 1189.
     *
     * @param reynolds on the bore, above 0
     */
    public static double smooth(double reynolds) {
        return Math.max(64 / reynolds, 0.316 / Math.sqrt(Math.sqrt(reynolds)));
    }

    private static double sixteenth(double value) {
        double v2 = value * value;
        double v4 = v2 * v2;
        double v8 = v4 * v4;
        return v8 * v8;
    }
}
