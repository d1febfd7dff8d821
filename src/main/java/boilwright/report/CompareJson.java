package boilwright.report;

import boilwright.choice.CompareAnswer;
import boilwright.choice.GasUse;
import boilwright.choice.SourceRow;
import boilwright.rig.ParameterValues;
import boilwright.thermal.NeededState;
import boilwright.thermal.SteadyState;
import java.util.HashSet;
import java.util.Set;

/** Heat sources side by side for other programs. */
public final class CompareJson {
    private CompareJson() {}

    /** The whole object as text, the same for the same answer and any number of threads. */
    public static String write(CompareAnswer answer, HeatSpread spread) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.rig().name())
                .put("fluid", answer.rig().fluidId())
                .put("fluidTitle", answer.fluidTitle())
                .put("verdict", answer.verdict())
                .put("pumpingS", answer.pumpingS())
                .put("wantedRatio", answer.wanted())
                .putTextOrNull("recommendedId", answer.recommendedId().orElse(""));
        JsonTree.Rows rows = json.rows("sources");
        answer.rows().forEach(row -> row(rows.add(), row, spread));
        JsonTree.Rows needs = json.rows("needs");
        Set<SourceRow.Way> written = new HashSet<>();
        for (SourceRow row : answer.rows()) {
            if (written.add(row.way())) {
                JsonTree need = needs.add().put("way", row.way().id());
                ChoiceJson.points(need.rows("points"), row.curves().need());
            }
        }
        JsonTree.Rows unfit = json.rows("notCompared");
        for (CompareAnswer.Unfit one : answer.unfit()) {
            unfit.add().put("id", one.id()).put("title", one.title()).put("reason", one.reason());
        }
        answer.carbonMonoxide()
                .ifPresent(room -> json.object("carbonMonoxide")
                        .put("roomM3", room.roomM3())
                        .put("airChangesPerH", room.airChangesPerH())
                        .put("burningS", room.hours() * 3600)
                        .put("lowPpm", room.lowPpm())
                        .put("highPpm", room.highPpm())
                        .put("lowSteadyPpm", room.lowSteadyPpm())
                        .put("highSteadyPpm", room.highSteadyPpm())
                        .put("airChangesForOneHourPerH", room.airChangesForOneHour())
                        .put("sentences", GasWords.carbonMonoxide(room)));
        JsonParts.ending(
                json,
                answer.cautions(),
                answer.notes(),
                ParameterValues.of(answer.rig()),
                answer.programVersion(),
                answer.dataVersion());
        return json.text();
    }

    private static void row(JsonTree json, SourceRow row, HeatSpread spread) {
        NeededState needed = row.check().needed();
        SteadyState steady = row.check().steady();
        json.put("id", row.id())
                .put("title", row.title())
                .put("kind", row.rig().heatSource().kind().id())
                .put("way", row.way().id())
                .put("state", row.state().id())
                .put("verdict", row.verdict())
                .putTextOrNull("condition", row.condition())
                .put("ratedPowerW", row.rig().heatSource().ratedPowerW())
                .put("heatAvailableW", needed.heatAvailableW())
                .put("heatNeededW", needed.heatNeededW())
                .put("heatRatio", row.ratio())
                .put("heatDeliveredW", steady.heatDeliveredW())
                .put("jetsLit", row.jetsLit())
                .put("jetsFull", row.jetsFull())
                .put("fullAfterS", row.fullAfterS())
                .put("oilRatio", row.oilRatio())
                .put("glassRatio", row.glassRatio())
                .putTextOrNull("limit", row.limiter().map(l -> l.kind().id()).orElse(""))
                .putTextOrNull("limitReason", row.limiter().map(l -> l.reason()).orElse(""))
                .putTextOrNull("limitCure", row.limiter().map(l -> l.cure()).orElse(""))
                .putTextOrNull("passed", row.broken())
                .put("closureRelative", steady.closureRelative());
        spread.put(json, row.id());
        row.held().ifPresent(h -> json.object("held").put("share", h.share()).put("sourceInputW", h.inputW()));
        row.session()
                .ifPresent(s -> json.object("session")
                        .put("warmUpJ", s.warmUpJ())
                        .put("pumpingJ", s.pumpingJ())
                        .put("totalJ", s.totalJ()));
        row.gas().ifPresent(gas -> gas(json.object("gas"), gas));
        JsonParts.margins(json, row.check().margins());
        ChoiceJson.source(json.object("curves"), row.curves());
    }

    private static void gas(JsonTree json, GasUse gas) {
        json.put("fuelKg", gas.fuelKg())
                .put("cartridgeKg", gas.cartridgeKg())
                .put("cartridges", gas.cartridges())
                .put("leastFuelW", gas.leastFuelW())
                .put("chillsAfterS", gas.chillsAfterS())
                .put("chilledK", gas.chilledK())
                .put("coldestK", gas.coldestK())
                .put("emptyAfterS", gas.emptyAfterS());
    }
}
