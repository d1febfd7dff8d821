package boilwright.dashboard.chart;

/** How far everything in a chart reaches, in places of a scale. */
final class Extent {
    /** A limit farther off than this, in ranges of the curves, is named at the edge instead of being drawn. */
    private static final double LIMIT_REACH = 1.6;
    /** The same where zero is in view: there one wants to see how far it is, not what the curves do in detail. */
    private static final double LIMIT_REACH_WITH_ZERO = 6;

    private static final double AIR = 0.05;
    /** Share of the largest value that a chart of one level spans. */
    private static final double FLAT = 0.05;

    private final Scale scale;
    private final double floorT;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    private Extent(Scale scale, Axis axis) {
        this.scale = scale;
        floorT = Double.isNaN(axis.floor()) ? Double.NEGATIVE_INFINITY : scale.t(axis.floor());
    }

    /** The scale to the right over all that is there. */
    static Scale x(ChartData data, Scale scale) {
        Extent all = new Extent(scale, data.x());
        data.series().forEach(s -> all.add(s.x()));
        data.bands().forEach(b -> all.add(b.x()));
        data.spots().forEach(s -> all.add(s.x()));
        data.x().stretches().forEach(s -> all.add(s.fromX(), s.toX()));
        all.zero(data.x());
        return all.widened(0);
    }

    /** The scale upwards over all that is there. */
    static Scale y(ChartData data, Scale scale) {
        Extent all = new Extent(scale, data.y());
        data.series().forEach(s -> all.add(s.y()));
        data.bands().forEach(b -> all.add(b.low()));
        data.bands().forEach(b -> all.add(b.high()));
        data.spots().forEach(s -> all.add(s.y()));
        all.zero(data.y());
        double curvesLow = all.low;
        double curvesHigh = all.high;
        double reach = (data.y().fromZero() ? LIMIT_REACH_WITH_ZERO : LIMIT_REACH) * (curvesHigh - curvesLow);
        for (Limit limit : data.limits()) {
            double t = scale.t(limit.si());
            if (!(curvesHigh > curvesLow) || t >= curvesLow - reach && t <= curvesHigh + reach) {
                all.add(limit.si());
            }
        }
        return all.widened(AIR);
    }

    private void add(double... values) {
        for (double value : values) {
            double t = scale.t(value);
            if (Double.isFinite(t) && t >= floorT) {
                low = Math.min(low, t);
                high = Math.max(high, t);
            }
        }
    }

    private void zero(Axis axis) {
        if (axis.fromZero() && !scale.logarithmic()) {
            add(0);
        }
    }

    private Scale widened(double share) {
        if (low > high) {
            return scale.from(0, 1);
        }
        double air = share * (high - low);
        if (high - low <= 1e-9 * Math.max(Math.abs(low), Math.abs(high)) || high == low) {
            air = scale.logarithmic() ? 0.5 : Math.max(FLAT * Math.abs(high), high == 0 ? 0.5 : 0);
        }
        double zeroT = scale.offset();
        boolean standsOnZero = !scale.logarithmic() && low >= zeroT && low - air < zeroT;
        return scale.from(standsOnZero ? Math.min(low, zeroT) : low - air, high + air);
    }
}
