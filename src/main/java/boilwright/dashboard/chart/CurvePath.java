package boilwright.dashboard.chart;

/** Hands a curve to a surface as lines, cut off where they leave the plot and with no more points than pixels can show. */
final class CurvePath {
    private final ChartPlan plan;
    private final Thinning thin = new Thinning();
    private final double top;
    private final double bottom;
    private Surface surface;
    private Surface.Pen pen;
    private double lastX;
    private double lastY;
    private boolean hasLast;

    CurvePath(ChartPlan plan) {
        this.plan = plan;
        top = plan.plot().top();
        bottom = plan.plot().bottom();
    }

    void draw(double[] x, double[] y, Surface onto, Surface.Pen with) {
        surface = onto;
        pen = with;
        begin();
        Scale xs = plan.x();
        Scale ys = plan.y();
        double from = xs.ofT(xs.lowT());
        double to = xs.ofT(xs.highT());
        int first = Math.max(0, Curve.before(x, from));
        int index = 0;
        for (int i = first; i < x.length; i++) {
            double tx = xs.t(x[i]);
            double ty = ys.t(y[i]);
            boolean before = x[i] < from;
            boolean after = x[i] > to;
            if (before && i + 1 < x.length && x[i + 1] > from) {
                tx = xs.lowT();
                ty = Curve.between(x, y, i, tx, xs, ys);
            } else if (after && i > 0) {
                tx = xs.highT();
                ty = Curve.between(x, y, i - 1, tx, xs, ys);
            }
            if (before && !(i + 1 < x.length && x[i + 1] > from)) {
                continue;
            }
            if (Double.isFinite(tx) && Double.isFinite(ty)) {
                next(index++, xs.pxOfT(tx), ys.pxOfT(ty));
            } else {
                begin();
            }
            if (after) {
                break;
            }
        }
        begin();
    }

    /** Ends the line so far; the next point begins another. */
    private void begin() {
        thin.flush();
        if (thin.count() > 0) {
            surface.line(thin.xs(), thin.ys(), thin.count(), pen);
        }
        thin.clear();
        hasLast = false;
    }

    private void next(int index, double px, double py) {
        boolean inside = py >= top && py <= bottom;
        if (hasLast) {
            boolean wasInside = lastY >= top && lastY <= bottom;
            if (wasInside && !inside) {
                edge(index, px, py, py < top ? top : bottom);
            } else if (!wasInside && (inside || (lastY < top) != (py < top))) {
                edge(index, px, py, lastY < top ? top : bottom);
                if (!inside) {
                    edge(index, px, py, py < top ? top : bottom);
                }
            }
        }
        if (inside) {
            thin.add(2 * index + 1, px, py);
        } else {
            begin();
        }
        lastX = px;
        lastY = py;
        hasLast = true;
    }

    private void edge(int index, double px, double py, double at) {
        double share = (at - lastY) / (py - lastY);
        thin.add(2 * index, lastX + share * (px - lastX), at);
    }
}
