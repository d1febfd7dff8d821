package boilwright.dashboard.drawing;

import boilwright.dashboard.model.MomentState;
import boilwright.dashboard.model.TemperatureScale;
import boilwright.dashboard.text.Lettering;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.canvas.GraphicsContext;

/** One whole picture: fits the pump into the sheet and paints it in order. */
final class Picture {
    /** What the words and margins beside the two scales of the foot take. */
    private static final double FOOT_WORDS_EMS = 9;

    /** Widths of sheet, in widths of the type, from which labels stand on both sides, or on one. */
    private static final double BOTH_SIDES = 40;

    private static final double ONE_SIDE = 24;
    private static final double LABEL_EMS = 8.9;
    private static final double NARROW_LABEL_EMS = 12.5;
    private static final double LEADER_EMS = 1.8;

    private final PumpShape shape;
    private final Sheet s;
    private final double width;
    private final double height;
    private final double footHeight;
    private final double arrowLength;
    private final double pumpLeft;
    private final double pumpRight;
    private final boolean both;
    private final boolean one;
    private final Map<HeatArrows.Way, HeatArrows.Arrow> arrows;
    private List<Bounds> labels = List.of();

    Picture(
            GraphicsContext g,
            PumpShape shape,
            Palette palette,
            TemperatureScale scale,
            Lettering lettering,
            double width,
            double height) {
        this.shape = shape;
        this.width = width;
        this.height = height;
        double em = lettering.size();
        both = width >= BOTH_SIDES * em;
        one = !both && width >= ONE_SIDE * em;
        footHeight = 2.9 * lettering.lineHeight();
        arrowLength = both ? 2.9 * em : 1.8 * em;
        double top = 0.8 * em;
        double bottom = height - footHeight - 0.55 * arrowLength - 0.6 * em;
        double labels = both ? 2 * (LABEL_EMS + LEADER_EMS) * em : one ? (NARROW_LABEL_EMS + LEADER_EMS) * em : 0;
        double left = arrowLength + 1.1 * em;
        double free = Math.max(20, width - labels - left - 0.6 * em);
        double px = Math.max(
                1, Math.min(free / (shape.leftM + shape.rightM), (bottom - top) / (shape.topM - shape.bottomM)));
        double pump = px * (shape.leftM + shape.rightM);
        double all = left + pump;
        double start = both
                ? (width - all) / 2
                : one ? Math.max(0, (width - all - (NARROW_LABEL_EMS + LEADER_EMS) * em) / 2) : (width - all) / 2;
        pumpLeft = start + left;
        pumpRight = pumpLeft + pump;
        double spare = Math.max(0, bottom - top - px * (shape.topM - shape.bottomM)) / 2;
        double axis = pumpLeft + px * shape.leftM;
        s = new Sheet(g, palette, scale, lettering, axis, top + spare + px * shape.topM, px);
        arrows = new HeatArrows(s, shape, null).places(arrowLength);
    }

    /** Where the parts lie. */
    Map<Part, Bounds> places() {
        return PartPlaces.of(s, shape, arrows);
    }

    /** Where metres become pixels. */
    Sheet sheet() {
        return s;
    }

    /** Within which boxes the labels of the moment painted last stand. */
    List<Bounds> labels() {
        return labels;
    }

    /** Paints a moment. */
    void paint(MomentState moment, Set<Part> guesses, List<Bounds> guessed) {
        s.g.clearRect(0, 0, width, height);
        VesselPainter vessel = new VesselPainter(s, shape);
        SourcePainter source = new SourcePainter(s, shape, moment);
        ColumnPainter column = new ColumnPainter(s, shape, moment);
        source.paint(vessel.outside());
        if (!shape.water.isEmpty()) {
            new WaterPainter(s, shape, moment).paint();
        }
        vessel.oil(moment);
        source.inOil(vessel.surfaceM(moment));
        column.vapour();
        vessel.boilerWall(moment);
        vessel.body(moment);
        vessel.condensate(moment);
        vessel.stubMouth();
        column.jets();
        column.column();
        column.nozzles();
        column.cap();
        HeatArrows heat = new HeatArrows(s, shape, moment);
        heat.paint(arrows);
        PartPlaces.frame(s, guessed);
        labels(moment, guesses);
        foot();
    }

    private void labels(MomentState moment, Set<Part> guesses) {
        if (!both && !one) {
            new LabelPainter(s, 0, height).jetsOnly(shape, moment);
            return;
        }
        double em = s.lettering.size();
        List<Callout> callouts = Callouts.of(s, shape, moment, arrows, guesses);
        LabelPainter painter = new LabelPainter(s, 0.3 * em, height - footHeight);
        double gap = LEADER_EMS * em;
        if (both) {
            double rightEdge = pumpRight + gap;
            double leftEdge = pumpLeft - arrowLength - gap;
            painter.write(callouts, false, leftEdge, leftEdge - 0.3 * em, false);
            painter.write(callouts, true, rightEdge, width - rightEdge - 0.3 * em, false);
        } else {
            painter.write(callouts, true, pumpRight + gap, width - pumpRight - gap - 0.3 * em, true);
        }
        labels = painter.written();
    }

    private void foot() {
        double em = s.lettering.size();
        double y = height - footHeight + 0.9 * s.lettering.lineHeight();
        double legend = Math.max(7 * em, Math.min(22 * em, 0.4 * width));
        double beside = width - legend - FOOT_WORDS_EMS * em;
        SheetEdge.scaleBar(s, 0.8 * em, y + 0.35 * em, Math.max(20, Math.min(beside, Math.min(11 * em, width * 0.3))));
        SheetEdge.legend(s, width - legend - 0.8 * em, y, legend);
    }
}
