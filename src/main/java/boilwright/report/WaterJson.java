package boilwright.report;

import boilwright.answers.SessionOutlook;
import boilwright.answers.WaterAnswer;
import boilwright.answers.WaterAnswer.Element;
import boilwright.answers.WaterAnswer.LeastFlow;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.water.OperatingPoint;

/** The cooling side for other programs. */
public final class WaterJson {
    private WaterJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(WaterAnswer answer, SessionOutlook session) {
        JsonTree json = new JsonTree();
        OperatingPoint flow = answer.steady().flow();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.check().rig().name())
                .put("fluid", answer.check().rig().fluidId())
                .put("fluidTitle", answer.check().fluidTitle())
                .put("verdict", answer.verdict())
                .put("forFullJets", answer.forFullJets());
        json.object("session")
                .put("lengthS", session.lengthS())
                .put("longestS", session.longestS())
                .put("sentence", session.sentence());
        json.object("operatingPoint")
                .put("flowKgPerS", flow.massFlowKgPerS())
                .put("flowM3PerS", flow.volumeFlowM3PerS())
                .put("supplyHeadPa", flow.supplyHeadPa())
                .put("circuitDropPa", flow.circuitDropPa())
                .put("inletK", answer.check().rig().cooling().inletTemperatureK())
                .put("outletK", answer.steady().waterOutK());
        JsonTree.Rows elements = json.rows("elements");
        for (Element e : answer.elements()) {
            elements.add()
                    .put("name", e.name())
                    .put("inletK", e.inletK())
                    .put("outletK", e.outletK())
                    .put("flowKgPerS", e.flowKgPerS())
                    .put("heatW", e.heatW())
                    .put("hWPerM2K", e.coefficient())
                    .put("reynolds", e.reynolds())
                    .put("pressureDropPa", e.pressureDropPa());
        }
        json.object("duty")
                .put("restW", answer.restDutyW())
                .put("peakW", answer.peakDutyW())
                .put("pumpHeatW", answer.pumpHeatW())
                .put("capacityW", answer.capacityW())
                .put("settlesAtK", answer.settlesAtK());
        json.put("closureRelative", answer.steady().closureRelative());
        JsonParts.run(json, answer.check().warmup());
        JsonTree.Rows least = json.rows("leastFlow");
        for (LeastFlow l : answer.leastFlows()) {
            least.add().put("limit", l.limit().id()).put("flowM3PerS", l.flowM3PerS());
        }
        json.putTextOrNull(
                "governingLimit", answer.governing().map(l -> l.limit().id()).orElse(""));
        json.object("smallestChiller")
                .put("capacityW", answer.chillerW())
                .put("waterK", answer.check().rig().cooling().inletTemperatureK())
                .put("roomK", answer.check().rig().room().temperatureK())
                .put("pumpFlowM3PerS", answer.pumpFlowM3PerS())
                .put("pumpHeadPa", answer.pumpHeadPa());
        JsonTree tank = json.object("tank");
        tank.put("isTank", answer.tank().isPresent());
        answer.tank()
                .ifPresent(t -> tank.put("runTimeS", t.runTimeS())
                        .put("limitK", t.limitK())
                        .put("iceKg", t.iceKg()));
        tank.put("sessionS", answer.sessionS()).put("iceForSessionKg", answer.iceKg());
        JsonTree.Rows orders = json.rows("orders");
        order(orders.add().put("id", "as-plumbed"), answer.steady());
        answer.turnedRound().ifPresent(t -> order(orders.add().put("id", "turned-round"), t));
        json.put("cures", answer.cures());
        JsonParts.margins(json, answer.margins());
        JsonParts.ending(
                json,
                answer.check().cautions(),
                answer.notes(),
                answer.check().parameters(),
                answer.check().programVersion(),
                answer.check().dataVersion());
        return json.text();
    }

    private static void order(JsonTree json, SteadyState state) {
        json.put("heatToWaterW", state.heatToWaterW())
                .put("waterOutK", state.waterOutK())
                .put("capK", state.capK());
        JsonTree.Rows walls = json.rows("walls");
        for (StageState stage : state.stages()) {
            walls.add().put("stage", stage.name()).put("wallK", stage.wallK());
        }
    }
}
