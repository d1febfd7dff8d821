package boilwright.report;

import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanLimit;
import boilwright.sequence.PlanStep;
import boilwright.sequence.RuleFinding;

/** A plan for other programs, and for editing: what {@link boilwright.sequence.PlanFile} reads. */
public final class PlanJson {
    private PlanJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(PlanAnswer answer) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.check().rig().name())
                .put("fluid", answer.check().rig().fluidId())
                .put("fluidTitle", answer.check().fluidTitle())
                .put("variant", answer.variant().id())
                .put("edited", answer.edited())
                .put("safe", answer.safe())
                .put("verdict", answer.verdict());
        JsonTree.Rows steps = json.rows("steps");
        answer.plan().map(Plan::steps).ifPresent(list -> list.forEach(step -> step(steps.add(), step)));
        JsonTree.Rows before = json.rows("stepsUpToBreak");
        answer.upToBreak().forEach(step -> step(before.add(), step));
        JsonTree.Rows rules = json.rows("rules");
        for (RuleFinding finding : answer.findings()) {
            rules.add()
                    .put("id", finding.rule().id())
                    .put("rule", finding.rule().sentence())
                    .put("basis", finding.rule().basis())
                    .put("status", finding.status().id())
                    .putTextOrNull(
                            "clock", finding.moment().map(m -> m.clock().id()).orElse(""))
                    .put(
                            "atS",
                            finding.moment()
                                    .map(m -> java.util.OptionalDouble.of(m.atS()))
                                    .orElse(java.util.OptionalDouble.empty()))
                    .putTextOrNull("value", finding.value())
                    .putTextOrNull("limit", finding.limit())
                    .put("finding", finding.sentence());
        }
        JsonTree.Rows limits = json.rows("limits");
        for (PlanLimit limit : answer.limits()) {
            limits.add()
                    .put("id", limit.id())
                    .put("title", limit.title())
                    .put("value", limit.value())
                    .put("unit", limit.dimension().siUnit());
        }
        json.put("emergency", answer.emergency()).put("unproven", answer.unproven());
        JsonParts.ending(
                json,
                answer.cautions(),
                answer.notes(),
                answer.check().parameters(),
                answer.check().programVersion(),
                answer.check().dataVersion());
        return json.text();
    }

    private static void step(JsonTree row, PlanStep step) {
        row.put("do", step.action().id())
                .put("clock", step.moment().clock().id())
                .put("atS", step.moment().atS());
        if (step.level().fraction() > 0) {
            if (step.level().holdOilK().isPresent()) {
                row.put("holdOilK", step.level().holdOilK());
            } else {
                row.put("powerFraction", step.level().fraction());
            }
        }
        row.put("overdueAtS", step.latestS())
                .putTextOrNull("what", step.words().what())
                .putTextOrNull("hold", step.words().hold())
                .putTextOrNull("otherwise", step.words().otherwise())
                .putTextOrNull("why", step.words().why())
                .putTextOrNull("caution", step.words().caution());
    }
}
