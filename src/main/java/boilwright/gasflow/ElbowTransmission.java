package boilwright.gasflow;

/**
 * Transmission of a mitred bend in molecular flow, as that of the straight tube of the same axis length times a factor. The
 * factor is a table of own Monte Carlo figures (diffuse walls, two legs of equal length, better than 0.5 %); the course with
 * the angle, a shallow minimum between 49 and 73 degrees, is that of Xu Tingwei and Wang Kaiping, Vacuum 32 (1982) 655, and a
 * right angle that passes as much as a straight tube that of D. H. Davis, J. Appl. Phys. 31 (1960) 1169 (from memory).
 */
public final class ElbowTransmission {
    private static final double[] LEG_OVER_RADIUS = {1, 2, 3, 5};
    private static final double[] DEGREES = {0, 30, 60, 75, 90, 120};
    /** Straight tube in the first column; a leg as short as the bore at 120 degrees does not exist, its 90 degrees stand there. */
    private static final double[][] TRANSMISSION = {
        {0.5145, 0.5113, 0.5117, 0.5203, 0.5414, 0.5414},
        {0.3567, 0.3530, 0.3457, 0.3455, 0.3517, 0.4070},
        {0.2755, 0.2713, 0.2642, 0.2630, 0.2651, 0.2915},
        {0.1910, 0.1869, 0.1817, 0.1814, 0.1818, 0.1931}
    };

    private static final MonotoneTable FACTOR = new MonotoneTable(LEG_OVER_RADIUS, DEGREES, factors());

    private ElbowTransmission() {}

    private static double[][] factors() {
        double[][] factors = new double[TRANSMISSION.length][DEGREES.length];
        for (int i = 0; i < TRANSMISSION.length; i++) {
            for (int j = 0; j < DEGREES.length; j++) {
                factors[i][j] = TRANSMISSION[i][j] / TRANSMISSION[i][0];
            }
        }
        return factors;
    }

    /**
     * Transmission probability. Legs outside 1 to 5 radii take the factor of the nearest; the table ends at 120 degrees.
     *
     * @param lengthOverRadius length along the axis, both legs, over the radius; above 0
     * @param angleRad how far the axis turns, rad; 0 is straight
     * @return 0 to 1
     */
    public static double of(double lengthOverRadius, double angleRad) {
        double straight = TubeTransmission.of(lengthOverRadius);
        return Math.min(1, straight * FACTOR.at(lengthOverRadius / 2, Math.toDegrees(angleRad)));
    }
}
