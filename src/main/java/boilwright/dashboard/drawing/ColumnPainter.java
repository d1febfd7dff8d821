package boilwright.dashboard.drawing;

import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.MomentState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;

/** The column by its cells, the vapour in it up to the front, nozzles, jets and the cap over them. */
final class ColumnPainter {
    /** How much of the page vapour covers. */
    static final double VAPOUR_COVER = 0.34;

    private static final double SKIRT = 2.6;
    private static final int CURVE = 14;
    /** Share of a skirt's height that the opening in the column behind it takes. */
    private static final double SLOT_FROM = 0.2;

    private static final double SLOT_TO = 0.62;
    private static final double FOOT_RISE = 0.34;
    private static final double FOOT_REACH = 0.93;

    private final Sheet s;
    private final PumpShape shape;
    private final MomentState moment;

    ColumnPainter(Sheet sheet, PumpShape shape, MomentState moment) {
        s = sheet;
        this.shape = shape;
        this.moment = moment;
    }

    /** Temperature of the column at a height, K. */
    static double columnK(MomentState moment, double heightM) {
        double[] heights = moment.columnHeightsM();
        double[] cells = moment.columnK();
        int found = Arrays.binarySearch(heights, heightM);
        if (found >= 0) {
            return cells[found];
        }
        int above = -found - 1;
        if (above == 0) {
            return cells[0];
        }
        if (above == heights.length) {
            return cells[cells.length - 1];
        }
        double share = (heightM - heights[above - 1]) / (heights[above] - heights[above - 1]);
        return cells[above - 1] + share * (cells[above] - cells[above - 1]);
    }

    private double columnK(double heightM) {
        return columnK(moment, heightM);
    }

    private double footRise() {
        return Math.min(FOOT_RISE * shape.bodyInnerM, 0.5 * shape.jets.get(0).throatM());
    }

    private boolean reached(double heightM) {
        return moment.frontHeightM() >= heightM - 1e-9;
    }

    /** The vapour between the walls. */
    void vapour() {
        if (moment.vapourFlowKgPerS() <= 0) {
            return;
        }
        double front = Math.min(shape.columnTopM, moment.frontHeightM());
        Color color = s.heat(moment.columnK()[0]);
        double rise = footRise();
        PumpShape.Tube first = shape.tubes.get(0);
        s.g.setFill(Palette.thin(color, VAPOUR_COVER));
        s.mirrored(curve(FOOT_REACH * shape.bodyInnerM, 0, first.innerM(), 0.3 * rise, first.innerM(), rise));
        s.g.fill();
        double fade = Math.min(front, 0.10 * shape.columnTopM);
        boolean full = front >= shape.columnTopM - 1e-9;
        for (PumpShape.Tube tube : shape.tubes) {
            double bottom = Math.max(tube.bottomM(), rise);
            double solid = full ? tube.topM() : Math.min(tube.topM(), front - fade);
            if (solid > bottom) {
                s.g.setFill(Palette.thin(color, VAPOUR_COVER));
                s.across(tube.innerM(), solid, bottom);
            }
            double soft = Math.min(tube.topM(), front);
            if (!full && soft > Math.max(bottom, solid)) {
                s.g.setFill(new LinearGradient(
                        0,
                        s.y(front - fade),
                        0,
                        s.y(front),
                        false,
                        CycleMethod.NO_CYCLE,
                        new Stop(0, Palette.thin(color, VAPOUR_COVER)),
                        new Stop(1, Palette.thin(color, 0))));
                s.across(tube.innerM(), soft, Math.max(bottom, solid));
            }
        }
        s.g.setFill(Palette.thin(color, VAPOUR_COVER));
        shape.jets.stream().filter(jet -> reached(jet.throatM())).forEach(this::nozzleVapour);
        if (!full && front > rise) {
            s.stroke(s.palette.ink(), s.line);
            s.g.setLineDashes(3 * s.line, 3 * s.line);
            double r = shape.tubeAt(front).innerM();
            s.g.strokeLine(s.x(-r), s.y(front), s.x(r), s.y(front));
            s.g.setLineDashes();
        }
    }

    /** Vapour between column and skirt, and in the openings that lead there. */
    private void nozzleVapour(JetShape jet) {
        List<double[]> skirt = skirt(jet, 0);
        if (jet.closes()) {
            s.mirrored(skirt);
            s.g.fill();
            return;
        }
        PumpShape.Tube tube = shape.tubeAt(jet.skirtTopM());
        double height = jet.skirtTopM() - jet.throatM();
        for (int side = -1; side <= 1; side += 2) {
            List<double[]> ring = new ArrayList<>(skirt);
            ring.add(new double[] {tube.outerM(), jet.skirtTopM()});
            ring.add(new double[] {tube.outerM(), jet.throatM()});
            s.path(side, ring);
            s.g.fill();
            s.box(
                    side,
                    tube.innerM(),
                    tube.outerM(),
                    jet.throatM() + SLOT_TO * height,
                    jet.throatM() + SLOT_FROM * height);
        }
    }

    /** Walls of the column, cell by cell. */
    void column() {
        double[] heights = moment.columnHeightsM();
        double rise = footRise();
        for (PumpShape.Tube tube : shape.tubes) {
            double inner = tube.outerM() - s.wall(tube.outerM() - tube.innerM());
            for (double[] span : spans(tube, rise)) {
                for (int j = 0; j < heights.length; j++) {
                    double low = j == 0 ? 0 : (heights[j - 1] + heights[j]) / 2;
                    double high = j == heights.length - 1 ? shape.columnTopM : (heights[j] + heights[j + 1]) / 2;
                    double bottom = Math.max(low, span[0]);
                    double top = Math.min(high, span[1]);
                    if (top > bottom) {
                        s.g.setFill(s.heat(moment.columnK()[j]));
                        // half a pixel more, so that no seam of the page shows between cells
                        double more = s.metres(0.5);
                        s.box(-1, inner, tube.outerM(), top, Math.max(span[0], bottom - more));
                        s.box(1, inner, tube.outerM(), top, Math.max(span[0], bottom - more));
                    }
                }
                s.stroke(s.palette.ink(), (tube.glass() ? 0.9 : 1.3) * s.line);
                for (int side = -1; side <= 1; side += 2) {
                    s.upright(side, inner, span[1], span[0]);
                    s.upright(side, tube.outerM(), span[1], span[0]);
                    s.level(side, inner, tube.outerM(), span[1]);
                    s.level(side, inner, tube.outerM(), span[0]);
                }
            }
        }
        foot(rise);
        steps();
    }

    /** The wall of a tube between the openings through which its jets are fed. */
    private List<double[]> spans(PumpShape.Tube tube, double rise) {
        List<double[]> spans = new ArrayList<>();
        double bottom = Math.max(tube.bottomM(), rise);
        for (JetShape jet : shape.jets) {
            double from = jet.throatM() + SLOT_FROM * (jet.skirtTopM() - jet.throatM());
            double to = jet.throatM() + SLOT_TO * (jet.skirtTopM() - jet.throatM());
            if (!jet.closes() && from < tube.topM() && to > bottom) {
                if (from > bottom) {
                    spans.add(new double[] {bottom, from});
                }
                bottom = to;
            }
        }
        if (tube.topM() > bottom) {
            spans.add(new double[] {bottom, tube.topM()});
        }
        return spans;
    }

    /** The column's foot widens over the boiler's mouth; condensate runs back between its rim and the wall. */
    private void foot(double rise) {
        PumpShape.Tube first = shape.tubes.get(0);
        double middle = first.outerM() - s.wall(first.outerM() - first.innerM()) / 2;
        for (int side = -1; side <= 1; side += 2) {
            s.path(side, curve(middle, rise, middle, 0.3 * rise, FOOT_REACH * shape.bodyInnerM, 0));
            s.shell(s.heat(columnK(0)), SKIRT * s.line, first.glass());
        }
    }

    /** Shelves where one piece of column is narrower than the one below. */
    private void steps() {
        for (int i = 1; i < shape.tubes.size(); i++) {
            PumpShape.Tube below = shape.tubes.get(i - 1);
            PumpShape.Tube above = shape.tubes.get(i);
            double low = Math.min(below.outerM(), above.outerM()) - s.wall(above.outerM() - above.innerM());
            double high = Math.max(below.outerM(), above.outerM());
            for (int side = -1; side <= 1; side += 2) {
                s.path(side, List.of(new double[] {low, above.bottomM()}, new double[] {high, above.bottomM()}));
                s.shell(s.heat(columnK(above.bottomM())), 0.8 * SKIRT * s.line, above.glass());
            }
        }
    }

    /** Nozzles: the rim of the column and the skirt or dome over it. */
    void nozzles() {
        for (JetShape jet : shape.jets) {
            Color color = s.heat(columnK(jet.throatM()));
            boolean glass = shape.tubeAt(jet.throatM()).glass();
            double width = SKIRT * s.line;
            for (int side = -1; side <= 1; side += 2) {
                if (jet.innerM() > jet.columnM() + s.metres(0.5)) {
                    double below = 0.14 * (jet.skirtTopM() - jet.throatM());
                    s.path(side, List.of(new double[] {jet.columnM(), jet.throatM() - below}, new double[] {
                        jet.innerM(), jet.throatM()
                    }));
                    s.shell(color, 0.7 * width, glass);
                }
                s.path(side, skirt(jet, s.metres(width / 2 + s.line)));
                s.shell(color, width, glass);
            }
        }
    }

    private List<double[]> skirt(JetShape jet, double out) {
        double r = jet.outerM() + out;
        double h = jet.skirtTopM();
        if (jet.closes()) {
            return curve(r, jet.throatM(), r, h, 0, h);
        }
        return curve(
                r,
                jet.throatM(),
                r,
                h - 0.1 * (h - jet.throatM()),
                shape.tubeAt(h).outerM(),
                h);
    }

    /** The jets: sheets of vapour down and out onto the wall, as strong as their share of the full flow. */
    void jets() {
        for (int k = 0; k < shape.jets.size(); k++) {
            JetState state = moment.jets().get(k);
            if (state.lit()) {
                jet(shape.jets.get(k), Math.min(1, state.fullFlowFraction()));
            }
        }
    }

    private void jet(JetShape jet, double strength) {
        Color color = s.heat(columnK(jet.throatM()));
        double drop = jet.throatM() - jet.reachM();
        double spread = 0.30 * drop;
        double gap = Math.max(jet.outerM() - jet.innerM(), s.metres(1.5));
        double inner = jet.outerM() - gap;
        double wall = shape.bodyInnerM;
        double room = wall - jet.outerM();
        for (int side = -1; side <= 1; side += 2) {
            List<double[]> sheet = new ArrayList<>(curve(
                    jet.outerM(),
                    jet.throatM(),
                    jet.outerM() + 0.25 * room,
                    jet.throatM() - 0.35 * drop,
                    wall,
                    jet.reachM() + spread));
            List<double[]> low = curve(
                    inner, jet.throatM(), inner + 0.1 * room, jet.throatM() - 0.8 * drop, wall, jet.reachM() - spread);
            for (int i = low.size() - 1; i >= 0; i--) {
                sheet.add(low.get(i));
            }
            s.path(side, sheet);
            s.g.setFill(new LinearGradient(
                    s.x(side * inner),
                    0,
                    s.x(side * wall),
                    0,
                    false,
                    CycleMethod.NO_CYCLE,
                    new Stop(0, Palette.thin(color, 0.25 + 0.65 * strength)),
                    new Stop(1, Palette.thin(color, 0.10 + 0.25 * strength))));
            s.g.fill();
            int lines = 1 + (int) Math.round(3 * strength);
            s.stroke(Palette.thin(s.palette.ink(), 0.55), 0.9 * s.line);
            for (int i = 0; i < lines; i++) {
                double at = (i + 0.5) / lines;
                s.path(
                        side,
                        curve(
                                inner + at * gap,
                                jet.throatM(),
                                inner + at * gap + (0.1 + 0.15 * at) * room,
                                jet.throatM() - (0.8 - 0.45 * at) * drop,
                                wall - s.metres(2 * s.line),
                                jet.reachM() + (2 * at - 1) * 0.8 * spread));
                s.g.stroke();
            }
        }
    }

    /** The plate over the top jet. */
    void cap() {
        PumpShape.Plate cap = shape.cap;
        if (cap == null) {
            return;
        }
        double thick = s.wall(cap.thicknessM());
        s.g.setFill(s.heat(moment.capK()));
        s.across(cap.radiusM(), cap.bottomM() + thick, cap.bottomM());
        s.stroke(s.palette.ink(), 1.3 * s.line);
        s.g.strokeRect(s.x(-cap.radiusM()), s.y(cap.bottomM() + thick), s.px(2 * cap.radiusM()), s.px(thick));
    }

    private static List<double[]> curve(double r0, double z0, double r1, double z1, double r2, double z2) {
        List<double[]> points = new ArrayList<>(CURVE + 1);
        for (int i = 0; i <= CURVE; i++) {
            double t = (double) i / CURVE;
            double u = 1 - t;
            points.add(
                    new double[] {u * u * r0 + 2 * u * t * r1 + t * t * r2, u * u * z0 + 2 * u * t * z1 + t * t * z2});
        }
        return points;
    }
}
