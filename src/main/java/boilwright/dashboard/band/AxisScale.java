package boilwright.dashboard.band;

import boilwright.dashboard.model.RunPhase.Kind;
import java.util.List;

/**
 * Where a time lies on the band. Even within a stretch, but not over all of it: the minutes in which the jets light would be a
 * hair's breadth beside the hours of cooling. Each stretch has an assured share of the width, the plateau a fixed one, and what is
 * left is dealt out by duration.
 */
final class AxisScale {
    private static final double PLATEAU = 0.10;

    private final double[] timesS;
    private final double[] shares;

    /**
     * A scale.
     *
     * @param stretches of the axis, in order, without gaps, at least one
     */
    AxisScale(List<Stretch> stretches) {
        int n = stretches.size();
        timesS = new double[n + 1];
        shares = new double[n + 1];
        double assured = 0;
        double lengthS = 0;
        for (Stretch s : stretches) {
            assured += assured(s);
            lengthS += s.plateau() ? 0 : s.lengthS();
        }
        double left = Math.max(0, 1 - assured);
        timesS[0] = stretches.get(0).startS();
        for (int i = 0; i < n; i++) {
            Stretch s = stretches.get(i);
            timesS[i + 1] = s.endS();
            shares[i + 1] = shares[i] + assured(s) + (s.plateau() ? 0 : left * s.lengthS() / lengthS);
        }
        for (int i = 1; i <= n; i++) {
            shares[i] /= shares[n];
        }
    }

    private static double assured(Stretch stretch) {
        return stretch.plateau() ? PLATEAU : assured(stretch.kind());
    }

    private static double assured(Kind kind) {
        return switch (kind) {
            case DEGAS, HEAT -> 0.09;
            case FRONT_CLIMBS -> 0.20;
            case PUMPING, PARTLY_LIT, NO_JET -> 0.07;
            case COOLING -> 0.13;
            case SAFE_TO_OPEN -> 0.13;
        };
    }

    /** Where a time lies, 0 at the left end to 1 at the right; beyond the ends that of the end. */
    double share(double axisS) {
        return between(timesS, shares, axisS);
    }

    /** The time at a place from 0 to 1, s; beyond the ends that of the end. */
    double axisS(double share) {
        return between(shares, timesS, share);
    }

    private static double between(double[] from, double[] to, double at) {
        int last = from.length - 1;
        if (at <= from[0]) {
            return to[0];
        }
        for (int i = 1; i <= last; i++) {
            if (at < from[i]) {
                return to[i - 1] + (at - from[i - 1]) / (from[i] - from[i - 1]) * (to[i] - to[i - 1]);
            }
        }
        return to[last];
    }
}
