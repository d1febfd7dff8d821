package boilwright.report;

import boilwright.answers.RunAnswer;
import boilwright.spread.Bands;

/** A warm-up or cool-down as a page of text for the person at the pump. */
public final class RunText {
    private RunText() {}

    /** The whole page: verdict, time line, margins met on the way, energy, assumptions, cautions. */
    public static String write(RunAnswer answer) {
        return write(answer, Bands.NONE);
    }

    /** With how far margins and events spread. */
    public static String write(RunAnswer answer, Bands bands) {
        Page page = new Page();
        Sections.opening(page, answer.rig().name(), answer.fluidTitle(), answer.verdict());
        boolean warmup = answer.run().kind().equals("warmup");
        Sections.timeLine(
                page,
                warmup
                        ? "Warm-up from cold, h:mm:ss after the foreline is pumped down"
                        : "Cool-down, h:mm:ss after heat off",
                answer.run().events(),
                bands);
        Sections.margins(page, answer.margins(), bands);
        Sections.balance(page, "Energy of the run", answer.run().balance());
        Sections.assumptions(page, answer.notes(), answer.run().assumptions());
        Sections.cautions(page, answer.cautions());
        Sections.versions(page, answer.programVersion(), answer.dataVersion());
        return page.toString();
    }
}
