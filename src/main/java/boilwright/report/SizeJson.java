package boilwright.report;

import boilwright.choice.SizeAnswer;
import boilwright.choice.SizeAnswer.Least;
import boilwright.choice.SizeAnswer.Pair;
import boilwright.choice.SizeAnswer.PairRow;
import boilwright.choice.SizeAnswer.Setting;
import boilwright.rig.ParameterValues;

/** A sizing for other programs. */
public final class SizeJson {
    private SizeJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(SizeAnswer answer, HeatSpread spread) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.rig().name())
                .put("fluid", answer.rig().fluidId())
                .put("fluidTitle", answer.fluidTitle())
                .put("verdict", answer.verdict())
                .put("margin", answer.margin())
                .put("ratio", answer.ratio())
                .put("isEnough", answer.isEnough())
                .put("level", answer.level());
        spread.put(json, "");
        json.object("needed")
                .put("governingStage", answer.needed().governingStage())
                .put("heatNeededW", answer.needed().heatNeededW())
                .put("outerFaceK", answer.needed().state().outerFaceK())
                .put("liquidTemperatureK", answer.needed().state().liquidTemperatureK())
                .put("closureRelative", answer.needed().state().closureRelative());
        JsonTree.Rows least = json.rows("least");
        for (Least one : answer.least()) {
            least.add()
                    .put("id", one.figure().id())
                    .put("path", one.figure().path())
                    .put("unit", one.figure().dimension().siUnit())
                    .put("present", one.present())
                    .put("value", one.value());
        }
        JsonTree.Rows pairs = json.rows("pairs");
        for (Pair pair : answer.pairs()) {
            JsonTree.Rows rows = pairs.add()
                    .put("given", pair.given().id())
                    .put("givenUnit", pair.given().dimension().siUnit())
                    .put("found", pair.found().id())
                    .put("foundUnit", pair.found().dimension().siUnit())
                    .rows("rows");
            for (PairRow row : pair.rows()) {
                rows.add().put("given", row.given()).put("found", row.found());
            }
        }
        json.object("window")
                .put("isOpen", answer.window().isOpen())
                .put("lowW", answer.window().lowW())
                .put("highW", answer.window().highW())
                .put("presentW", answer.window().presentW())
                .put("searchedToW", answer.window().searchedToW())
                .putTextOrNull("limitId", answer.window().limitId())
                .put("sentence", answer.window().sentence());
        JsonTree.Rows settings = json.rows("settings");
        for (Setting setting : answer.settings()) {
            settings.add()
                    .put("id", setting.id())
                    .put("powerW", setting.powerW())
                    .put("share", setting.share())
                    .put("ratio", setting.ratio())
                    .put("liquidTemperatureK", setting.oilK())
                    .put("sourceInputW", setting.inputW())
                    .put("heatToWaterW", setting.toWaterW());
        }
        answer.saved()
                .ifPresent(saved -> json.object("saved")
                        .put("sourceInputW", saved.inputW())
                        .put("heatToWaterW", saved.toWaterW())
                        .put("flowM3PerS", saved.flowM3PerS()));
        ChoiceJson.curves(json.object("curves"), answer.curves());
        JsonParts.ending(
                json,
                answer.cautions(),
                answer.notes(),
                ParameterValues.of(answer.rig()),
                answer.programVersion(),
                answer.dataVersion());
        return json.text();
    }
}
