package boilwright.dashboard.drawing;

import boilwright.dashboard.model.MomentState;
import java.util.EnumMap;
import java.util.Map;

/** The three ways of heat, as arrows whose width is in proportion to their watts. */
final class HeatArrows {
    /** A way of heat. */
    enum Way {
        TO_BOILER,
        TO_WATER,
        TO_ROOM
    }

    /**
     * One arrow on the sheet, px.
     *
     * @param x its tail
     * @param y its tail
     * @param tipX its tip
     * @param tipY its tip
     */
    record Arrow(double x, double y, double tipX, double tipY) {}

    /** An arrow of the source's rated power is this wide, px per thin line. */
    private static final double RATED_WIDTH = 30;

    private static final double LEAST_WIDTH = 1.6;
    private static final double MOST_SHARE = 1.5;
    /** Below this share of the rated power no arrow is drawn. */
    private static final double LEAST_SHARE = 1e-4;

    private final Sheet s;
    private final PumpShape shape;
    private final MomentState moment;

    HeatArrows(Sheet sheet, PumpShape shape, MomentState moment) {
        s = sheet;
        this.shape = shape;
        this.moment = moment;
    }

    static double watts(MomentState moment, Way way) {
        return switch (way) {
            case TO_BOILER -> moment.heatDeliveredW();
            case TO_WATER -> moment.heatToWaterW();
            case TO_ROOM -> moment.heatToAirW();
        };
    }

    /** Where the arrows lie, flowing or not. */
    Map<Way, Arrow> places(double length) {
        Map<Way, Arrow> places = new EnumMap<>(Way.class);
        double bottom = s.y(shape.bottomM) + 5 * s.line;
        double top = s.y(-shape.boiler.heightM() - shape.boiler.wallM());
        places.put(Way.TO_BOILER, new Arrow(s.x(0), bottom + 0.55 * length, s.x(0), top - 2 * s.line));
        if (!shape.water.isEmpty()) {
            double[] in = WaterPainter.inlet(shape);
            double[] out = WaterPainter.outlet(shape);
            double y = s.y((in[1] + out[1]) / 2);
            double x = s.x(-shape.bodyOuterM - jacket()) - 14 * s.line;
            places.put(Way.TO_WATER, new Arrow(x, y, x - length, y));
        }
        double side = Math.max(shape.boiler.radiusM(), shape.source.sideM() > 0 ? shape.leftM : 0);
        double x = s.x(-side) - 12 * s.line;
        double y = s.y(-0.62 * shape.boiler.heightM());
        places.put(Way.TO_ROOM, new Arrow(x, y, x - length, y));
        return places;
    }

    private double jacket() {
        return shape.water.stream()
                .filter(w -> w.stage() >= 0)
                .mapToDouble(w -> w.thicknessM() + w.shellM())
                .max()
                .orElse(0);
    }

    /** Whether there is enough to draw an arrow. */
    static boolean flows(PumpShape shape, MomentState moment, Way way) {
        return watts(moment, way) > LEAST_SHARE * shape.rig.heatSource().ratedPowerW();
    }

    /** Half the width of an arrow, px. */
    static double halfWidth(Sheet s, PumpShape shape, MomentState moment, Way way) {
        double share = watts(moment, way) / shape.rig.heatSource().ratedPowerW();
        return Math.max(LEAST_WIDTH, RATED_WIDTH * Math.min(MOST_SHARE, share)) * s.line / 2;
    }

    /** Draws those along which heat flows. */
    void paint(Map<Way, Arrow> places) {
        places.forEach((way, arrow) -> {
            if (flows(shape, moment, way)) {
                arrow(arrow, 2 * halfWidth(s, shape, moment, way));
            }
        });
    }

    private void arrow(Arrow a, double width) {
        double dx = a.tipX() - a.x();
        double dy = a.tipY() - a.y();
        double length = Math.hypot(dx, dy);
        double ux = dx / length;
        double uy = dy / length;
        double half = width / 2;
        double wing = half + 3.5 * s.line;
        double head = Math.min(0.6 * length, wing * 1.1 + 2 * s.line);
        double neckX = a.tipX() - ux * head;
        double neckY = a.tipY() - uy * head;
        double[] xs = {
            a.x() - uy * half,
            neckX - uy * half,
            neckX - uy * wing,
            a.tipX(),
            neckX + uy * wing,
            neckX + uy * half,
            a.x() + uy * half
        };
        double[] ys = {
            a.y() + ux * half,
            neckY + ux * half,
            neckY + ux * wing,
            a.tipY(),
            neckY - ux * wing,
            neckY - ux * half,
            a.y() - ux * half
        };
        s.g.setFill(Palette.thin(s.palette.muted(), 0.38));
        s.g.fillPolygon(xs, ys, xs.length);
        s.stroke(s.palette.ink(), 0.9 * s.line);
        s.g.strokePolygon(xs, ys, xs.length);
    }
}
