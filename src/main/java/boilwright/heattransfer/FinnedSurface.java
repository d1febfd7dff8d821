package boilwright.heattransfer;

/**
 * A surface with fins and bare root between them: overall efficiency 1 - (Af/At)(1 - eta_f) (Incropera, Bergman, Lavine,
 * DeWitt, eq. 3.107). One heat transfer coefficient on both parts.
 */
public final class FinnedSurface {
    private FinnedSurface() {}

    /**
     * Heat of the whole surface over that of one as warm as the root everywhere.
     *
     * @param finArea surface of the fins, m2
     * @param totalArea fins and bare root, m2
     * @param finEfficiency of one fin, above 0 to 1
     */
    public static double efficiency(double finArea, double totalArea, double finEfficiency) {
        return 1 - finArea / totalArea * (1 - finEfficiency);
    }
}
