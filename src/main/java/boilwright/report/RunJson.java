package boilwright.report;

import boilwright.answers.RunAnswer;
import boilwright.spread.Bands;

/** A warm-up or cool-down for other programs, laid out like {@link CheckJson}; the time line itself goes to CSV. */
public final class RunJson {
    private RunJson() {}

    /** The whole object as text, the same for the same answer. */
    public static String write(RunAnswer answer) {
        return write(answer, Bands.NONE);
    }

    /** With how far margins and events spread. */
    public static String write(RunAnswer answer, Bands bands) {
        JsonTree json = new JsonTree();
        json.put("format", JsonParts.FORMAT)
                .put("rig", answer.rig().name())
                .put("fluid", answer.rig().fluidId())
                .put("fluidTitle", answer.fluidTitle())
                .put("verdict", answer.verdict());
        JsonParts.run(json, answer.run());
        JsonParts.events(json, answer.run().events(), bands);
        JsonParts.margins(json, answer.margins(), bands);
        JsonParts.ending(
                json,
                answer.cautions(),
                answer.notes(),
                answer.parameters(),
                answer.programVersion(),
                answer.dataVersion());
        if (!bands.isEmpty()) {
            json.put("spreadSamples", bands.samples());
        }
        return json.text();
    }
}
