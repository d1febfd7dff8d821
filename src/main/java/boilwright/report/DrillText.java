package boilwright.report;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Say;
import boilwright.drill.DrillAnswer;
import boilwright.drill.DrillSet;
import boilwright.drill.Interlock;
import boilwright.thermal.DrillRun;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Drills as a page of text. */
public final class DrillText {
    private DrillText() {}

    /** One drill: verdict, what to do, the ways to act side by side, what happens when, what would catch it, cautions. */
    public static String one(DrillSet set) {
        DrillAnswer answer = set.played().get(0);
        Page page = opening(set, answer.verdict());
        advice(page, answer);
        page.heading("Time after the failure, h:mm:ss");
        List<DrillRun> runs = runs(answer);
        List<List<String>> rows = new ArrayList<>();
        rows.add(head(answer));
        for (int i = 0; i < answer.heatOn().limits().size(); i++) {
            List<String> row = new ArrayList<>();
            row.add(DrillAnswer.title(answer.heatOn().limits().get(i).limit()));
            for (DrillRun run : runs) {
                row.add(
                        run.limits().get(i).before()
                                ? "before it"
                                : clock(run.limits().get(i).passedS()));
            }
            rows.add(row);
        }
        rows.add(row("first jet goes out", runs, DrillRun::firstJetLostS));
        rows.add(row("all jets are out", runs, DrillRun::jetsGoneS));
        page.table(rows);
        Sections.timeLine(
                page,
                answer.heatEnds() ? "What happens" : "With the heat left on",
                answer.heatOn().run().events());
        if (!answer.heatEnds()) {
            Sections.timeLine(
                    page, "With the heat cut at once", answer.cutAtOnce().run().events());
        }
        interlocks(page, set);
        Sections.balance(
                page,
                answer.heatEnds() ? "Energy of the run" : "Energy of the run with the heat left on",
                answer.heatOn().run().balance());
        ending(page, set);
        return page.toString();
    }

    /** Every drill in one table, what to do in each, the interlocks. */
    public static String all(DrillSet set) {
        Page page = opening(set, set.verdict());
        page.heading("Faults, time after the failure, h:mm:ss");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "first harm", "", "first jet out", "cut by itself", "cut within"));
        for (DrillAnswer answer : set.played()) {
            rows.add(List.of(
                    DrillAnswer.title(answer.fault()),
                    clock(firstHarm(answer.heatOn())),
                    harm(answer.heatOn()),
                    clock(answer.heatOn().firstJetLostS()),
                    answer.heatEnds() ? "ends" : clock(cut(answer)),
                    answer.heatEnds() ? "-" : within(answer)));
        }
        page.table(rows);
        page.paragraph(
                "",
                0,
                "First harm and first jet with the heat left on; \"cut within\" is the longest that a trip may take.");
        for (DrillAnswer answer : set.played()) {
            page.heading(DrillAnswer.title(answer.fault()));
            page.paragraph("", 0, answer.verdict());
            advice(page, answer);
        }
        if (!set.notPlayed().isEmpty()) {
            page.heading("Not played");
            set.notPlayed().forEach(n -> page.paragraph("  - ", 4, DrillAnswer.title(n.fault()) + ": " + n.reason()));
        }
        interlocks(page, set);
        ending(page, set);
        return page.toString();
    }

    private static Page opening(DrillSet set, String verdict) {
        Page page = new Page();
        Sections.opening(page, set.check().rig().name(), set.check().fluidTitle(), verdict);
        return page;
    }

    private static void ending(Page page, DrillSet set) {
        CheckAnswer check = set.check();
        Sections.assumptions(page, set.notes());
        Sections.cautions(page, set.cautions());
        Sections.versions(page, check.programVersion(), check.dataVersion());
    }

    private static void advice(Page page, DrillAnswer answer) {
        answer.acts().forEach(s -> page.paragraph("  - ", 4, s));
        answer.thereIsSentence().ifPresent(s -> page.paragraph("  - ", 4, s));
        answer.batterySentence().ifPresent(s -> page.paragraph("  - ", 4, s));
        int step = 1;
        for (String first : answer.first()) {
            page.paragraph("  " + step++ + ". ", 5, first);
        }
    }

    private static void interlocks(Page page, DrillSet set) {
        if (set.interlocks().isEmpty()) {
            return;
        }
        page.heading("Interlocks");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "usual", "trip at", "resets after", "within", ""));
        for (Interlock lock : set.interlocks()) {
            Dimension dimension = lock.dimension();
            rows.add(List.of(
                    lock.title(),
                    Sections.quantity(lock.usual(), dimension),
                    lock.setPoint().isPresent()
                            ? Sections.quantity(lock.setPoint().getAsDouble(), dimension)
                            : "-",
                    Sections.quantity(lock.hysteresis(), lock.differenceDimension()),
                    lock.longestDelayS().isPresent()
                            ? Say.time(lock.longestDelayS().getAsDouble())
                            : "-",
                    lock.standing().id().replace('-', ' ')));
        }
        page.table(rows);
        set.interlocks().forEach(lock -> page.paragraph("  - ", 4, lock.title() + ": " + lock.sentence()));
    }

    private static List<String> head(DrillAnswer answer) {
        List<String> row = new ArrayList<>();
        row.add("");
        if (answer.heatEnds()) {
            row.add("heat ends with it");
            return row;
        }
        row.add("heat left on");
        row.add("cut after "
                + Sections.quantity(answer.cutLate().heatCutAfterS().orElseThrow(), Dimension.TIME));
        row.add("cut at once");
        answer.byItself().ifPresent(run -> row.add("cut by its trip"));
        return row;
    }

    /** The runs in the order of the table's columns. */
    private static List<DrillRun> runs(DrillAnswer answer) {
        List<DrillRun> list = new ArrayList<>();
        list.add(answer.heatOn());
        if (!answer.heatEnds()) {
            list.add(answer.cutLate());
            list.add(answer.cutAtOnce());
            answer.byItself().ifPresent(list::add);
        }
        return list;
    }

    private static OptionalDouble firstHarm(DrillRun run) {
        return DrillAnswer.firstHarm(run).map(l -> l.passedS()).orElse(OptionalDouble.empty());
    }

    private static String harm(DrillRun run) {
        return DrillAnswer.firstHarm(run).map(l -> DrillAnswer.title(l.limit())).orElse("");
    }

    private static OptionalDouble cut(DrillAnswer answer) {
        return answer.byItself().map(DrillRun::heatCutAfterS).orElse(OptionalDouble.empty());
    }

    private static String within(DrillAnswer answer) {
        if (answer.longestTripDelayS().isPresent()) {
            return clock(answer.longestTripDelayS());
        }
        return answer.notKept().isEmpty() ? "any time" : "no cut helps";
    }

    /** One reading of a run. */
    private interface Reading {
        OptionalDouble of(DrillRun run);
    }

    private static List<String> row(String title, List<DrillRun> runs, Reading reading) {
        List<String> row = new ArrayList<>();
        row.add(title);
        runs.forEach(run -> row.add(clock(reading.of(run))));
        return row;
    }

    private static String clock(OptionalDouble time) {
        return time.isPresent() ? EventWords.clock(time.getAsDouble()) : "never";
    }

    /** The table with its head line. */
    public static String csv(DrillSet set) {
        CsvTable table = new CsvTable(List.of(
                "fault", "firstHarmS", "firstJetLostS", "jetsGoneS", "cutByItselfS", "longestTripDelayS", "harmed"));
        for (DrillAnswer answer : set.played()) {
            table.row(
                    answer.fault().id(),
                    DrillAnswer.firstHarm(answer.heatOn()).map(l -> l.passedS()).orElse(OptionalDouble.empty()),
                    answer.heatOn().firstJetLostS(),
                    answer.heatOn().jetsGoneS(),
                    answer.byItself().map(DrillRun::heatCutAfterS).orElse(OptionalDouble.empty()),
                    answer.longestTripDelayS(),
                    answer.harms());
        }
        return table.text();
    }
}
