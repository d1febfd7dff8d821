package boilwright.dashboard.drawing;

import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.MomentState;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What the labels of a moment say and where their leaders point. */
final class Callouts {
    private final Sheet s;
    private final PumpShape shape;
    private final MomentState moment;
    private final Map<HeatArrows.Way, HeatArrows.Arrow> arrows;
    private final Set<Part> guesses;
    private final List<Callout> all = new ArrayList<>();

    private Callouts(
            Sheet sheet,
            PumpShape shape,
            MomentState moment,
            Map<HeatArrows.Way, HeatArrows.Arrow> arrows,
            Set<Part> guesses) {
        s = sheet;
        this.shape = shape;
        this.moment = moment;
        this.arrows = arrows;
        this.guesses = guesses;
    }

    static List<Callout> of(
            Sheet sheet,
            PumpShape shape,
            MomentState moment,
            Map<HeatArrows.Way, HeatArrows.Arrow> arrows,
            Set<Part> guesses) {
        Callouts callouts = new Callouts(sheet, shape, moment, arrows, guesses);
        callouts.left();
        callouts.right();
        return callouts.all;
    }

    private void left() {
        if (shape.cap != null) {
            add(
                    Part.of(Part.Kind.CAP),
                    false,
                    -0.75 * shape.cap.radiusM(),
                    shape.cap.bottomM() + s.wall(shape.cap.thicknessM()) / 2,
                    "drawing.cap",
                    4,
                    temperature(moment.capK()));
        }
        water();
        double foot = Math.min(0.5 * shape.jets.get(0).throatM(), 0.5 * shape.bodyInnerM);
        PumpShape.Tube tube = shape.tubeAt(foot);
        add(
                Part.of(Part.Kind.COLUMN),
                false,
                -tube.outerM() + s.metres(2 * s.line),
                foot,
                "drawing.column",
                7,
                WindowText.say("drawing.column.foot", temperature(moment.columnK()[0])),
                WindowText.say("drawing.column.top", temperature(moment.columnK()[moment.columnK().length - 1])));
        double front = moment.frontHeightM();
        if (front > 0.06 * shape.columnTopM && front < 0.995 * shape.columnTopM) {
            add(
                    Part.of(Part.Kind.COLUMN),
                    false,
                    -0.5 * shape.tubeAt(front).innerM(),
                    front,
                    "drawing.front",
                    6,
                    WindowText.say("drawing.front.height", Figures.millimetres(front)));
        }
        arrow(HeatArrows.Way.TO_ROOM, Part.Kind.TO_ROOM, "room", 8, false);
        double depth = shape.boiler.oilDepthM(shape.rig.chargeM3() * moment.liquidFraction());
        add(
                Part.of(Part.Kind.OIL),
                false,
                -0.55 * shape.boiler.radiusM(),
                -shape.boiler.heightM() + Math.max(0.55 * depth, 0.3 * shape.boiler.domeM()),
                "drawing.oil",
                10,
                temperature(moment.oilK()),
                WindowText.say("drawing.oil.left", Figures.percent(moment.liquidFraction())));
        add(
                Part.of(Part.Kind.BOILER),
                false,
                -shape.boiler.radiusM() - s.wall(shape.boiler.wallM()) / 2,
                -shape.boiler.heightM() + Math.max(shape.boiler.domeM(), 0.22 * shape.boiler.heightM()),
                "drawing.boiler",
                5,
                temperature(moment.boilerWallK()));
        source();
    }

    private void source() {
        double under = -shape.boiler.heightM() - shape.boiler.wallM();
        double middle = under - 0.5 * Math.max(shape.source.thicknessM(), 0.3 * shape.source.depthM());
        double at = shape.source.sideM() > 0 || shape.boiler.domeM() > 0 ? 0.6 : 0.9;
        if (Double.isNaN(moment.sourceK())) {
            boolean on = moment.heatDeliveredW() > 0;
            add(
                    Part.of(Part.Kind.SOURCE),
                    false,
                    -at * shape.source.radiusM(),
                    middle,
                    "drawing.source",
                    9,
                    WindowText.say(on ? "drawing.source.on" : "drawing.source.off"));
        } else {
            add(
                    Part.of(Part.Kind.SOURCE),
                    false,
                    -at * shape.source.radiusM(),
                    middle,
                    "drawing.source",
                    9,
                    temperature(moment.sourceK()));
        }
    }

    private void water() {
        if (shape.water.isEmpty()) {
            return;
        }
        arrow(HeatArrows.Way.TO_WATER, Part.Kind.TO_WATER, "water", 8, false);
        Part water = Part.of(Part.Kind.WATER);
        double tail = s.metres(18 * s.line);
        double[] in = WaterPainter.inlet(shape);
        double[] out = WaterPainter.outlet(shape);
        String flow = QuantityWriter.writeAuto(shape.waterFlowM3PerS, Dimension.VOLUME_FLOW);
        add(
                water,
                false,
                -in[0] - tail,
                in[1],
                "drawing.water-in",
                6,
                temperature(shape.rig.cooling().inletTemperatureK()),
                flow);
        add(water, false, -out[0] - tail, out[1], "drawing.water-out", 8, temperature(moment.waterOutK()));
    }

    private void right() {
        add(
                Part.of(Part.Kind.INLET),
                true,
                shape.flangeRadiusM - s.metres(3 * s.line),
                (shape.topM + shape.bodyTopM) / 2,
                "drawing.inlet",
                2,
                WindowText.say("drawing.inlet.bore", Figures.millimetres(2 * shape.bodyInnerM)));
        for (int k = 0; k < shape.jets.size(); k++) {
            JetState jet = moment.jets().get(k);
            JetShape at = shape.jets.get(k);
            Part part = new Part(Part.Kind.JET, k);
            all.add(new Callout(
                    part,
                    true,
                    s.x(at.outerM()) + 1.5 * s.line,
                    s.y(at.throatM()) - 2 * s.line,
                    mark(jet),
                    named(part, WindowText.say("drawing.jet", Integer.toString(k + 1), jet.name())),
                    named(part, WindowText.say("drawing.jet.brief", Integer.toString(k + 1))),
                    List.of(
                            WindowText.say("drawing.jet.short." + word(jet), Figures.percent(jet.fullFlowFraction())),
                            WindowText.say("drawing.jet.wall", temperature(jet.wallK()))),
                    12));
        }
        add(
                Part.of(Part.Kind.FORELINE),
                true,
                shape.stubEndM,
                shape.stubM,
                "drawing.foreline",
                6,
                QuantityWriter.writeAuto(shape.forelinePa, Dimension.PRESSURE));
        add(
                Part.of(Part.Kind.VAPOUR),
                true,
                0.5 * shape.boiler.radiusM(),
                -0.34 * shape.boiler.heightM(),
                "drawing.vapour",
                7,
                QuantityWriter.writeAuto(moment.boilerPressurePa(), Dimension.PRESSURE),
                QuantityWriter.writeAuto(moment.vapourFlowKgPerS(), Dimension.MASS_FLOW));
        arrow(HeatArrows.Way.TO_BOILER, Part.Kind.TO_BOILER, "boiler", 11, true);
    }

    private void arrow(HeatArrows.Way way, Part.Kind kind, String where, int weight, boolean right) {
        HeatArrows.Arrow arrow = arrows.get(way);
        if (arrow == null) {
            return;
        }
        boolean flows = HeatArrows.flows(shape, moment, way);
        double x = !flows
                ? Double.NaN
                : right ? arrow.x() + 0.3 * HeatArrows.halfWidth(s, shape, moment, way) : arrow.tipX();
        double y = right ? arrow.y() - 0.22 * (arrow.y() - arrow.tipY()) : arrow.tipY();
        Part part = Part.of(kind);
        double watts = HeatArrows.watts(moment, way);
        String name = WindowText.say((watts < 0 ? "drawing.from-" : "drawing.to-") + where);
        all.add(new Callout(
                part,
                right,
                x,
                y,
                Callout.Mark.NONE,
                named(part, name),
                named(part, name),
                List.of(QuantityWriter.writeAuto(Math.abs(watts), Dimension.POWER)),
                weight));
    }

    private void add(Part part, boolean right, double radius, double height, String key, int weight, String... values) {
        all.add(new Callout(
                part,
                right,
                s.x(radius),
                s.y(height),
                Callout.Mark.NONE,
                named(part, title(part, key)),
                named(part, WindowText.say(brief(key))),
                List.of(values),
                weight));
    }

    private String title(Part part, String key) {
        return part.kind() == Part.Kind.SOURCE ? shape.rig.heatSource().kind().shortTitle() : WindowText.say(key);
    }

    private static String brief(String key) {
        return key.equals("drawing.front") ? "drawing.front.brief" : key;
    }

    private String named(Part part, String name) {
        return guesses.contains(part) ? WindowText.say("drawing.guessed", name) : name;
    }

    static String word(JetState jet) {
        if (!jet.lit()) {
            return "dark";
        }
        return jet.full() ? "full" : "lit";
    }

    static Callout.Mark mark(JetState jet) {
        if (!jet.lit()) {
            return Callout.Mark.DARK;
        }
        return jet.full() ? Callout.Mark.FULL : Callout.Mark.LIT;
    }

    private static String temperature(double k) {
        return Figures.temperature(k);
    }
}
