package boilwright.rise;

import boilwright.rise.LeastSquaresFit.HeldCurve;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The best of a curve over all its time constants. Least squares in the time constant may have several valleys, so it is held
 * at a grid of values first, where everything else is linear; the best of those begin the search.
 */
final class CurveSearch {
    private static final int GRID = 16;
    private static final int STARTS = 3;

    private final LeastSquaresFit.Points points;
    private final double shortestS;

    /**
     * Searches in points.
     *
     * @param points times from the first reading in s, pressures in Pa
     * @param shortestS shortest time constant looked for, s, &gt; 0
     */
    CurveSearch(LeastSquaresFit.Points points, double shortestS) {
        this.points = points;
        this.shortestS = shortestS;
    }

    /** Shortest time constant looked for, s. */
    double shortestS() {
        return shortestS;
    }

    /** The points it searches in. */
    LeastSquaresFit.Points points() {
        return points;
    }

    /**
     * The best fit.
     *
     * @param longestS longest time constant looked for, s, at least the shortest
     */
    LeastSquaresFit best(RiseCurve curve, double longestS) {
        double[] flat = new double[curve.parameterCount()];
        flat[0] = points.y(0);
        if (!curve.hasBend()) {
            // Linear: the first step from anywhere is the last.
            return LeastSquaresFit.of(curve, points, flat).orElseGet(() -> LeastSquaresFit.at(curve, points, flat));
        }
        List<LeastSquaresFit> found = new ArrayList<>();
        for (double[] start : starts(curve, longestS)) {
            found.add(LeastSquaresFit.at(curve, points, start));
            from(curve, start, longestS).ifPresent(found::add);
        }
        return found.stream()
                .min(Comparator.comparingDouble(LeastSquaresFit::residualSquares))
                .orElseThrow();
    }

    /** The best fit from one start; empty when the search does not end. */
    Optional<LeastSquaresFit> from(RiseCurve curve, double[] start, double longestS) {
        return LeastSquaresFit.of(curve, points, start, low(curve), high(curve, longestS));
    }

    /** The best fit from one start with one parameter held; the time constant is not the one that is held. */
    Optional<LeastSquaresFit> holding(RiseCurve curve, int index, double held, double[] start, double longestS) {
        return LeastSquaresFit.of(
                curve.holding(index, held),
                points,
                HeldCurve.without(start, index),
                HeldCurve.without(low(curve), index),
                HeldCurve.without(high(curve, longestS), index));
    }

    private List<double[]> starts(RiseCurve curve, double longestS) {
        int index = curve.timeIndex();
        record Held(double[] parameters, double squares) {}
        List<Held> grid = new ArrayList<>();
        double[] flat = new double[curve.parameterCount()];
        flat[0] = points.y(0);
        for (int i = 0; i < GRID; i++) {
            double tau = Math.log(shortestS) + Math.log(longestS / shortestS) * i / (GRID - 1);
            LeastSquaresFit.of(curve.holding(index, tau), points, HeldCurve.without(flat, index))
                    .map(fit -> new Held(HeldCurve.with(fit.parameters(), index, tau), fit.residualSquares()))
                    .ifPresent(grid::add);
        }
        if (grid.isEmpty()) {
            flat[index] = Math.log(longestS);
            return List.of(flat);
        }
        return grid.stream()
                .sorted(Comparator.comparingDouble(Held::squares))
                .limit(STARTS)
                .map(Held::parameters)
                .toList();
    }

    private double[] low(RiseCurve curve) {
        return bounds(curve, Double.NEGATIVE_INFINITY, Math.log(shortestS));
    }

    private static double[] high(RiseCurve curve, double longestS) {
        return bounds(curve, Double.POSITIVE_INFINITY, Math.log(longestS));
    }

    private static double[] bounds(RiseCurve curve, double all, double time) {
        double[] bounds = new double[curve.parameterCount()];
        Arrays.fill(bounds, all);
        if (curve.hasBend()) {
            bounds[curve.timeIndex()] = time;
        }
        return bounds;
    }
}
