package boilwright.gasflow;

/**
 * Transmission of an array of flat vanes in molecular flow, over the open area in front of it. Own Monte Carlo figures for an
 * endless array of thin vanes with diffuse walls; the textbook range of 0.25 to 0.4 for practical baffles (J. F. O'Hanlon, from
 * memory) lies within those of 45 degree chevrons. Supports and housing take something off that is not in the figures.
 */
public final class BaffleTransmission {
    private static final double[] DEGREES = {30, 45, 60};
    private static final double[] PITCH_OVER_DEPTH = {0.5, 1, 1.5, 2};
    private static final MonotoneTable CHEVRON = new MonotoneTable(DEGREES, PITCH_OVER_DEPTH, new double[][] {
        {0.253, 0.383, 0.485, 0.560}, {0.160, 0.245, 0.328, 0.414}, {0.076, 0.123, 0.164, 0.211}
    });
    private static final MonotoneTable LOUVRE = new MonotoneTable(DEGREES, PITCH_OVER_DEPTH, new double[][] {
        {0.433, 0.575, 0.662, 0.721}, {0.303, 0.432, 0.524, 0.596}, {0.151, 0.236, 0.307, 0.374}
    });

    private BaffleTransmission() {}

    /**
     * Two rows of vanes that meet in an edge.
     *
     * @param pitchOverDepth distance across the flow from vane to vane over the depth of one row along it; figures exist from
     *     0.5 to 2, the nearest end holds beyond
     * @param angleRad angle of the vanes to the axis, rad; figures exist from 30 to 60 degrees
     * @return 0 to 1
     */
    public static double chevron(double pitchOverDepth, double angleRad) {
        return CHEVRON.at(Math.toDegrees(angleRad), pitchOverDepth);
    }

    /** One row of vanes; otherwise as {@link #chevron}. */
    public static double louvre(double pitchOverDepth, double angleRad) {
        return LOUVRE.at(Math.toDegrees(angleRad), pitchOverDepth);
    }
}
