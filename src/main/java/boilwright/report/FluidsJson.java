package boilwright.report;

import boilwright.choice.FluidRow;
import boilwright.choice.FluidsAnswer;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import boilwright.fluid.PropertyLine;
import boilwright.rig.ParameterValues;
import boilwright.thermal.NeededState;
import java.util.List;

/** The working fluids for other programs, with everything that is recorded of each. */
public final class FluidsJson {
    private FluidsJson() {}

    /**
     * The whole object as text.
     *
     * @param ids which fluids, in the order in which they are written
     */
    public static String write(FluidLibrary library, List<String> ids) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT).put("dataVersion", library.dataVersion());
        JsonTree.Rows rows = json.rows("fluids");
        for (String id : ids) {
            fluid(rows.add(), library.find(id), library.entries(id));
        }
        return json.text();
    }

    private static void fluid(JsonTree json, FluidRecord fluid, List<PropertyLine.Words> entries) {
        double pressure = fluid.usualBoilerPressure();
        json.put("id", fluid.id())
                .put("title", fluid.title())
                .put("validationOnly", fluid.isValidationOnly())
                .put("molarMassKgPerMol", fluid.molarMass())
                .put("usualBoilerPressurePa", pressure)
                .put("boilsAtUsualPressureK", fluid.saturationTemperature(pressure))
                .put("bulkLimitK", fluid.bulkLimit())
                .put("filmLimitK", fluid.filmLimit())
                .put("airAdmissionLimitK", fluid.airAdmissionLimit())
                .put("resistsOxidation", fluid.resistsOxidation())
                .put("toxicVapour", fluid.isToxicVapour());
        JsonTree.Rows properties = json.rows("properties");
        for (PropertyLine.Words entry : entries) {
            properties
                    .add()
                    .put("title", entry.title())
                    .put("value", entry.valueText())
                    .putTextOrNull("unit", entry.unit())
                    .putTextOrNull("range", entry.range())
                    .putTextOrNull("uncertainty", entry.uncertainty())
                    .putTextOrNull("source", entry.source())
                    .put("fromMemory", entry.fromMemory());
        }
    }

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
