package boilwright.report;

import boilwright.answers.Margin;
import boilwright.spread.Advice;
import boilwright.spread.EventSpread;
import boilwright.spread.InputShare;
import boilwright.spread.MarginSpread;
import boilwright.spread.SpreadAnswer;
import boilwright.spread.SpreadAnswer.Rejection;
import boilwright.spread.SpreadInput;
import java.util.List;
import java.util.OptionalDouble;

/** An uncertainty run for other programs, laid out like {@link CheckJson}: SI, no clock times, paths or thread counts. Absent values are null. */
public final class SpreadJson {
    private SpreadJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(SpreadAnswer answer) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.rig().name())
                .put("fluid", answer.rig().fluidId())
                .put("fluidTitle", answer.fluidTitle())
                .put("verdict", answer.verdict())
                .put("scope", answer.scope().id())
                .put("seed", answer.seed())
                .put("samplesAskedFor", answer.runs())
                .put("samplesDone", answer.done())
                .put("samplesWithAnswer", answer.accepted());
        JsonParts.chance(json, "chanceOfAnyFailing", answer.failing());
        JsonTree.Rows margins = json.rows("margins");
        answer.margins().forEach(margin -> margin(margins.add(), margin));
        JsonTree.Rows events = json.rows("events");
        answer.events().forEach(event -> event(events.add(), event));
        JsonTree.Rows advice = json.rows("measureFirst");
        for (Advice one : answer.advice()) {
            advice.add()
                    .put("margin", one.marginId().id())
                    .putTextOrNull("input", one.inputId().orElse(""))
                    .put("sentence", one.sentence());
        }
        JsonTree.Rows inputs = json.rows("inputs");
        answer.inputs().forEach(input -> input(inputs.add(), input));
        JsonTree.Rows rejections = json.rows("rejected");
        for (Rejection one : answer.rejections()) {
            rejections
                    .add()
                    .put("reason", one.reason())
                    .put("samples", one.samples())
                    .put("impossible", one.impossible())
                    .put("firstIndex", one.firstIndex())
                    .put("example", one.example());
        }
        json.put("notes", answer.notes())
                .put("programVersion", answer.programVersion())
                .put("dataVersion", answer.dataVersion());
        return json.text();
    }

    private static void margin(JsonTree json, MarginSpread margin) {
        json.put("id", margin.id().id())
                .put("title", margin.title())
                .put("side", margin.side().id())
                .put("unit", margin.dimension().siUnit())
                .put("value", margin.nominal().map(Margin::value).orElse(OptionalDouble.empty()))
                .put("limit", margin.nominal().map(Margin::limit).orElse(OptionalDouble.empty()))
                .put("ratio", margin.nominal().map(Margin::ratio).orElse(OptionalDouble.empty()))
                .putTextOrNull(
                        "status", margin.nominal().map(m -> m.status().id()).orElse(""));
        JsonParts.band(json, "value", margin.band().value());
        JsonParts.band(json, "ratio", margin.band().ratio());
        JsonParts.chance(json, "chanceOfFailing", margin.band().failing());
        json.put("samplesKnown", margin.band().failing().samples());
        shares(json, margin.shares(), margin.noise());
    }

    private static void event(JsonTree json, EventSpread event) {
        json.put("id", event.key().kind().id())
                .putTextOrNull("stage", event.key().stage())
                .putTextOrNull("limit", event.key().what())
                .put("occurrence", event.key().occurrence())
                .put("timeS", event.nominalS());
        JsonParts.band(json, "timeS", event.band().timeS());
        JsonParts.chance(json, "chanceOfNever", event.band().never());
        json.put("samplesNever", event.band().never().cases());
        shares(json, event.shares(), event.noise());
    }

    private static void shares(JsonTree json, List<InputShare> shares, double noise) {
        JsonTree.Rows rows = json.rows("shares");
        shares.forEach(share -> rows.add().put("input", share.inputId()).put("share", share.share()));
        json.put("shareNoise", shares.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(noise));
    }

    private static void input(JsonTree json, SpreadInput input) {
        json.put("id", input.id())
                .put("title", input.title())
                .put("shape", input.shape().id())
                .put("nominal", input.nominal())
                .put("low", input.low())
                .put("high", input.high())
                .put("unit", input.dimension().siUnit())
                .put("source", input.source())
                .put("fields", input.fields());
    }
}
