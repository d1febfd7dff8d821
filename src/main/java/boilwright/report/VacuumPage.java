package boilwright.report;

import boilwright.answers.Fix;
import boilwright.answers.VacuumAnswer;
import boilwright.answers.VacuumStage;
import boilwright.answers.VacuumWords;
import boilwright.spread.Bands;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.vacuum.PieceCost;
import boilwright.vacuum.SourceShare;
import boilwright.vacuum.VacuumState;
import boilwright.vacuum.VacuumTimeline;
import java.util.ArrayList;
import java.util.List;

/** The gas side as a page of text. */
public final class VacuumPage {
    /** A square centimetre and minute, for oil. */
    private static final double MG_PER_CM2_MIN = 1e6 / 1e4 * 60;

    private static final int BRIEF_FIXES = 3;

    private final VacuumAnswer answer;
    private final Page page = new Page();

    private VacuumPage(VacuumAnswer answer) {
        this.answer = answer;
    }

    /** The whole page: verdict, pressures, sources, pieces, fixes, crossover, margins, cautions. */
    public static String write(VacuumAnswer answer) {
        return new VacuumPage(answer).text();
    }

    /** What counts: verdict, stages, the best changes, failing and tight margins, cautions. */
    public static String brief(VacuumAnswer answer) {
        return new VacuumPage(answer).briefText();
    }

    private String briefText() {
        Sections.opening(page, answer.check().rig().name(), answer.check().fluidTitle(), answer.verdict());
        stages();
        fixes(BRIEF_FIXES);
        Sections.wanting(page, answer.margins(), Bands.NONE);
        Sections.cautions(page, answer.cautions());
        return page.toString();
    }

    private String text() {
        Sections.opening(page, answer.check().rig().name(), answer.check().fluidTitle(), answer.verdict());
        stages();
        pressures();
        sources();
        pieces();
        fixes(answer.fixes().size());
        page.heading("From roughing to the jets");
        page.paragraph("", 0, answer.crossover());
        course();
        Sections.margins(page, answer.margins());
        Sections.assumptions(page, answer.notes());
        Sections.cautions(page, answer.cautions());
        Sections.versions(page, answer.check().programVersion(), answer.check().dataVersion());
        return page.toString();
    }

    private void pressures() {
        page.heading("Pressures, at rest");
        VacuumState end = answer.end();
        VacuumState before = answer.before();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "",
                pumps() ? "when the jets are full" : "as the run begins",
                "after " + Sections.quantity(answer.lookS(), Dimension.TIME)));
        rows.add(row("gauge", before.gaugePa(), end.gaugePa()));
        if (end.readingPa() != end.gaugePa()) {
            rows.add(row("  what the gauge shows", before.readingPa(), end.readingPa()));
        }
        rows.add(row("chamber", before.chamberPa(), end.chamberPa()));
        rows.add(row("pump inlet", before.inletPa(), end.inletPa()));
        rows.add(row("foreline", before.forelinePa(), end.forelinePa()));
        rows.add(List.of("gas of all sources", gas(before.gasPaM3PerS()), gas(end.gasPaM3PerS())));
        rows.add(List.of("speed at the pump", speed(before.pumpSpeedM3PerS()), speed(end.pumpSpeedM3PerS())));
        rows.add(List.of(
                "speed left in the chamber", speed(before.chamberSpeedM3PerS()), speed(end.chamberSpeedM3PerS())));
        rows.add(List.of(
                "oil evaporating towards the chamber, within a factor of ten",
                "",
                String.format(
                        java.util.Locale.ROOT, "%.1e mg/(cm2 min)", answer.backstreamingKgPerM2S() * MG_PER_CM2_MIN)));
        page.table(rows);
    }

    private boolean pumps() {
        return answer.check().steady().speedM3PerS() > 0;
    }

    private static List<String> row(String title, double before, double end) {
        return List.of(title, pressure(before), pressure(end));
    }

    private void sources() {
        page.heading("Where the pressure at the gauge comes from, at the end");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "gas", "published range", "at the gauge", "share"));
        for (SourceShare share : answer.end().sources()) {
            boolean flows = share.source().flow() > 0;
            rows.add(List.of(
                    VacuumWords.name(share.source(), answer.end()),
                    flows ? gas(share.source().flow()) : "",
                    flows
                            ? gas(share.source().low()) + " to "
                                    + gas(share.source().high())
                            : "",
                    pressure(share.atGaugePa()),
                    percent(share.share())));
        }
        page.table(rows);
    }

    private void pieces() {
        if (answer.end().pieces().isEmpty()) {
            return;
        }
        page.heading("What each piece of the line costs, at the end");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "conductance", "pressure lost", "share of the lost speed"));
        for (PieceCost piece : answer.end().pieces()) {
            rows.add(List.of(
                    piece.name(),
                    Double.isInfinite(piece.conductanceM3PerS()) ? "open" : speed(piece.conductanceM3PerS()),
                    pressure(piece.dropPa()),
                    percent(piece.shareOfLostSpeed())));
        }
        page.table(rows);
    }

    private void stages() {
        page.heading("The gauge, stage by stage");
        List<List<String>> rows = new ArrayList<>();
        for (VacuumStage stage : answer.stages()) {
            rows.add(List.of(
                    stage.step().title(),
                    pressure(stage.gaugePa()),
                    stage.meetsTarget()
                            .map(meets -> meets ? "o meets the target" : "x misses the target")
                            .orElse("")));
        }
        page.table(rows);
    }

    private void waiting() {
        for (Fix fix : answer.waiting()) {
            page.paragraph(
                    "  ",
                    2,
                    "Waiting alone: " + fix.title() + " brings " + pressure(fix.gaugePa()) + ", lower by a factor of "
                            + VacuumWords.factor(fix.factor()) + ".");
        }
    }

    private void fixes(int most) {
        page.heading("What one change of the gas side would do");
        if (answer.fixes().isEmpty()) {
            page.paragraph("", 0, "No single change brings the gauge down by a hundredth.");
            waiting();
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "gauge then", "lower by a factor of"));
        for (Fix fix : answer.fixes().subList(0, Math.min(most, answer.fixes().size()))) {
            rows.add(List.of(fix.title(), pressure(fix.gaugePa()), VacuumWords.factor(fix.factor())));
        }
        page.table(rows);
        waiting();
    }

    private void course() {
        VacuumTimeline line = answer.timeline();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("h:mm:ss after the foreline is down", "chamber", "pump inlet", "foreline"));
        int last = line.timeS().length - 1;
        double[] marks = {
            line.timeS()[0], 0, 300, 600, 900, 1200, 1800, 2700, 3600, 5400, 7200, 14_400, line.timeS()[last]
        };
        int at = -1;
        for (double mark : marks) {
            int i = Math.max(0, Math.min(last, after(line.timeS(), mark)));
            if (i > at) {
                rows.add(List.of(
                        EventWords.clock(line.timeS()[i]),
                        pressure(line.chamberPa()[i]),
                        pressure(line.inletPa()[i]),
                        pressure(line.forelinePa()[i])));
                at = i;
            }
        }
        page.table(rows);
    }

    private static int after(double[] times, double mark) {
        int i = 0;
        while (i < times.length - 1 && times[i] < mark) {
            i++;
        }
        return i;
    }

    private static String percent(double share) {
        return QuantityWriter.writeAuto(share, Dimension.FRACTION);
    }

    private static String pressure(double pa) {
        return Sections.quantity(pa, Dimension.PRESSURE);
    }

    private static String gas(double flow) {
        return Sections.quantity(flow, Dimension.GAS_FLOW);
    }

    private static String speed(double m3PerS) {
        return Sections.quantity(m3PerS, Dimension.VOLUME_FLOW);
    }
}
