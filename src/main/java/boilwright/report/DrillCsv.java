package boilwright.report;

import boilwright.drill.DrillAnswer;
import boilwright.drill.DrillSet;
import boilwright.thermal.DrillRun;
import java.util.List;
import java.util.OptionalDouble;

/** Drills as a table, one row a fault; times in s after the failure, with the heat left on where it does not end by itself. */
public final class DrillCsv {
    private DrillCsv() {}

    /** The table with its head line. */
    public static String write(DrillSet set) {
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
