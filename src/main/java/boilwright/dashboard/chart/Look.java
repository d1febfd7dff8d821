package boilwright.dashboard.chart;

/**
 * How one curve differs from the others without colour: its dash, the marker along it and its width.
 *
 * @param marker corner points of the marker around its middle, in radii, x and y in turn; empty for none
 * @param filled whether the marker is filled
 * @param width px at plain type
 * @param dash px at plain type
 */
record Look(double[] marker, boolean filled, double width, double... dash) {
    private static final double[] NONE = {};
    private static final double[] SQUARE = {-0.85, -0.85, 0.85, -0.85, 0.85, 0.85, -0.85, 0.85};
    private static final double[] UP = {0, -1.15, 1.1, 0.8, -1.1, 0.8};
    private static final double[] DOWN = {0, 1.15, 1.1, -0.8, -1.1, -0.8};
    private static final double[] DIAMOND = {0, -1.25, 1.25, 0, 0, 1.25, -1.25, 0};
    private static final double[] ROUND = round();
    private static final Look[] ALL = {
        new Look(NONE, false, 2.2),
        new Look(ROUND, false, 1.5),
        new Look(NONE, false, 1.8, 7, 4),
        new Look(SQUARE, true, 1.3),
        new Look(NONE, false, 1.8, 2, 3),
        new Look(UP, false, 1.5),
        new Look(DIAMOND, true, 1.3, 9, 3, 2, 3),
        new Look(NONE, false, 1.2, 14, 4),
        new Look(DOWN, true, 1.4),
        new Look(ROUND, true, 1.3, 5, 3),
        new Look(SQUARE, false, 1.5, 2, 2),
        new Look(DIAMOND, false, 1.5),
    };

    /** The look of the curve with this number, from 0. After a dozen they begin again. */
    static Look of(int index) {
        return ALL[index % ALL.length];
    }

    private static double[] round() {
        int corners = 16;
        double[] points = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            points[2 * i] = Math.cos(2 * Math.PI * i / corners);
            points[2 * i + 1] = Math.sin(2 * Math.PI * i / corners);
        }
        return points;
    }
}
