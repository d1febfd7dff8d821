package boilwright.report;

import boilwright.answers.Margin;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.spread.Band;
import boilwright.spread.Bands;
import boilwright.spread.Chance;
import boilwright.spread.EventKey;
import boilwright.thermal.EnergyBalance;
import boilwright.thermal.RunResult;
import boilwright.thermal.TimeEvent;
import java.util.List;
import java.util.OptionalDouble;

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
        events(json, events, Bands.NONE);
    }

    /** With the band of each time, where there is one. */
    static void events(JsonTree json, List<TimeEvent> events, Bands bands) {
        JsonTree.Rows rows = json.rows("events");
        List<EventKey> keys = EventKey.of(events);
        for (int i = 0; i < events.size(); i++) {
            TimeEvent event = events.get(i);
            JsonTree row = rows.add()
                    .put("id", event.kind().id())
                    .putTextOrNull("stage", event.stage())
                    .put("timeS", event.timeS())
                    .put("reason", event.reason());
            bands.event(keys.get(i)).ifPresent(band -> {
                band(row, "timeS", band.timeS());
                chance(row, "chanceOfNever", band.never());
            });
        }
    }

    /** Low, median and high of a value under keys that begin with its own and say which. */
    static void band(JsonTree json, String key, Band band) {
        json.put(key + "Low", band.low()).put(key + "Median", band.median()).put(key + "High", band.high());
    }

    /** A share of samples with its error; null where it could not be told in any. */
    static void chance(JsonTree json, String key, Chance chance) {
        boolean known = chance.isKnown();
        json.put(key, known ? OptionalDouble.of(chance.share()) : OptionalDouble.empty())
                .put(key + "Low", known ? OptionalDouble.of(chance.low()) : OptionalDouble.empty())
                .put(key + "High", known ? OptionalDouble.of(chance.high()) : OptionalDouble.empty());
    }

    static void margins(JsonTree json, List<Margin> margins) {
        margins(json, margins, Bands.NONE);
    }

    /** With the band of each, where there is one. */
    static void margins(JsonTree json, List<Margin> margins, Bands bands) {
        JsonTree.Rows rows = json.rows("margins");
        for (Margin margin : margins) {
            JsonTree row = rows.add()
                    .put("id", margin.id().id())
                    .put("title", margin.title())
                    .put("side", margin.side().id())
                    .put("value", margin.value())
                    .put("limit", margin.limit())
                    .put("unit", margin.dimension().siUnit())
                    .put("ratio", margin.ratio())
                    .put("status", margin.status().id())
                    .put("tightBelow", margin.tightBelow())
                    .put("part", margin.id().part().id())
                    .put("moment", margin.moment().id())
                    .put("atS", margin.atS())
                    .put("basis", margin.basis())
                    .putTextOrNull("cure", margin.cure());
            bands.margin(margin.id()).ifPresent(band -> {
                band(row, "value", band.value());
                band(row, "ratio", band.ratio());
                chance(row, "chanceOfFailing", band.failing());
                row.put("nominalInBand", Sections.holds(band.value(), margin.value()));
            });
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
