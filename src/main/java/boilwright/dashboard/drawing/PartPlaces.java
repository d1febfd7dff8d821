package boilwright.dashboard.drawing;

import boilwright.rig.ElementKind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;

/** Where the parts lie on the sheet, top to bottom in the order in which the focus goes; later ones lie on top. */
final class PartPlaces {
    /** A part is never smaller than this, so that it can be hit, px. */
    private static final double LEAST = 14;

    private final Sheet s;
    private final PumpShape shape;
    private final Map<Part, Bounds> places = new LinkedHashMap<>();

    private PartPlaces(Sheet sheet, PumpShape shape) {
        s = sheet;
        this.shape = shape;
    }

    static Map<Part, Bounds> of(Sheet sheet, PumpShape shape, Map<HeatArrows.Way, HeatArrows.Arrow> arrows) {
        PartPlaces places = new PartPlaces(sheet, shape);
        places.find(arrows);
        return places.places;
    }

    private void find(Map<HeatArrows.Way, HeatArrows.Arrow> arrows) {
        box(Part.of(Part.Kind.INLET), -shape.flangeRadiusM, shape.flangeRadiusM, shape.topM, shape.bodyTopM);
        if (shape.cap != null) {
            double r = shape.cap.radiusM();
            box(Part.of(Part.Kind.CAP), -r, r, shape.cap.bottomM() + shape.cap.thicknessM(), shape.cap.bottomM());
        }
        int zones = shape.jets.size();
        double jacket = shape.water.stream()
                .filter(w -> w.stage() >= 0)
                .mapToDouble(w -> w.thicknessM() + w.shellM())
                .max()
                .orElse(0);
        if (!shape.water.isEmpty()) {
            double top =
                    shape.water.stream().mapToDouble(WaterShape::topM).max().orElse(0);
            double bottom = shape.water.stream()
                    .filter(w -> w.kind() != ElementKind.CAP_COIL)
                    .mapToDouble(WaterShape::bottomM)
                    .min()
                    .orElse(top);
            double outer = shape.bodyOuterM + Math.max(jacket, s.metres(6 * s.line));
            box(Part.of(Part.Kind.WATER), -outer, -shape.bodyOuterM, top, bottom);
        }
        for (int k = zones; k >= 0; k--) {
            double bottom = k == 0 ? 0 : shape.zoneEdgesM[k - 1];
            double top = k == 0 ? shape.zoneEdgesM[0] : shape.zoneEdgesM[k];
            if (k > 0 || top > 0) {
                Part wall = new Part(Part.Kind.WALL, k == 0 ? zones : k - 1);
                box(wall, shape.bodyInnerM, shape.bodyOuterM + jacket, top, bottom);
            }
        }
        PumpShape.Tube widest = shape.tubes.stream()
                .max((a, b) -> Double.compare(a.outerM(), b.outerM()))
                .orElseThrow();
        box(Part.of(Part.Kind.COLUMN), -widest.outerM(), widest.outerM(), shape.columnTopM, 0);
        for (int k = zones - 1; k >= 0; k--) {
            JetShape jet = shape.jets.get(k);
            box(
                    new Part(Part.Kind.JET, k),
                    -shape.bodyInnerM,
                    shape.bodyInnerM,
                    jet.skirtTopM(),
                    jet.throatM() - 0.7 * (jet.throatM() - jet.reachM()));
        }
        box(
                Part.of(Part.Kind.FORELINE),
                shape.bodyOuterM,
                shape.stubEndM + s.metres(4 * s.line),
                shape.stubM + shape.stubRadiusM,
                shape.stubM - shape.stubRadiusM);
        boiler();
        arrow(Part.Kind.TO_WATER, arrows.get(HeatArrows.Way.TO_WATER));
        arrow(Part.Kind.TO_ROOM, arrows.get(HeatArrows.Way.TO_ROOM));
        arrow(Part.Kind.TO_BOILER, arrows.get(HeatArrows.Way.TO_BOILER));
    }

    private void boiler() {
        BoilerShape b = shape.boiler;
        double bottom = -b.heightM();
        double out = b.radiusM() + b.wallM();
        double surface = bottom + b.oilDepthM(shape.rig.chargeM3());
        box(Part.of(Part.Kind.BOILER), -out, out, 0, bottom - b.wallM());
        box(Part.of(Part.Kind.VAPOUR), -0.9 * b.radiusM(), 0.9 * b.radiusM(), 0, surface);
        box(Part.of(Part.Kind.OIL), -0.97 * b.radiusM(), 0.97 * b.radiusM(), surface, bottom);
        double wide = shape.source.radiusM() + shape.source.insulationM();
        box(Part.of(Part.Kind.SOURCE), -wide, wide, bottom - b.wallM(), shape.bottomM);
    }

    private void box(Part part, double left, double right, double top, double bottom) {
        put(part, s.x(left), s.y(top), s.x(right), s.y(bottom));
    }

    private void arrow(Part.Kind kind, HeatArrows.Arrow arrow) {
        if (arrow != null) {
            double wide = 8 * s.line;
            boolean level = arrow.y() == arrow.tipY();
            double end = level ? arrow.tipY() : Math.max(arrow.tipY(), s.y(shape.bottomM));
            put(
                    Part.of(kind),
                    Math.min(arrow.x(), arrow.tipX()) - (level ? 0 : wide),
                    Math.min(arrow.y(), end) - (level ? wide : 0),
                    Math.max(arrow.x(), arrow.tipX()) + (level ? 0 : wide),
                    Math.max(arrow.y(), end) + (level ? wide : 0));
        }
    }

    private void put(Part part, double left, double top, double right, double bottom) {
        double w = Math.max(LEAST, right - left);
        double h = Math.max(LEAST, bottom - top);
        places.put(part, new BoundingBox((left + right - w) / 2, (top + bottom - h) / 2, w, h));
    }

    /** Draws a dashed frame round what was guessed. */
    static void frame(Sheet s, List<Bounds> guessed) {
        s.stroke(s.palette.ink(), 1.1 * s.line);
        s.g.setLineDashes(5 * s.line, 3.5 * s.line);
        for (Bounds b : guessed) {
            double out = 2.5 * s.line;
            s.g.strokeRoundRect(
                    b.getMinX() - out, b.getMinY() - out, b.getWidth() + 2 * out, b.getHeight() + 2 * out, 6, 6);
        }
        s.g.setLineDashes();
    }
}
