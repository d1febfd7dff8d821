package boilwright.report;

import boilwright.answers.CheckAnswer;
import boilwright.answers.SessionOutlook;
import boilwright.spread.Bands;
import boilwright.spread.Certainty;
import boilwright.thermal.NeededState;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;

/**
 * A check for other programs: SI with the unit at the end of each key, stages bottom to top, margins worst first, no clock
 * times, paths or thread counts. Absent values are null.
 */
public final class CheckJson {
    private CheckJson() {}

    /** The whole object as text, the same for the same answer; with how far margins and events spread. */
    public static String write(CheckAnswer answer, Bands bands, Certainty certainty, SessionOutlook session) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.rig().name())
                .put("fluid", answer.rig().fluidId())
                .put("fluidTitle", answer.fluidTitle())
                .put("verdict", answer.verdict());
        JsonTree sure = json.object("certainty")
                .put("assumed", certainty.assumed())
                .put("samples", certainty.full().samples())
                .putTextOrNull("sentence", certainty.sentence());
        JsonParts.chance(sure, "everyJetFull", certainty.full());
        json.object("session")
                .put("lengthS", session.lengthS())
                .put("longestS", session.longestS())
                .put("sentence", session.sentence());
        steady(json.object("steady"), answer.steady(), answer.needed());
        needed(json.object("needed"), answer.needed());
        JsonParts.run(json, answer.warmup());
        JsonParts.events(json, answer.warmup().events(), bands);
        JsonParts.margins(json, answer.margins(), bands);
        JsonParts.ending(
                json,
                answer.cautions(),
                answer.notes(),
                answer.parameters(),
                answer.programVersion(),
                answer.dataVersion());
        if (!bands.isEmpty()) {
            json.put("spreadSamples", bands.samples());
        }
        return json.text();
    }

    private static void steady(JsonTree json, SteadyState steady, NeededState needed) {
        json.put("liquidTemperatureK", steady.liquidTemperatureK())
                .put("boilerPressurePa", steady.boilerPressurePa())
                .put("vapourFlowKgPerS", steady.vapourFlowKgPerS())
                .put("heatDeliveredW", steady.heatDeliveredW())
                .put("heatNeededW", needed.heatNeededW())
                .put("heatToWaterW", steady.heatToWaterW())
                .put("heatToAirW", steady.heatToAirW())
                .put("heatToForelineW", steady.heatToForelineW())
                .put("sourceInputW", steady.sourceInputW())
                .put("sourceLossW", steady.sourceLossW())
                .put("columnMach", steady.columnMach())
                .put("closureRelative", steady.closureRelative())
                .put("assumptions", steady.assumptions())
                .put("sourceK", steady.sourceK())
                .put("boilerOuterFaceK", steady.outerFaceK())
                .put("boilerInnerFaceK", steady.innerFaceK())
                .put("hydrostaticSuperheatK", steady.hydrostaticSuperheatK())
                .put("liquidFraction", steady.liquidFraction())
                .put("oilLossKgPerS", steady.oilLossKgPerS())
                .put("returnK", steady.returnK())
                .put("waterOutK", steady.waterOutK())
                .put("capK", steady.capK())
                .put("hottestOutsideK", steady.hottestOutsideK())
                .put("boilerGlassStressPa", steady.boilerGlassStressPa())
                .put("bodyGlassStressPa", steady.jacketGlassStressPa())
                .put("speedM3PerS", steady.speedM3PerS())
                .put("throughputPaM3PerS", steady.throughputPaM3PerS())
                .put("criticalBackingPa", steady.criticalBackingPa());
        JsonTree.Rows stages = json.rows("stages");
        steady.stages().forEach(stage -> stage(stages.add(), stage));
        JsonTree.Rows column = json.rows("column");
        for (int i = 0; i < steady.columnHeightsM().size(); i++) {
            column.add()
                    .put("heightM", steady.columnHeightsM().get(i))
                    .put("temperatureK", steady.columnK().get(i))
                    .put("pressurePa", steady.columnPa().get(i));
        }
    }

    private static void stage(JsonTree json, StageState stage) {
        json.put("name", stage.name())
                .put("flowKgPerS", stage.flowKgPerS())
                .put("pressurePa", stage.pressurePa())
                .put("lit", stage.lit())
                .put("full", stage.full())
                .put("fullFlowFraction", stage.fullFlowFraction())
                .put("condensedShare", stage.condensedShare())
                .put("outletPressurePa", stage.outletPressurePa())
                .put("filmMarginK", stage.filmMarginK())
                .put("wallK", stage.wallK())
                .put("waterK", stage.waterK())
                .put("heatToWallW", stage.zoneHeatW())
                .putTextOrNull("darkReason", stage.darkReason());
    }

    private static void needed(JsonTree json, NeededState needed) {
        json.put("governingStage", needed.governingStage())
                .put("heatNeededW", needed.heatNeededW())
                .put("heatAvailableW", needed.heatAvailableW())
                .put("liquidTemperatureK", needed.state().liquidTemperatureK())
                .put("boilerPressurePa", needed.state().boilerPressurePa())
                .put("heatToWaterW", needed.state().heatToWaterW())
                .put("closureRelative", needed.state().closureRelative());
    }
}
