package boilwright.report;

import boilwright.answers.Fix;
import boilwright.answers.VacuumAnswer;
import boilwright.answers.VacuumStage;
import boilwright.answers.VacuumWords;
import boilwright.rig.FieldCatalogue;
import boilwright.vacuum.Crossover;
import boilwright.vacuum.PieceCost;
import boilwright.vacuum.SourceShare;
import boilwright.vacuum.VacuumState;
import boilwright.vacuum.VacuumTimeline;
import java.util.OptionalDouble;

/** The gas side for other programs. */
public final class VacuumJson {
    private VacuumJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(VacuumAnswer answer) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.check().rig().name())
                .put("fluid", answer.check().rig().fluidId())
                .put("fluidTitle", answer.check().fluidTitle())
                .put("verdict", answer.verdict())
                .put("gas", answer.gas())
                .put("lookS", answer.lookS());
        VacuumState end = answer.end();
        json.object("gauge").put("pressurePa", end.gaugePa()).put("readingPa", end.readingPa());
        json.object("inlet").put("pressurePa", end.inletPa()).put("speedM3PerS", end.pumpSpeedM3PerS());
        json.object("foreline").put("pressurePa", end.forelinePa());
        json.object("chamber").put("pressurePa", end.chamberPa()).put("speedM3PerS", end.chamberSpeedM3PerS());
        json.put("gasPaM3PerS", end.gasPaM3PerS())
                .put("throughputPaM3PerS", answer.check().steady().throughputPaM3PerS())
                .put("overloaded", end.overloaded())
                .put("backstreamingKgPerM2S", answer.backstreamingKgPerM2S());
        JsonTree.Rows sources = json.rows("sources");
        for (SourceShare share : end.sources()) {
            sources.add()
                    .put("kind", FieldCatalogue.id(share.source().kind()))
                    .put("name", VacuumWords.name(share.source(), end))
                    .put("path", share.source().path())
                    .put("flowPaM3PerS", share.source().flow())
                    .put("lowPaM3PerS", share.source().low())
                    .put("highPaM3PerS", share.source().high())
                    .put("atGaugePa", share.atGaugePa())
                    .put("share", share.share());
        }
        JsonTree.Rows pieces = json.rows("pieces");
        for (PieceCost piece : end.pieces()) {
            pieces.add()
                    .put("name", piece.name())
                    .put("path", piece.path())
                    .put("conductanceM3PerS", piece.conductanceM3PerS())
                    .put("dropPa", piece.dropPa())
                    .put("shareOfLostSpeed", piece.shareOfLostSpeed());
        }
        JsonTree.Rows fixes = json.rows("fixes");
        for (Fix fix : answer.fixes()) {
            fixes.add()
                    .put("id", fix.id())
                    .put("title", fix.title())
                    .put("gaugePa", fix.gaugePa())
                    .put("factor", fix.factor());
        }
        JsonTree.Rows waiting = json.rows("waiting");
        for (Fix fix : answer.waiting()) {
            waiting.add()
                    .put("id", fix.id())
                    .put("title", fix.title())
                    .put("gaugePa", fix.gaugePa())
                    .put("factor", fix.factor());
        }
        JsonTree.Rows stages = json.rows("stages");
        for (VacuumStage stage : answer.stages()) {
            JsonTree row = stages.add()
                    .put("id", stage.step().id())
                    .put("title", stage.step().title())
                    .put("gaugePa", stage.gaugePa());
            stage.meetsTarget().ifPresent(meets -> row.put("meetsTarget", meets));
        }
        crossover(json.object("crossover"), answer);
        timeline(json.object("timeline"), answer.timeline());
        json.put("closureRelative", end.closureRelative())
                .put("gasBalanceRelative", answer.timeline().balanceRelative());
        JsonParts.margins(json, answer.margins());
        JsonParts.ending(
                json,
                answer.cautions(),
                answer.notes(),
                answer.check().parameters(),
                answer.check().programVersion(),
                answer.check().dataVersion());
        return json.text();
    }

    private static void crossover(JsonTree json, VacuumAnswer answer) {
        Crossover crossover = answer.timeline().crossover();
        json.put("advice", answer.crossover())
                .put("aroundPump", crossover.aroundPump())
                .put("roughingFromS", crossover.roughingFromS())
                .put("roughingS", crossover.roughingS())
                .put("timeS", crossover.timeS())
                .put("allowedPa", crossover.allowedPa())
                .put("overloadS", ends(crossover.overloadS()));
    }

    /** Jets that carry nothing are overloaded without an end. */
    private static OptionalDouble ends(double seconds) {
        return Double.isFinite(seconds) ? OptionalDouble.of(seconds) : OptionalDouble.empty();
    }

    private static void timeline(JsonTree json, VacuumTimeline line) {
        JsonTree.Rows rows = json.rows("points");
        for (int i = 0; i < line.timeS().length; i++) {
            rows.add()
                    .put("timeS", line.timeS()[i])
                    .put("chamberPa", line.chamberPa()[i])
                    .put("gaugePa", line.gaugePa()[i])
                    .put("inletPa", line.inletPa()[i])
                    .put("forelinePa", line.forelinePa()[i]);
        }
    }
}
