package boilwright.report;

import boilwright.answers.CheckAnswer;
import boilwright.drill.DrillAnswer;
import boilwright.drill.DrillSet;
import boilwright.drill.Interlock;
import boilwright.errors.Sentences;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.Fault;
import java.util.OptionalDouble;

/** Drills for other programs. A limit that is not passed has no time. */
public final class DrillJson {
    private DrillJson() {}

    /** One drill as an object, the same for the same answer. */
    public static String one(DrillSet set) {
        JsonTree json = opening(set);
        drill(json, set.played().get(0), true);
        interlocks(json, set);
        return ending(json, set);
    }

    /** Every drill in one object, without the runs' time lines. */
    public static String all(DrillSet set) {
        JsonTree json = opening(set).put("verdict", set.verdict());
        JsonTree.Rows drills = json.rows("drills");
        set.played().forEach(d -> drill(drills.add(), d, false));
        JsonTree.Rows others = json.rows("notPlayed");
        set.notPlayed().forEach(n -> others.add().put("fault", n.fault().id()).put("reason", n.reason()));
        interlocks(json, set);
        return ending(json, set);
    }

    private static JsonTree opening(DrillSet set) {
        CheckAnswer check = set.check();
        return new JsonTree()
                .put("format", JsonParts.FORMAT)
                .put("rig", check.rig().name())
                .put("fluid", check.rig().fluidId())
                .put("fluidTitle", check.fluidTitle());
    }

    private static String ending(JsonTree json, DrillSet set) {
        CheckAnswer check = set.check();
        JsonParts.ending(
                json, set.cautions(), set.notes(), check.parameters(), check.programVersion(), check.dataVersion());
        return json.text();
    }

    private static void drill(JsonTree json, DrillAnswer answer, boolean whole) {
        json.put("verdict", answer.verdict())
                .put("fault", answer.fault().id())
                .put("faultAtS", answer.atS())
                .put("heatEnds", answer.heatEnds())
                .put("longestTripDelayS", answer.longestTripDelayS())
                .putTextOrNull(
                        "governingLimit", answer.governing().map(DrillJson::id).orElse(""))
                .put("notKept", answer.notKept().stream().map(DrillJson::id).toList())
                .put("harmed", answer.harms())
                .put("thereIsS", answer.thereIsS())
                .put(
                        "cutByItselfS",
                        answer.byItself().map(DrillRun::heatCutAfterS).orElse(OptionalDouble.empty()))
                .put("batteryNeededS", answer.battery())
                .put("actsByItself", answer.acts())
                .put("doFirst", answer.first());
        JsonTree.Rows cases = json.rows("cases");
        run(cases.add().put("id", answer.heatEnds() ? "heat-ends" : "heat-left-on"), answer.heatOn(), whole);
        if (!answer.heatEnds()) {
            run(cases.add().put("id", "cut-late"), answer.cutLate(), whole);
            run(cases.add().put("id", "cut-at-once"), answer.cutAtOnce(), whole);
            answer.byItself().ifPresent(run -> run(cases.add().put("id", "cut-by-itself"), run, whole));
        }
    }

    private static void run(JsonTree json, DrillRun run, boolean whole) {
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
                        .put("passedS", l.passedS())
                        .put("passedBefore", l.before()));
        if (whole) {
            JsonParts.run(json, run.run());
        }
        JsonParts.events(json, run.run().events());
    }

    private static void interlocks(JsonTree json, DrillSet set) {
        JsonTree.Rows rows = json.rows("interlocks");
        for (Interlock lock : set.interlocks()) {
            rows.add()
                    .put("watches", Sentences.bundleKey(lock.kind()))
                    .put("unit", lock.dimension().siUnit())
                    .put("usual", lock.usual())
                    .put("limit", lock.limit())
                    .put("setPoint", lock.setPoint())
                    .put("hysteresis", lock.hysteresis())
                    .put("longestDelayS", lock.longestDelayS())
                    .put("catches", lock.catches().stream().map(Fault::id).toList())
                    .put("warnsOf", lock.warns().stream().map(Fault::id).toList())
                    .put("standing", lock.standing().id())
                    .put("sentence", lock.sentence());
        }
    }

    private static String id(DrillLimit limit) {
        return Sentences.bundleKey(limit);
    }
}
