package boilwright.gasflow;

/**
 * Isentropic flow of an ideal gas through a nozzle (Ames Research Staff, Equations, Tables, and Charts for Compressible
 * Flow, NACA Report 1135, 1953). gamma is the ratio of specific heats, above 1 (heavy vapours 1.02 to 1.05, mercury 1.667).
 * A mass flux is written as a factor: G = factor p0/sqrt(Rs T0).
 */
public final class ChokedNozzle {
    private static final int NEWTON_LIMIT = 100;
    private static final double ROUNDING = 1e-12;

    private ChokedNozzle() {}

    /**
     * Flux factor of a choked throat, sqrt(g) (2/(g + 1))^((g + 1)/(2 (g - 1))).
     *
     * @param gamma above 1
     */
    public static double chokedFactor(double gamma) {
        return Math.sqrt(gamma) * Math.pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
    }

    /**
     * Pressure in a choked throat over stagnation pressure, (2/(g + 1))^(g/(g - 1)); below it the flux no longer depends on
     * the pressure downstream.
     *
     * @param gamma above 1
     */
    public static double criticalPressureRatio(double gamma) {
        return Math.pow(2 / (gamma + 1), gamma / (gamma - 1));
    }

    /**
     * The same with the two constants of the gas kept by the caller.
     *
     * @param pressureRatio downstream over stagnation pressure, at least 0
     * @param gamma above 1
     * @param criticalPressureRatio from {@link #criticalPressureRatio(double)}
     * @param chokedFactor from {@link #chokedFactor(double)}
     */
    public static double fluxFactor(
            double pressureRatio, double gamma, double criticalPressureRatio, double chokedFactor) {
        if (pressureRatio >= 1) {
            return 0;
        }
        if (pressureRatio <= criticalPressureRatio) {
            return chokedFactor;
        }
        double log = Math.log(pressureRatio);
        // expm1 keeps the digits where the pressures are almost equal
        double head = -Math.expm1((gamma - 1) / gamma * log);
        double factor = Math.exp(log / gamma) * Math.sqrt(2 * gamma / (gamma - 1) * head);
        return Math.min(factor, chokedFactor);
    }

    /**
     * Flux factor at a Mach number, sqrt(g) M (1 + (g - 1)/2 M^2)^(-(g + 1)/(2 (g - 1))).
     *
     * @param mach at least 0
     * @param gamma above 1
     */
    public static double fluxFactorAtMach(double mach, double gamma) {
        double expansion = 1 + (gamma - 1) / 2 * mach * mach;
        return Math.sqrt(gamma) * mach * Math.pow(expansion, -(gamma + 1) / (2 * (gamma - 1)));
    }

    /**
     * The subsonic Mach number at which a duct carries a flux.
     *
     * @param fluxFactor mass flux x sqrt(Rs T0)/p0, from 0 to the choked factor
     * @param gamma above 1
     * @return 0 to 1; NaN for a flux that no duct can carry
     */
    public static double subsonicMach(double fluxFactor, double gamma) {
        double choked = chokedFactor(gamma);
        if (!(fluxFactor >= 0 && fluxFactor <= choked * (1 + ROUNDING))) {
            return Double.NaN;
        }
        if (fluxFactor >= choked) {
            return 1;
        }
        // The factor is concave below Mach 1 and this start lies below the root, so Newton climbs to it and never
        // passes.
        double mach = fluxFactor / Math.sqrt(gamma);
        for (int i = 0; i < NEWTON_LIMIT && mach > 0; i++) {
            double value = fluxFactorAtMach(mach, gamma);
            double slope = value * (1 - mach * mach) / (mach * (1 + (gamma - 1) / 2 * mach * mach));
            double step = (fluxFactor - value) / slope;
            if (!(step > ROUNDING * mach)) {
                break;
            }
            mach = Math.min(1, mach + step);
        }
        return mach;
    }
}
