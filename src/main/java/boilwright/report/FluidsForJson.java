package boilwright.report;

import boilwright.choice.FluidRow;
import boilwright.choice.FluidsAnswer;
import boilwright.rig.ParameterValues;
import boilwright.thermal.NeededState;

/** The same rig with each fluid for other programs. */
public final class FluidsForJson {
    private FluidsForJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(FluidsAnswer answer) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.rig().name())
                .put("fluid", answer.rig().fluidId())
                .put("chargeM3", answer.rig().chargeM3());
        JsonTree.Rows rows = json.rows("fluids");
        for (FluidRow row : answer.rows()) {
            NeededState needed = row.check().needed();
            JsonTree one = rows.add()
                    .put("id", row.id())
                    .put("title", row.title())
                    .put("verdict", row.verdict())
                    .put("liquidTemperatureK", needed.state().liquidTemperatureK())
                    .put("boilerPressurePa", needed.state().boilerPressurePa())
                    .put("heatNeededW", needed.heatNeededW())
                    .put("heatAvailableW", needed.heatAvailableW())
                    .put("heatRatio", row.ratio())
                    .put("fullAfterS", row.fullAfterS())
                    .put("roomVapourPressurePa", row.roomPressurePa())
                    .put("leastChargeM3", row.leastChargeM3())
                    .put("closureRelative", row.check().steady().closureRelative());
            JsonParts.margins(one, row.check().margins());
        }
        JsonTree.Rows unfit = json.rows("notWorkedOut");
        answer.unfit()
                .forEach(u ->
                        unfit.add().put("id", u.id()).put("title", u.title()).put("reason", u.reason()));
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
