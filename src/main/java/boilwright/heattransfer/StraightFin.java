package boilwright.heattransfer;

/**
 * Fin efficiency of a straight fin of even thickness with an adiabatic tip, tanh(m L)/(m L) (Incropera, Bergman, Lavine,
 * DeWitt, eq. 3.91-3.94). A tip that is cooled too counts by a length longer by half the thickness.
 */
public final class StraightFin {
    private static final double SERIES = 1e-4;

    private StraightFin() {}

    /**
     * Fin parameter of a sheet cooled on both faces, sqrt(2 h/(k t)), 1/m.
     *
     * @param coefficient on each face, W/(m2 K), at least 0
     * @param conductivity of the fin, W/(m K)
     * @param thicknessM m
     */
    public static double parameter(double coefficient, double conductivity, double thicknessM) {
        return Math.sqrt(2 * coefficient / (conductivity * thicknessM));
    }

    /**
     * Heat of the fin over that of one as warm as its root everywhere, above 0 to 1.
     *
     * @param parameter from {@link #parameter}, 1/m
     * @param lengthM from root to tip, m
     */
    public static double efficiency(double parameter, double lengthM) {
        double x = parameter * lengthM;
        return x < SERIES ? 1 - x * x / 3 : Math.tanh(x) / x;
    }
}
