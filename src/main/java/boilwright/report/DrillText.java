package boilwright.report;

import boilwright.answers.DrillAnswer;
import boilwright.thermal.DrillRun;
import boilwright.thermal.DrillRun.LimitTime;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A drill as a page of text. */
public final class DrillText {
    private DrillText() {}

    /** The whole page: verdict, the three ways to act side by side, what happens when, cautions. */
    public static String write(DrillAnswer answer) {
        Page page = new Page();
        Sections.opening(page, answer.rig().name(), answer.fluidTitle(), answer.verdict());
        page.heading("Time after the water stops, h:mm:ss");
        List<List<String>> rows = new ArrayList<>();
        String late = Sections.quantity(answer.cutLate().heatCutAfterS().orElseThrow(), Dimension.TIME);
        rows.add(List.of("", "heat left on", "cut after " + late, "cut at once"));
        for (int i = 0; i < answer.heatOn().limits().size(); i++) {
            rows.add(List.of(
                    DrillAnswer.title(answer.heatOn().limits().get(i).limit()),
                    clock(answer.heatOn(), i),
                    clock(answer.cutLate(), i),
                    clock(answer.cutAtOnce(), i)));
        }
        rows.add(row("first jet goes out", answer, DrillRun::firstJetLostS));
        rows.add(row("all jets are out", answer, DrillRun::jetsGoneS));
        page.table(rows);
        Sections.timeLine(page, "With the heat left on", answer.heatOn().run().events());
        Sections.timeLine(
                page, "With the heat cut at once", answer.cutAtOnce().run().events());
        Sections.balance(
                page,
                "Energy of the run with the heat left on",
                answer.heatOn().run().balance());
        Sections.assumptions(page, answer.notes());
        Sections.cautions(page, answer.cautions());
        Sections.versions(page, answer.programVersion(), answer.dataVersion());
        return page.toString();
    }

    /** One reading of a run. */
    private interface Reading {
        OptionalDouble of(DrillRun run);
    }

    private static List<String> row(String title, DrillAnswer answer, Reading reading) {
        return List.of(
                title,
                clock(reading.of(answer.heatOn())),
                clock(reading.of(answer.cutLate())),
                clock(reading.of(answer.cutAtOnce())));
    }

    private static String clock(DrillRun run, int i) {
        LimitTime limit = run.limits().get(i);
        return clock(limit.passedS());
    }

    private static String clock(OptionalDouble time) {
        return time.isPresent() ? EventWords.clock(time.getAsDouble()) : "never";
    }
}
