package boilwright.report;

import boilwright.choice.HeatCurves;
import boilwright.choice.WallPoint;
import java.util.List;

/** What answers about heat sources have in common, for other programs. */
final class ChoiceJson {
    private ChoiceJson() {}

    /** The source's curve and the pump's. */
    static void curves(JsonTree json, HeatCurves curves) {
        source(json, curves);
        points(json.rows("need"), curves.need());
    }

    /** The source's curve and the points on it. */
    static void source(JsonTree json, HeatCurves curves) {
        points(json.rows("delivered"), curves.delivered());
        point(json.object("fullJets"), curves.fullJets());
        curves.crossing().ifPresent(p -> point(json.object("crossing"), p));
    }

    static void points(JsonTree.Rows rows, List<WallPoint> points) {
        points.forEach(p -> point(rows.add(), p));
    }

    private static void point(JsonTree json, WallPoint point) {
        json.put("wallK", point.wallK()).put("heatW", point.watts());
    }
}
