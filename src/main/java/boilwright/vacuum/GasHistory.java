package boilwright.vacuum;

import java.util.List;

/** Gas of chamber and line against the time since they stood in air, from a table with even steps of the logarithm. */
final class GasHistory {
    private static final int POINTS = 240;
    private static final double FIRST_S = 30;

    private final double logFirst;
    private final double perStep;
    private final double[] chamber = new double[POINTS];
    private final double[][] pieces = new double[POINTS][];
    private final double[] now;

    GasHistory(PumpLine ways, double lastS) {
        logFirst = Math.log(FIRST_S);
        double step = (Math.log(Math.max(lastS, 10 * FIRST_S)) - logFirst) / (POINTS - 1);
        perStep = 1 / step;
        for (int i = 0; i < POINTS; i++) {
            List<GasSource> sources = GasLoads.of(ways.rig(), ways.rates, Math.exp(logFirst + i * step));
            chamber[i] = PumpLine.ofChamber(sources);
            pieces[i] = ways.ofPieces(sources);
        }
        now = new double[pieces[0].length];
    }

    /** Gas of the chamber, Pa m3/s, at a time since air, s. */
    double chamber(double sinceAirS) {
        double x = place(sinceAirS);
        int i = (int) x;
        return chamber[i] + (x - i) * (chamber[i + 1] - chamber[i]);
    }

    /** Gas along each piece; the array is used again. */
    double[] pieces(double sinceAirS) {
        double x = place(sinceAirS);
        int i = (int) x;
        for (int k = 0; k < now.length; k++) {
            now[k] = pieces[i][k] + (x - i) * (pieces[i + 1][k] - pieces[i][k]);
        }
        return now;
    }

    private double place(double sinceAirS) {
        double x = (Math.log(Math.max(FIRST_S, sinceAirS)) - logFirst) * perStep;
        return Math.max(0, Math.min(POINTS - 1 - 1e-9, x));
    }
}
