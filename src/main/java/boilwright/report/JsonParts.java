package boilwright.report;

import boilwright.answers.Margin;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.thermal.EnergyBalance;
import boilwright.thermal.RunResult;
import boilwright.thermal.TimeEvent;
import java.util.List;

/** The parts that the JSON of every answer has in common. Keys are only ever added, never renamed or removed. */
final class JsonParts {
    /** Version of the layout; changes only if a key would have to change its meaning. */
    static final int FORMAT = 1;

    private JsonParts() {}

    static void run(JsonTree json, RunResult run) {
        EnergyBalance balance = run.balance();
        json.object("run")
                .put("kind", run.kind())
                .put("heatInJ", balance.inJ())
                .put("heatToWaterJ", balance.toWaterJ())
                .put("heatToAirJ", balance.toAirJ())
                .put("heatToForelineJ", balance.toForelineJ())
                .put("heatStoredJ", balance.storedJ())
                .put("closureRelative", balance.closureRelative())
                .put("supplyClosureRelative", run.supplyClosureRelative())
                .put("assumptions", run.assumptions());
    }

    static void events(JsonTree json, List<TimeEvent> events) {
        JsonTree.Rows rows = json.rows("events");
        for (TimeEvent event : events) {
            rows.add()
                    .put("id", event.id())
                    .putTextOrNull("stage", event.stage())
                    .put("timeS", event.timeS())
                    .put("reason", event.reason());
        }
    }

    static void margins(JsonTree json, List<Margin> margins) {
        JsonTree.Rows rows = json.rows("margins");
        for (Margin margin : margins) {
            rows.add()
                    .put("id", margin.id())
                    .put("title", margin.title())
                    .put("side", margin.side().id())
                    .put("value", margin.value())
                    .put("limit", margin.limit())
                    .put("unit", margin.dimension().siUnit())
                    .put("ratio", margin.ratio())
                    .put("status", margin.status().id())
                    .put("basis", margin.basis())
                    .putTextOrNull("cure", margin.cure());
        }
    }

    static void ending(
            JsonTree json,
            List<String> cautions,
            List<String> notes,
            ParameterValues values,
            String program,
            String data) {
        json.put("cautions", cautions).put("notes", notes);
        JsonTree parameters = json.object("parameters");
        for (Parameter parameter : Parameter.values()) {
            parameters.put(parameter.id(), values.get(parameter));
        }
        json.put("programVersion", program).put("dataVersion", data);
    }
}
