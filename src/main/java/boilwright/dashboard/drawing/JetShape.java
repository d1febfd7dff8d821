package boilwright.dashboard.drawing;

/**
 * One jet's nozzle, m from the column's foot and from the axis.
 *
 * @param throatM height of the throat
 * @param innerM inner radius of the annular throat
 * @param outerM its outer radius: the inside of the skirt
 * @param columnM outer radius of the column there
 * @param skirtTopM where the skirt meets the column, or the top of the dome over it
 * @param closes true for the jet that closes the column with a dome
 * @param reachM height at which the middle of its jet meets the body wall
 */
record JetShape(
        double throatM,
        double innerM,
        double outerM,
        double columnM,
        double skirtTopM,
        boolean closes,
        double reachM) {}
