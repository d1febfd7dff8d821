package boilwright.vacuum;

import boilwright.numerics.Roots;
import java.util.function.DoubleUnaryOperator;

/**
 * Pressures along a line at rest: every piece with the conductance that belongs to the pressure in it. Gas that a piece gives
 * off enters evenly along it, so half of it passes the whole piece.
 */
final class LinePressures {
    private static final double TOLERANCE = 1e-11;
    /** Where the search for more than can leave begins, Pa m3/s and m3/s. */
    private static final double LEAST_FLOW = 1e-15;

    private static final double LEAST_SPEED = 1e-4;

    private final LineFlow line;
    /** Pressure at each junction, Pa: the chamber first, the pump's inlet last. */
    final double[] junctionPa;
    /** Conductance of each piece as it is, m3/s. */
    final double[] conductance;

    LinePressures(LineFlow line) {
        this.line = line;
        junctionPa = new double[line.count() + 1];
        conductance = new double[line.count()];
    }

    /**
     * Marches from the pump to the chamber.
     *
     * @param inletPa pressure at the pump's inlet, Pa
     * @param chamberFlow gas given off in the chamber, Pa m3/s
     * @param pieceFlow gas given off along each piece, Pa m3/s
     */
    void forFlow(double inletPa, double chamberFlow, double[] pieceFlow) {
        int n = line.count();
        junctionPa[n] = inletPa;
        double below = 0;
        for (double own : pieceFlow) {
            below += own;
        }
        double through = chamberFlow + below;
        for (int i = n - 1; i >= 0; i--) {
            double mean = through - pieceFlow[i] / 2;
            junctionPa[i] = line.before(i, junctionPa[i + 1], mean);
            conductance[i] = line.conductance(i, (junctionPa[i] + junctionPa[i + 1]) / 2);
            through -= pieceFlow[i];
        }
    }

    /**
     * Gas that leaves the chamber at a pressure in it.
     *
     * @param chamberPa pressure in the chamber, Pa
     * @param inlet pressure at the end of the line for the gas that arrives there
     * @param pieceFlow gas given off along each piece, Pa m3/s
     * @return Pa m3/s; negative when gas of the line comes back into the chamber
     */
    double leaving(double chamberPa, DoubleUnaryOperator inlet, double[] pieceFlow) {
        double along = 0;
        for (double own : pieceFlow) {
            along += own;
        }
        double all = along;
        DoubleUnaryOperator excess = flow -> {
            forFlow(inlet.applyAsDouble(flow + all), flow, pieceFlow);
            return junctionPa[0] - chamberPa;
        };
        double least = -all;
        if (excess.applyAsDouble(least) >= 0) {
            return least;
        }
        double most = Math.max(LEAST_FLOW, chamberPa * LEAST_SPEED);
        while (excess.applyAsDouble(most) < 0) {
            most *= 16;
        }
        return Roots.bracketed(excess, least, most, TOLERANCE, 0, "gas that leaves the chamber");
    }
}
