package boilwright.report;

import boilwright.answers.DrillAnswer;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import java.util.Locale;

/** A drill for other programs. A limit that is not passed has no time. */
public final class DrillJson {
    private DrillJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(DrillAnswer answer) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.rig().name())
                .put("fluid", answer.rig().fluidId())
                .put("fluidTitle", answer.fluidTitle())
                .put("verdict", answer.verdict())
                .put("fault", answer.fault())
                .put("faultAtS", answer.atS())
                .put("longestTripDelayS", answer.longestTripDelayS())
                .putTextOrNull(
                        "governingLimit", answer.governing().map(DrillJson::id).orElse(""))
                .put("notKept", answer.notKept().stream().map(DrillJson::id).toList());
        JsonTree.Rows cases = json.rows("cases");
        run(cases.add().put("id", "heat-left-on"), answer.heatOn());
        run(cases.add().put("id", "cut-late"), answer.cutLate());
        run(cases.add().put("id", "cut-at-once"), answer.cutAtOnce());
        JsonParts.ending(
                json,
                answer.cautions(),
                answer.notes(),
                answer.parameters(),
                answer.programVersion(),
                answer.dataVersion());
        return json.text();
    }

    private static void run(JsonTree json, DrillRun run) {
        json.put("heatCutAfterS", run.heatCutAfterS())
                .put("firstJetLostS", run.firstJetLostS())
                .put("jetsGoneS", run.jetsGoneS())
                .put("watchedS", run.watchedS())
                .put("brokenOff", run.brokenOff());
        JsonTree.Rows limits = json.rows("limits");
        run.limits()
                .forEach(l -> limits.add()
                        .put("id", id(l.limit()))
                        .put("value", l.value())
                        .put("passedS", l.passedS()));
        JsonParts.run(json, run.run());
        JsonParts.events(json, run.run().events());
    }

    private static String id(DrillLimit limit) {
        return limit.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
