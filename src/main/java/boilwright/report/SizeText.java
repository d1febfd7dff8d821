package boilwright.report;

import boilwright.choice.SizeAnswer;
import boilwright.choice.SizeAnswer.Figure;
import boilwright.choice.SizeAnswer.Least;
import boilwright.choice.SizeAnswer.Pair;
import boilwright.choice.SizeAnswer.PairRow;
import boilwright.choice.SizeAnswer.Setting;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** A sizing as a page of text, and as a table. */
public final class SizeText {
    private final SizeAnswer answer;
    private final HeatSpread spread;
    private final Page page = new Page();

    private SizeText(SizeAnswer answer, HeatSpread spread) {
        this.spread = spread;
        this.answer = answer;
    }

    /** The whole page: verdict, the least of each figure, pairs, window, settings. */
    public static String write(SizeAnswer answer, HeatSpread spread) {
        return new SizeText(answer, spread).text();
    }

    /** The least of each figure and the ends of the window as comma-separated values, SI. */
    public static String csv(SizeAnswer answer) {
        CsvTable table = new CsvTable(List.of("id", "unit", "present", "value"));
        for (Least least : answer.least()) {
            table.row(
                    "least-" + least.figure().id(),
                    least.figure().dimension().siUnit(),
                    least.present(),
                    least.value());
        }
        double present = answer.window().presentW();
        table.row("window-low", "W", present, answer.window().lowW());
        table.row("window-high", "W", present, answer.window().highW());
        for (Setting setting : answer.settings()) {
            table.row("set-" + setting.id(), "W", present, setting.powerW());
        }
        return table.text();
    }

    private String text() {
        Sections.opening(page, answer.rig().name(), answer.fluidTitle(), answer.verdict());
        if (!spread.isEmpty()) {
            page.paragraph("", 0, spread.sentence(""));
        }
        least();
        answer.pairs().forEach(this::pair);
        window();
        settings();
        Sections.assumptions(page, answer.notes());
        Sections.cautions(page, answer.cautions());
        Sections.versions(page, answer.programVersion(), answer.dataVersion());
        return page.toString();
    }

    private void least() {
        page.heading("The least of each, the others left as they are, for " + times(answer.margin())
                + " times the heat of full jets");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "now", "least"));
        for (Least least : answer.least()) {
            rows.add(List.of(
                    name(least.figure()),
                    Sections.quantity(least.present(), least.figure().dimension()),
                    value(least.value(), least.figure(), "none is enough")));
        }
        rows.add(List.of(
                "heat through the boiler's outer face for full jets",
                "",
                Sections.quantity(answer.needed().heatNeededW(), Dimension.POWER)));
        page.table(rows);
    }

    private void pair(Pair pair) {
        page.heading("With another " + name(pair.given()));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(name(pair.given()), "least " + name(pair.found())));
        for (PairRow row : pair.rows()) {
            rows.add(List.of(
                    Sections.quantity(row.given(), pair.given().dimension()),
                    value(row.found(), pair.found(), "none is enough")));
        }
        page.table(rows);
    }

    private void window() {
        page.heading("Powers to set");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("every jet just full", watts(answer.window().lowW(), "at no power")));
        if (answer.window().lowW().isPresent()) {
            String above = "none up to " + Sections.quantity(answer.window().searchedToW(), Dimension.POWER);
            rows.add(List.of("first limit", watts(answer.window().highW(), above)));
        }
        rows.add(List.of(
                "set now, at the end of the schedule",
                Sections.quantity(answer.window().presentW(), Dimension.POWER)));
        page.table(rows);
        page.paragraph("  ", 2, answer.window().sentence());
    }

    private void settings() {
        if (answer.settings().isEmpty()) {
            return;
        }
        page.heading("What to set");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "set", "of rated", "heat margin", "oil", "takes", "into the water"));
        for (Setting setting : answer.settings()) {
            rows.add(List.of(
                    setting.id().equals("warm-up") ? "until every jet is full" : "held from then on",
                    Sections.quantity(setting.powerW(), Dimension.POWER),
                    Math.round(100 * setting.share()) + " %",
                    times(setting.ratio()),
                    Sections.quantity(setting.oilK(), Dimension.TEMPERATURE),
                    Sections.quantity(setting.inputW(), Dimension.POWER),
                    Sections.quantity(setting.toWaterW(), Dimension.POWER)));
        }
        page.table(rows);
        answer.saved().ifPresent(saved -> {
            String words = "Turning down once hot saves " + Sections.quantity(saved.inputW(), Dimension.POWER)
                    + " and keeps " + Sections.quantity(saved.toWaterW(), Dimension.POWER) + " out of the water";
            page.paragraph(
                    "  ",
                    2,
                    words
                            + (saved.flowM3PerS().isPresent()
                                    ? "; at the same outlet temperature that is "
                                            + Sections.quantity(
                                                    saved.flowM3PerS().getAsDouble(), Dimension.VOLUME_FLOW)
                                            + " of water less."
                                    : "."));
        });
    }

    private static String watts(OptionalDouble value, String absent) {
        return value.isPresent() ? Sections.quantity(value.getAsDouble(), Dimension.POWER) : absent;
    }

    private static String value(OptionalDouble value, Figure figure, String absent) {
        return value.isPresent() ? Sections.quantity(value.getAsDouble(), figure.dimension()) : absent;
    }

    private static String name(Figure figure) {
        return switch (figure) {
            case RATED_POWER -> "rated power";
            case CONTACT -> "contact conductance";
            case TEMPERATURE -> "temperature limit of plate or element";
            case CONTACT_AREA, WRAPPED_AREA -> "area of contact";
            case HEATED_AREA -> "heated area of the boiler";
        };
    }

    private static String times(double ratio) {
        return String.format(Locale.ROOT, "%.2f", ratio);
    }
}
