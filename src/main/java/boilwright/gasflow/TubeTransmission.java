package boilwright.gasflow;

/**
 * Probability that a molecule which enters a straight round tube leaves at its far end, in molecular flow with diffuse walls:
 * A. S. Berman's closed form (J. Appl. Phys. 36 (1965) 3356; erratum 37 (1966) 4509) of Clausing's problem (P. Clausing, Ann.
 * Phys. 12 (1932) 961). Within 0.2 % of Clausing's table.
 */
public final class TubeTransmission {
    /** Below this L/R the closed form loses digits to cancellation, while its expansion is exact to 1e-6. */
    private static final double SHORT = 2e-3;
    /** Above this L/R the expansion for long tubes is exact to 1e-5 and the closed form loses digits. */
    private static final double LONG = 2e3;

    private TubeTransmission() {}

    /**
     * Transmission probability.
     *
     * @param lengthOverRadius L/R, at least 0
     * @return 1 for no length, falling to 8R/(3L) for a long tube
     */
    public static double of(double lengthOverRadius) {
        double l = lengthOverRadius;
        if (!(l >= 0)) {
            throw new IllegalArgumentException("a tube has a length of zero or more");
        }
        if (l < SHORT) {
            return 1 - l / 2 + l * l / 4;
        }
        if (l > LONG) {
            return longTube(l);
        }
        double root = Math.sqrt(l * l + 4);
        double above = (8 - l * l) * root + l * l * l - 16;
        double below = 72 * l * root - 288 * Math.log(l + root) + 288 * Math.log(2);
        return 1 + l * l / 4 - l / 4 * root - above * above / below;
    }

    /** Berman's expansion for long tubes: 8/(3l) - 2 ln l/l2 - 91/(18 l2) + 32 ln l/(3 l3). */
    private static double longTube(double l) {
        double log = Math.log(l);
        return 8 / (3 * l) - 2 * log / (l * l) - 91 / (18 * l * l) + 32 * log / (3 * l * l * l);
    }
}
