package boilwright.dashboard.drawing;

import boilwright.dashboard.model.MomentState;
import boilwright.rig.HeatSource;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;

/** The heat source of its kind under or around the boiler. */
final class SourcePainter {
    private final Sheet s;
    private final PumpShape shape;
    private final SourceShape source;
    private final MomentState moment;
    /** Outside of the boiler's bottom, m from the column's foot. */
    private final double under;

    SourcePainter(Sheet sheet, PumpShape shape, MomentState moment) {
        s = sheet;
        this.shape = shape;
        source = shape.source;
        this.moment = moment;
        under = -shape.boiler.heightM() - s.wall(shape.boiler.wallM());
    }

    /** What stands behind the boiler. */
    void paint(List<double[]> boilerOutside) {
        switch (source.look()) {
            case PLATE -> plate();
            case WRAP -> wrap(boilerOutside);
            case COIL -> induction();
            case FLAME -> burner();
            case RODS -> feet(under, 0.8 * source.radiusM());
        }
    }

    /** What lies in the oil. */
    void inOil(double surfaceM) {
        if (source.look() != SourceShape.Look.RODS) {
            return;
        }
        double bottom = -shape.boiler.heightM();
        double depth = surfaceM - bottom;
        double r = shape.boiler.radiusM();
        double rod = Math.max(s.metres(4 * s.line), Math.min(0.2 * depth, 0.05 * r));
        double middle = bottom + Math.max(0.45 * depth, 0.3 * shape.boiler.domeM());
        boolean on = moment.heatDeliveredW() > 0;
        Color color = on ? s.heat(s.scale.highK()) : s.heat(moment.oilK());
        int turns = 3;
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < turns; i++) {
                double at = side * r * (0.25 + 0.22 * i);
                s.g.setFill(color);
                s.g.fillOval(s.x(at - rod / 2), s.y(middle + rod / 2), s.px(rod), s.px(rod));
                s.stroke(s.palette.ink(), s.line);
                s.g.strokeOval(s.x(at - rod / 2), s.y(middle + rod / 2), s.px(rod), s.px(rod));
            }
        }
    }

    private Color bodyColor() {
        return s.heat(Double.isNaN(moment.sourceK()) ? moment.boilerWallK() : moment.sourceK());
    }

    private void slab(double radius, double top, double bottom, Color color) {
        s.g.setFill(color);
        s.across(radius, top, bottom);
        s.stroke(s.palette.ink(), 1.3 * s.line);
        s.g.strokeRect(s.x(-radius), s.y(top), s.px(2 * radius), s.px(top - bottom));
    }

    private void plate() {
        slab(source.radiusM(), under, under - source.thicknessM(), bodyColor());
        double bottom = under - source.thicknessM();
        if (source.insulationM() > 0) {
            hatch(0.92 * source.radiusM(), bottom, bottom - source.insulationM());
            bottom -= source.insulationM();
        }
        housing(1.0 * source.radiusM(), bottom, bottom - 0.72 * source.standM());
        feet(bottom - 0.72 * source.standM(), 0.8 * source.radiusM());
    }

    /** A mantle or clamped heater follows the boiler's outside up to where it reaches. */
    private void wrap(List<double[]> boilerOutside) {
        if (source.sideM() <= 0 && shape.boiler.domeM() <= 0) {
            double bottom = under - source.thicknessM();
            slab(source.radiusM(), under, bottom, bodyColor());
            if (source.insulationM() > 0) {
                hatch(source.radiusM(), bottom, bottom - source.insulationM());
            }
            feet(bottom - source.insulationM(), 0.7 * source.radiusM());
            return;
        }
        double limit = -shape.boiler.heightM() + shape.boiler.domeM() + source.sideM();
        double thick = Math.max(source.thicknessM(), s.metres(4 * s.line));
        List<double[]> inner = new ArrayList<>();
        for (double[] p : boilerOutside) {
            if (p[1] <= limit + 1e-9) {
                inner.add(p);
            }
        }
        if (source.sideM() > 0) {
            inner.add(new double[] {shape.boiler.radiusM() + s.wall(shape.boiler.wallM()), limit});
        }
        double lag = source.insulationM();
        if (lag > 0) {
            band(offset(inner, thick), offset(inner, thick + lag), null);
        }
        band(inner, offset(inner, thick), bodyColor());
        double bottom = under - thick - lag;
        feet(bottom, 0.55 * source.radiusM());
    }

    private static List<double[]> offset(List<double[]> inner, double by) {
        List<double[]> outer = new ArrayList<>();
        for (int i = 0; i < inner.size(); i++) {
            double[] a = inner.get(Math.max(0, i - 1));
            double[] b = inner.get(Math.min(inner.size() - 1, i + 1));
            double dr = b[0] - a[0];
            double dz = b[1] - a[1];
            double length = Math.max(1e-12, Math.hypot(dr, dz));
            double[] at = inner.get(i);
            outer.add(new double[] {i == 0 ? 0 : at[0] + by * dz / length, at[1] - by * (i == 0 ? 1 : dr / length)});
        }
        return outer;
    }

    private void band(List<double[]> inner, List<double[]> outer, Color color) {
        List<double[]> ring = new ArrayList<>(inner);
        for (int i = outer.size() - 1; i >= 0; i--) {
            ring.add(outer.get(i));
        }
        for (int side = -1; side <= 1; side += 2) {
            s.path(side, ring);
            if (color == null) {
                s.g.setFill(Palette.thin(s.palette.muted(), 0.14));
                s.g.fill();
                lag(side, inner, outer);
            } else {
                s.g.setFill(color);
                s.g.fill();
            }
            s.stroke(color == null ? s.palette.muted() : s.palette.ink(), 1.1 * s.line);
            s.path(side, outer);
            s.g.lineTo(s.x(side * inner.get(inner.size() - 1)[0]), s.y(inner.get(inner.size() - 1)[1]));
            s.g.stroke();
        }
    }

    /** Short strokes across insulation. */
    private void lag(int side, List<double[]> inner, List<double[]> outer) {
        s.stroke(Palette.thin(s.palette.muted(), 0.55), 0.8 * s.line);
        double apart = 7 * s.line;
        for (int i = 0; i < inner.size() - 1; i++) {
            double length =
                    s.px(Math.hypot(inner.get(i + 1)[0] - inner.get(i)[0], inner.get(i + 1)[1] - inner.get(i)[1]));
            int pieces = (int) Math.max(1, Math.round(length / apart));
            for (int p = 0; p < pieces; p++) {
                double t = (double) p / pieces;
                s.g.strokeLine(
                        s.x(side * between(inner, i, t, 0)),
                        s.y(between(inner, i, t, 1)),
                        s.x(side * between(outer, i, Math.min(1, t + 0.5 / pieces), 0)),
                        s.y(between(outer, i, Math.min(1, t + 0.5 / pieces), 1)));
            }
        }
    }

    private static double between(List<double[]> points, int i, double t, int axis) {
        return points.get(i)[axis] + t * (points.get(i + 1)[axis] - points.get(i)[axis]);
    }

    private void induction() {
        double top = under;
        if (source.bodyHot()) {
            slab(source.radiusM(), under, under - source.thicknessM(), bodyColor());
            top = under - source.thicknessM();
        }
        double wide = 1.1 * Math.max(source.radiusM(), shape.boiler.radiusM());
        double glass = Math.max(0.04 * wide, s.metres(4 * s.line));
        s.g.setFill(Palette.thin(s.palette.muted(), 0.35));
        s.across(wide, top, top - glass);
        double bottom = under - source.depthM();
        housing(wide, top - glass, bottom);
        s.stroke(s.palette.ink(), s.line);
        s.g.strokeRect(s.x(-wide), s.y(top), s.px(2 * wide), s.px(glass));
        boolean on = shape.rig.heatSource().path() != HeatSource.HeatPath.NOWHERE && moment.heatDeliveredW() > 0;
        double dot = Math.min(0.09 * wide, 0.5 * (top - glass - bottom));
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < 5; i++) {
                double at = side * wide * (0.18 + 0.155 * i);
                double y = s.y(top - glass - 0.3 * dot);
                s.stroke(s.palette.ink(), s.line);
                s.g.setFill(on ? s.palette.ink() : s.palette.paper());
                s.g.fillOval(s.x(at - dot / 2), y, s.px(dot), s.px(dot));
                s.g.strokeOval(s.x(at - dot / 2), y, s.px(dot), s.px(dot));
            }
        }
    }

    private void burner() {
        double tip = under - source.thicknessM();
        double foot = under - source.depthM();
        double r = source.radiusM();
        housing(0.5 * r, tip - 0.25 * source.standM(), foot);
        housing(r, tip, tip - 0.25 * source.standM());
        if (moment.heatDeliveredW() <= 0) {
            return;
        }
        int tongues = 5;
        double height = 0.82 * source.thicknessM();
        for (int i = 0; i < tongues; i++) {
            double at = r * (-0.8 + 1.6 * i / (tongues - 1));
            double half = 0.2 * r;
            s.g.beginPath();
            s.g.moveTo(s.x(at - half), s.y(tip));
            s.g.bezierCurveTo(
                    s.x(at - half),
                    s.y(tip + 0.5 * height),
                    s.x(at - 0.1 * half),
                    s.y(tip + 0.6 * height),
                    s.x(at),
                    s.y(tip + height));
            s.g.bezierCurveTo(
                    s.x(at + 0.1 * half),
                    s.y(tip + 0.6 * height),
                    s.x(at + half),
                    s.y(tip + 0.5 * height),
                    s.x(at + half),
                    s.y(tip));
            s.g.closePath();
            s.g.setFill(Palette.thin(s.heat(s.scale.highK()), 0.75));
            s.g.fill();
            s.stroke(s.palette.ink(), 0.9 * s.line);
            s.g.stroke();
        }
    }

    private void housing(double radius, double top, double bottom) {
        s.g.setFill(Palette.thin(s.palette.muted(), 0.16));
        s.across(radius, top, bottom);
        s.stroke(s.palette.muted(), s.line);
        s.g.strokeRect(s.x(-radius), s.y(top), s.px(2 * radius), s.px(top - bottom));
    }

    private void hatch(double radius, double top, double bottom) {
        s.g.setFill(Palette.thin(s.palette.muted(), 0.14));
        s.across(radius, top, bottom);
        s.stroke(Palette.thin(s.palette.muted(), 0.55), 0.8 * s.line);
        double step = 7 * s.line;
        double high = s.px(top - bottom);
        for (double x = s.x(-radius) + step; x < s.x(radius) - high * 0.6; x += step) {
            s.g.strokeLine(x, s.y(bottom), x + 0.6 * high, s.y(top));
        }
        s.stroke(s.palette.muted(), s.line);
        s.g.strokeRect(s.x(-radius), s.y(top), s.px(2 * radius), high);
    }

    private void feet(double top, double radius) {
        double bottom = under - source.depthM();
        double half = s.metres(4 * s.line);
        if (s.px(top - bottom) < 2) {
            return;
        }
        for (int side = -1; side <= 1; side += 2) {
            s.g.setFill(Palette.thin(s.palette.muted(), 0.5));
            s.box(side, radius - half, radius + half, top, bottom);
        }
    }
}
