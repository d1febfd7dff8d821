package boilwright.dashboard.drawing;

import boilwright.dashboard.model.MomentState;
import boilwright.rig.ElementKind;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;

/** Water in jackets and coils, coloured by its temperature, with the way it goes. */
final class WaterPainter {
    private final Sheet s;
    private final PumpShape shape;
    private final MomentState moment;
    private final double wallOuterM;

    WaterPainter(Sheet sheet, PumpShape shape, MomentState moment) {
        s = sheet;
        this.shape = shape;
        this.moment = moment;
        wallOuterM = shape.bodyInnerM + sheet.wall(shape.bodyOuterM - shape.bodyInnerM);
    }

    /** Where the water comes in on the left: radius and height, m. */
    static double[] inlet(PumpShape shape) {
        return end(shape.water.get(0), shape, true);
    }

    /** Where it leaves on the left. */
    static double[] outlet(PumpShape shape) {
        return end(shape.water.get(shape.water.size() - 1), shape, false);
    }

    private static double[] end(WaterShape w, PumpShape shape, boolean in) {
        if (w.kind() == ElementKind.CAP_COIL) {
            return new double[] {shape.bodyOuterM, w.bottomM() + 0.8 * w.thicknessM()};
        }
        double span = w.topM() - w.bottomM();
        double inset = Math.min(0.16 * span, 1.5 * w.thicknessM());
        double height = in == w.downward() ? w.topM() - inset : w.bottomM() + inset;
        return new double[] {shape.bodyOuterM + w.thicknessM() + w.shellM(), height};
    }

    /** Everything that carries water. */
    void paint() {
        double inK = shape.rig.cooling().inletTemperatureK();
        double beforeK = inK;
        for (WaterShape w : shape.water) {
            double afterK =
                    w.stage() < 0 ? beforeK : moment.jets().get(w.stage()).waterK();
            if (Double.isNaN(afterK)) {
                afterK = beforeK;
            }
            switch (w.kind()) {
                case JACKET -> jacket(w, beforeK, afterK);
                case SOLDERED_COIL -> coil(w, beforeK, afterK);
                case CAP_COIL -> capCoil(w, beforeK);
            }
            beforeK = afterK;
        }
        shells();
        if (!shape.water.isEmpty()) {
            nozzle(inlet(shape), true);
            nozzle(outlet(shape), false);
        }
    }

    private double gap(WaterShape w) {
        return Math.max(w.thicknessM(), s.metres(6 * s.line));
    }

    private void jacket(WaterShape w, double beforeK, double afterK) {
        double outer = wallOuterM + gap(w);
        Color upper = s.heat(w.downward() ? beforeK : afterK);
        Color lower = s.heat(w.downward() ? afterK : beforeK);
        s.g.setFill(new LinearGradient(
                0,
                s.y(w.topM()),
                0,
                s.y(w.bottomM()),
                false,
                CycleMethod.NO_CYCLE,
                new Stop(0, Palette.thin(upper, 0.75)),
                new Stop(1, Palette.thin(lower, 0.75))));
        s.box(-1, wallOuterM, outer, w.topM(), w.bottomM());
        s.box(1, wallOuterM, outer, w.topM(), w.bottomM());
        double middle = (wallOuterM + outer) / 2;
        if (shape.waterFlowM3PerS > 0) {
            chevron(-middle, (w.topM() + w.bottomM()) / 2, w.downward());
            chevron(middle, (w.topM() + w.bottomM()) / 2, w.downward());
        }
    }

    private void chevron(double radius, double height, boolean down) {
        double half = 2.2 * s.line;
        double tip = (down ? 1 : -1) * 2.4 * s.line;
        double x = s.x(radius);
        double y = s.y(height);
        s.stroke(s.palette.ink(), 1.2 * s.line);
        s.g.strokePolyline(new double[] {x - half, x, x + half}, new double[] {y - tip, y + tip, y - tip}, 3);
    }

    /** Outer shells of the jackets, one for all the zones that one jacket covers side by side. */
    private void shells() {
        List<WaterShape> jackets = new ArrayList<>(
                shape.water.stream().filter(w -> w.kind() == ElementKind.JACKET).toList());
        jackets.sort((a, b) -> Double.compare(a.bottomM(), b.bottomM()));
        int i = 0;
        while (i < jackets.size()) {
            WaterShape first = jackets.get(i);
            double top = first.topM();
            int next = i + 1;
            while (next < jackets.size()
                    && jackets.get(next).element() == first.element()
                    && jackets.get(next).bottomM() <= top + 1e-6) {
                top = jackets.get(next).topM();
                next++;
            }
            shell(first, first.bottomM(), top);
            i = next;
        }
    }

    private void shell(WaterShape w, double bottom, double top) {
        double in = wallOuterM + gap(w);
        double out = in + Math.max(w.shellM(), s.metres(2.5 * s.line));
        boolean glass = shape.bodyGlass;
        for (int side = -1; side <= 1; side += 2) {
            s.g.setFill(glass ? Palette.thin(s.palette.muted(), 0.16) : s.palette.muted());
            s.box(side, in, out, top, bottom);
            s.stroke(s.palette.ink(), 0.9 * s.line);
            s.upright(side, in, top, bottom);
            s.upright(side, out, top, bottom);
            for (double z : new double[] {top, bottom}) {
                s.level(side, wallOuterM, out, z);
            }
        }
    }

    private void coil(WaterShape w, double beforeK, double afterK) {
        double bore = Math.max(w.thicknessM(), s.metres(5 * s.line));
        int turns = Math.min(w.turns(), (int) Math.max(1, (w.topM() - w.bottomM()) / bore));
        for (int i = 0; i < turns; i++) {
            double share = (i + 0.5) / turns;
            double height = w.topM() - share * (w.topM() - w.bottomM());
            double along = w.downward() ? share : 1 - share;
            Color color = s.heat(beforeK + along * (afterK - beforeK));
            for (int side = -1; side <= 1; side += 2) {
                ring(side * (wallOuterM + bore / 2), height, bore, color);
            }
        }
        if (shape.waterFlowM3PerS > 0) {
            chevron(-(wallOuterM + 1.7 * bore), (w.topM() + w.bottomM()) / 2, w.downward());
            chevron(wallOuterM + 1.7 * bore, (w.topM() + w.bottomM()) / 2, w.downward());
        }
    }

    private void capCoil(WaterShape w, double waterK) {
        double bore = Math.max(w.thicknessM(), s.metres(5 * s.line));
        double bottom = shape.cap.bottomM() + s.wall(shape.cap.thicknessM());
        for (int side = -1; side <= 1; side += 2) {
            for (int i = 0; i < w.turns(); i++) {
                double at = shape.cap.radiusM() * (i + 0.75) / (w.turns() + 0.5);
                ring(side * at, bottom + bore / 2, bore, s.heat(waterK));
            }
        }
        s.stroke(s.palette.ink(), 1.2 * s.line);
        s.level(-1, shape.cap.radiusM() * 0.9, wallOuterM, bottom + bore / 2);
    }

    private void ring(double radius, double height, double bore, Color color) {
        double d = s.px(bore);
        s.g.setFill(color);
        s.g.fillOval(s.x(radius) - d / 2, s.y(height) - d / 2, d, d);
        s.stroke(s.palette.ink(), 1.1 * s.line);
        s.g.strokeOval(s.x(radius) - d / 2, s.y(height) - d / 2, d, d);
    }

    /** A short pipe with the way the water goes. */
    private void nozzle(double[] at, boolean in) {
        double y = s.y(at[1]);
        double from = s.x(-at[0]) - 3 * s.line;
        double to = from - 14 * s.line;
        s.stroke(s.palette.ink(), 1.4 * s.line);
        s.g.strokeLine(from, y, to, y);
        double tip = in ? from : to;
        double back = in ? -1 : 1;
        double a = 4 * s.line;
        s.g.setFill(s.palette.ink());
        s.g.fillPolygon(
                new double[] {tip, tip + back * a, tip + back * a}, new double[] {y, y - 0.7 * a, y + 0.7 * a}, 3);
    }
}
