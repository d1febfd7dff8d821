package boilwright.dashboard.drawing;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.dashboard.drawing.PartReading.MarginLine;
import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.MomentState;
import boilwright.dashboard.text.WindowText;
import boilwright.rig.Rig;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What each part reads at a moment: temperature, flow, watts, and the margins that live there. */
final class Readings {
    private final PumpShape shape;
    private final MomentState moment;
    private final List<Margin> margins;
    private final Set<Part> guesses;

    Readings(PumpShape shape, MomentState moment, List<Margin> margins, Set<Part> guesses) {
        this.shape = shape;
        this.moment = moment;
        this.margins = margins;
        this.guesses = guesses;
    }

    /** What a part is called. */
    static String name(PumpShape shape, Part part) {
        List<JetShape> jets = shape.jets;
        return switch (part.kind()) {
            case JET ->
                WindowText.say(
                        "drawing.jet",
                        Integer.toString(part.index() + 1),
                        shape.rig.stages().get(part.index()).name());
            case WALL ->
                part.index() >= jets.size()
                        ? WindowText.say("drawing.wall.lower")
                        : WindowText.say(
                                "drawing.wall",
                                shape.rig.stages().get(part.index()).name());
            case SOURCE -> shape.rig.heatSource().kind().shortTitle();
            case WATER -> WindowText.say("drawing.water");
            default ->
                WindowText.say("drawing."
                        + part.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
        };
    }

    /** The reading of a part; without a moment only what the rig tells. */
    PartReading of(Part part) {
        List<String> lines = new ArrayList<>();
        if (moment != null) {
            lines.addAll(figures(part));
        }
        lines.addAll(outlines(part));
        List<MarginLine> found = margins.stream()
                .filter(m -> place(m.id()) == part.kind())
                .map(m -> new MarginLine(margin(m), m))
                .toList();
        return new PartReading(name(shape, part), lines, found, guesses.contains(part));
    }

    private List<String> figures(Part part) {
        MomentState m = moment;
        return switch (part.kind()) {
            case INLET -> List.of();
            case CAP -> List.of(Figures.temperature(m.capK()));
            case JET -> jet(part.index());
            case WALL -> wall(part.index());
            case COLUMN ->
                List.of(
                        WindowText.say("drawing.column.foot", Figures.temperature(m.columnK()[0])),
                        WindowText.say("drawing.column.top", Figures.temperature(m.columnK()[m.columnK().length - 1])),
                        m.frontHeightM() > 0
                                ? WindowText.say("drawing.front.reading", Figures.millimetres(m.frontHeightM()))
                                : WindowText.say("drawing.front.none"));
            case WATER ->
                List.of(
                        WindowText.say(
                                "drawing.water.reading",
                                Figures.temperature(shape.rig.cooling().inletTemperatureK()),
                                Figures.temperature(m.waterOutK()),
                                write(shape.waterFlowM3PerS, Dimension.VOLUME_FLOW)),
                        WindowText.say("drawing.watts.water", write(m.heatToWaterW(), Dimension.POWER)));
            case FORELINE -> List.of(write(shape.forelinePa, Dimension.PRESSURE));
            case VAPOUR ->
                List.of(
                        WindowText.say("drawing.pressure", write(m.boilerPressurePa(), Dimension.PRESSURE)),
                        WindowText.say("drawing.flow", write(m.vapourFlowKgPerS(), Dimension.MASS_FLOW)));
            case BOILER -> List.of(Figures.temperature(m.boilerWallK()));
            case OIL ->
                List.of(
                        Figures.temperature(m.oilK()),
                        WindowText.say("drawing.oil.left", Figures.percent(m.liquidFraction())));
            case SOURCE ->
                Double.isNaN(m.sourceK())
                        ? List.of(WindowText.say(m.heatDeliveredW() > 0 ? "drawing.source.on" : "drawing.source.off"))
                        : List.of(Figures.temperature(m.sourceK()));
            case TO_BOILER -> List.of(write(m.heatDeliveredW(), Dimension.POWER));
            case TO_WATER -> List.of(write(m.heatToWaterW(), Dimension.POWER));
            case TO_ROOM -> List.of(write(m.heatToAirW(), Dimension.POWER));
        };
    }

    private List<String> jet(int k) {
        JetState jet = moment.jets().get(k);
        return List.of(
                WindowText.say("drawing.jet." + Callouts.word(jet), Figures.percent(jet.fullFlowFraction())),
                WindowText.say("drawing.flow", write(jet.flowKgPerS(), Dimension.MASS_FLOW)),
                WindowText.say("drawing.jet.wall", Figures.temperature(jet.wallK())));
    }

    private List<String> wall(int k) {
        if (k >= moment.jets().size()) {
            return List.of(WindowText.say("drawing.wall.lower.why"));
        }
        JetState jet = moment.jets().get(k);
        List<String> lines = new ArrayList<>();
        lines.add(Figures.temperature(jet.wallK()));
        lines.add(WindowText.say("drawing.wall.condensate", write(jet.condensateKgPerS(), Dimension.MASS_FLOW)));
        if (!Double.isNaN(jet.waterK()) && shape.water.stream().anyMatch(w -> w.stage() == k)) {
            lines.add(WindowText.say("drawing.wall.water", Figures.temperature(jet.waterK())));
        }
        return lines;
    }

    private List<String> outlines(Part part) {
        Rig rig = shape.rig;
        return switch (part.kind()) {
            case INLET ->
                List.of(WindowText.say(
                        "drawing.inlet.bore", Figures.millimetres(rig.body().innerDiameterM())));
            case JET ->
                List.of(WindowText.say(
                        "drawing.jet.throat",
                        Figures.millimetres(rig.stages().get(part.index()).throatDiameterM()),
                        write(rig.stages().get(part.index()).throatGapM(), Dimension.LENGTH)));
            case BOILER ->
                List.of(WindowText.say(
                        "drawing.boiler.outline",
                        Figures.millimetres(rig.boiler().innerDiameterM()),
                        write(rig.boiler().wallThicknessM(), Dimension.LENGTH)));
            case SOURCE ->
                List.of(WindowText.say(
                        "drawing.source.rated", write(rig.heatSource().ratedPowerW(), Dimension.POWER)));
            default -> List.of();
        };
    }

    /** The part that a margin is about. */
    private static Part.Kind place(MarginId id) {
        return switch (id) {
            case OIL_BULK, OIL_FILM, LIQUID, SUPERHEAT -> Part.Kind.OIL;
            case BOILER_PRESSURE -> Part.Kind.VAPOUR;
            case GLASS_BOILER -> Part.Kind.BOILER;
            case SOURCE, FUEL, CARTRIDGE -> Part.Kind.SOURCE;
            case HEAT -> Part.Kind.TO_BOILER;
            case COLUMN_MACH -> Part.Kind.COLUMN;
            case JETS -> Part.Kind.JET;
            case GLASS_BODY, FILM_MARGIN -> Part.Kind.WALL;
            case WATER_IN, WATER_OUT, WATER_FLOW -> Part.Kind.WATER;
            case CHILLER -> Part.Kind.TO_WATER;
            case CAP -> Part.Kind.CAP;
            case FORELINE, OIL_LOSS -> Part.Kind.FORELINE;
            case GAUGE, OIL_VAPOUR, THROUGHPUT, OVERLOAD, GAUGE_RANGE -> Part.Kind.INLET;
        };
    }

    private static String margin(Margin m) {
        String value = m.value().isPresent() ? write(m.value().getAsDouble(), m.dimension()) : "";
        String mark = String.valueOf(m.status().mark());
        if (m.limit().isEmpty() || value.isEmpty()) {
            return WindowText.say(
                    "drawing.margin.unknown", mark, m.title(), m.status().id());
        }
        return WindowText.say(
                m.side() == Margin.Side.AT_MOST ? "drawing.margin.at-most" : "drawing.margin.at-least",
                mark,
                m.title(),
                m.status().id(),
                value,
                write(m.limit().getAsDouble(), m.dimension()));
    }

    private static String write(double si, Dimension dimension) {
        return QuantityWriter.writeAuto(si, dimension);
    }
}
