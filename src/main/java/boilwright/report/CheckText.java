package boilwright.report;

import boilwright.answers.Cautions;
import boilwright.answers.CheckAnswer;
import boilwright.answers.SessionOutlook;
import boilwright.spread.Bands;
import boilwright.spread.Certainty;
import boilwright.thermal.NeededState;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A check as a page of text for the person at the pump. */
public final class CheckText {
    private CheckText() {}

    /** What counts: verdict, failing and tight margins, cautions of heating. */
    public static String brief(CheckAnswer answer, Bands bands, Certainty certainty, SessionOutlook session) {
        Page page = new Page();
        opening(page, answer, certainty);
        page.paragraph("", 0, session.sentence());
        Sections.wanting(page, answer.margins(), bands);
        Sections.cautions(page, answer.cautionsAt(Cautions.Place.HEAT, Cautions.Place.ANYWHERE));
        return page.toString();
    }

    private static void opening(Page page, CheckAnswer answer, Certainty certainty) {
        Sections.opening(
                page,
                answer.rig().name(),
                answer.fluidTitle(),
                (certainty.sentence() + " " + answer.verdict()).strip());
    }

    /** The whole page: verdict, margins, time line, jets, heat, assumptions, cautions; with how far margins and events spread. */
    public static String write(CheckAnswer answer, Bands bands, Certainty certainty, SessionOutlook session) {
        Page page = new Page();
        opening(page, answer, certainty);
        page.paragraph("", 0, session.sentence());
        Sections.margins(page, answer.margins(), bands);
        Sections.timeLine(
                page,
                "Warm-up from cold, h:mm:ss after the foreline is pumped down",
                answer.warmup().events(),
                bands);
        jets(page, answer.steady());
        heat(page, answer.steady(), answer.needed());
        conditions(page, answer.steady());
        Sections.balance(page, "Energy of the warm-up", answer.warmup().balance());
        Sections.assumptions(
                page,
                answer.notes(),
                answer.steady().assumptions(),
                answer.warmup().assumptions());
        Sections.cautions(page, answer.cautions());
        Sections.versions(page, answer.programVersion(), answer.dataVersion());
        return page.toString();
    }

    private static void jets(Page page, SteadyState steady) {
        page.heading("Jets at rest, bottom to top");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("jet", "", "vapour", "of full", "before it", "condensed", "wall", "water", "heat to wall"));
        for (StageState stage : steady.stages()) {
            rows.add(List.of(
                    stage.name(),
                    stage.full() ? "full" : stage.lit() ? "lit" : "dark",
                    Sections.quantity(stage.flowKgPerS(), Dimension.MASS_FLOW),
                    percent(stage.fullFlowFraction()),
                    Sections.quantity(stage.pressurePa(), Dimension.PRESSURE),
                    percent(stage.condensedShare()),
                    Sections.quantity(stage.wallK(), Dimension.TEMPERATURE),
                    Sections.quantity(stage.waterK(), Dimension.TEMPERATURE),
                    Sections.quantity(stage.zoneHeatW(), Dimension.POWER)));
        }
        page.table(rows);
        for (StageState stage : steady.stages()) {
            if (!stage.darkReason().isEmpty()) {
                page.paragraph("  " + stage.name() + ": ", 4, stage.darkReason());
            }
        }
    }

    private static void heat(Page page, SteadyState steady, NeededState needed) {
        page.heading("Heat at rest");
        page.table(List.of(
                List.of("the source takes", watts(steady.sourceInputW())),
                List.of("it loses before the boiler", watts(steady.sourceLossW())),
                List.of("through the boiler's outer face", watts(steady.heatDeliveredW())),
                List.of("  of this into the water", watts(steady.heatToWaterW())),
                List.of("  of this to the room", watts(steady.heatToAirW())),
                List.of("  of this into the foreline", watts(steady.heatToForelineW())),
                List.of("left over", Sections.share(steady.closureRelative())),
                List.of("needed for full flow of every jet", watts(needed.heatNeededW())),
                List.of("the source could deliver there", watts(needed.heatAvailableW()))));
        page.paragraph("  ", 2, "The jet that needs the most: " + needed.governingStage() + ".");
    }

    private static void conditions(Page page, SteadyState steady) {
        page.heading("Conditions at rest");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("oil", kelvin(steady.liquidTemperatureK())));
        rows.add(List.of("boiler pressure", Sections.quantity(steady.boilerPressurePa(), Dimension.PRESSURE)));
        rows.add(List.of(
                "vapour leaving the boiler", Sections.quantity(steady.vapourFlowKgPerS(), Dimension.MASS_FLOW)));
        rows.add(List.of("boiler wall, outside", kelvin(steady.outerFaceK())));
        rows.add(List.of("boiler wall, inside", kelvin(steady.innerFaceK())));
        optional(rows, "plate, mantle or heater", steady.sourceK(), Dimension.TEMPERATURE);
        optional(rows, "water outlet", steady.waterOutK(), Dimension.TEMPERATURE);
        optional(rows, "top cap", steady.capK(), Dimension.TEMPERATURE);
        rows.add(List.of("hottest outside face", kelvin(steady.hottestOutsideK())));
        optional(rows, "stress in the boiler's glass", steady.boilerGlassStressPa(), Dimension.PRESSURE);
        optional(rows, "stress in the body's glass", steady.jacketGlassStressPa(), Dimension.PRESSURE);
        rows.add(List.of("charge left in the boiler", percent(steady.liquidFraction())));
        rows.add(List.of("oil lost into the foreline", Sections.quantity(steady.oilLossKgPerS(), Dimension.MASS_FLOW)));
        rows.add(List.of("pumping speed for air", Sections.quantity(steady.speedM3PerS(), Dimension.VOLUME_FLOW)));
        rows.add(List.of(
                "foreline that the jets bear", Sections.quantity(steady.criticalBackingPa(), Dimension.PRESSURE)));
        page.table(rows);
    }

    private static void optional(List<List<String>> rows, String name, OptionalDouble value, Dimension dimension) {
        if (value.isPresent()) {
            rows.add(List.of(name, Sections.quantity(value.getAsDouble(), dimension)));
        }
    }

    private static String watts(double value) {
        return Sections.quantity(value, Dimension.POWER);
    }

    private static String kelvin(double value) {
        return Sections.quantity(value, Dimension.TEMPERATURE);
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
