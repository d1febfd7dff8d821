package boilwright.report;

import boilwright.choice.CarbonMonoxide;
import boilwright.choice.CompareAnswer;
import boilwright.choice.CompareQuestion;
import boilwright.choice.GasUse;
import boilwright.choice.SourceRow;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Heat sources side by side as a page of text, and as a table. */
public final class CompareText {
    private static final double J_PER_KWH = 3.6e6;

    private final CompareAnswer answer;
    private final HeatSpread spread;
    private final Page page = new Page();

    private CompareText(CompareAnswer answer, HeatSpread spread) {
        this.spread = spread;
        this.answer = answer;
    }

    /** The whole page: verdict, table, one sentence a source, gas, what does not fit. */
    public static String write(CompareAnswer answer, HeatSpread spread) {
        return new CompareText(answer, spread).text();
    }

    /** What counts: verdict, the present source, the recommended one and those that are enough, carbon monoxide for a flame. */
    public static String brief(CompareAnswer answer, HeatSpread spread) {
        return new CompareText(answer, spread).briefText();
    }

    /** The rows as comma-separated values, SI, in the order given. */
    public static String csv(CompareAnswer answer) {
        CsvTable table = new CsvTable(List.of(
                "id",
                "title",
                "state",
                "recommended",
                "ratedPowerW",
                "heatAvailableW",
                "heatNeededW",
                "heatRatio",
                "jetsLit",
                "jetsFull",
                "fullAfterS",
                "oilRatio",
                "glassRatio",
                "heldShare",
                "sessionJ",
                "fuelKg",
                "limit",
                "verdict"));
        for (SourceRow row : answer.rows()) {
            table.row(
                    row.id(),
                    row.title(),
                    row.state().id(),
                    answer.recommendedId().filter(row.id()::equals).isPresent(),
                    row.rig().heatSource().ratedPowerW(),
                    row.check().needed().heatAvailableW(),
                    row.check().needed().heatNeededW(),
                    row.ratio(),
                    row.jetsLit(),
                    row.jetsFull(),
                    row.fullAfterS(),
                    row.oilRatio(),
                    row.glassRatio(),
                    row.held().map(h -> OptionalDouble.of(h.share())).orElse(OptionalDouble.empty()),
                    row.session().map(s -> OptionalDouble.of(s.totalJ())).orElse(OptionalDouble.empty()),
                    row.gas().map(GasUse::fuelKg).orElse(OptionalDouble.empty()),
                    row.limiter().map(l -> l.kind().id()).orElse(""),
                    row.verdict());
        }
        return table.text();
    }

    private String briefText() {
        Sections.opening(page, answer.rig().name(), answer.fluidTitle(), answer.verdict());
        List<SourceRow> usable = sorted().stream()
                .filter(row -> row.id().equals(CompareQuestion.PRESENT) || isRecommended(row) || row.isEnough())
                .toList();
        if (usable.stream().anyMatch(row -> row.gas().isPresent())) {
            answer.carbonMonoxide().ifPresent(this::carbonMonoxide);
        }
        table(usable);
        sentences(usable);
        page.gap();
        page.line("Every source, gas, what does not fit, assumptions and cautions: --all");
        return page.toString();
    }

    private List<SourceRow> sorted() {
        return answer.rows().stream()
                .sorted(Comparator.comparing((SourceRow r) -> !isRecommended(r))
                        .thenComparing(r -> !r.id().equals(CompareQuestion.PRESENT))
                        .thenComparing(SourceRow::state)
                        .thenComparing(r -> -r.ratio())
                        .thenComparing(SourceRow::id))
                .toList();
    }

    private String text() {
        Sections.opening(page, answer.rig().name(), answer.fluidTitle(), answer.verdict());
        List<SourceRow> sorted = sorted();
        table(sorted);
        sentences(sorted);
        gas(sorted);
        answer.carbonMonoxide().ifPresent(this::carbonMonoxide);
        if (!answer.unfit().isEmpty()) {
            page.heading("Not compared");
            for (CompareAnswer.Unfit one : answer.unfit()) {
                page.paragraph("  " + one.id() + ": ", 4, one.reason());
            }
        }
        Sections.assumptions(page, answer.notes());
        Sections.cautions(page, answer.cautions());
        Sections.versions(page, answer.programVersion(), answer.dataVersion());
        return page.toString();
    }

    private boolean isRecommended(SourceRow row) {
        return answer.recommendedId().filter(row.id()::equals).isPresent();
    }

    private void table(List<SourceRow> rows) {
        page.heading("Side by side, the best first");
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("", "delivers", "margin", "lit", "full", "full after", "oil", "glass", "a session"));
        for (SourceRow row : rows) {
            cells.add(List.of(
                    mark(row) + " " + row.id(),
                    Sections.quantity(row.check().needed().heatAvailableW(), Dimension.POWER),
                    two(row.ratio()) + spread.inTable(row.id()),
                    Integer.toString(row.jetsLit()),
                    Integer.toString(row.jetsFull()),
                    row.fullAfterS().isPresent()
                            ? EventWords.clock(row.fullAfterS().getAsDouble())
                            : "never",
                    ratio(row.oilRatio()),
                    ratio(row.glassRatio()),
                    session(row)));
        }
        page.table(cells);
        page.gap();
        if (!spread.isEmpty()) {
            page.paragraph(
                    "  ",
                    2,
                    "In brackets: 10 to 90 % of " + spread.samples() + " samples of what is uncertain, at rest.");
        }
        page.paragraph(
                "  ",
                2,
                "> recommended, o enough, v enough when turned down once hot, ^ without the margin, x not enough. Delivers: at"
                        + " the temperature that full jets need. Margin: times the heat needed. Oil, glass: margin to the"
                        + " limit at full power, below 1 it is passed. A session: energy, for burners fuel.");
    }

    private String mark(SourceRow row) {
        if (isRecommended(row)) {
            return ">";
        }
        return switch (row.state()) {
            case ENOUGH -> "o";
            case TURN_DOWN -> "v";
            case TIGHT -> "^";
            case OVER, SHORT -> "x";
        };
    }

    private static String session(SourceRow row) {
        if (row.session().isEmpty()) {
            return "-";
        }
        return row.gas().isPresent()
                ? Sections.quantity(row.gas().get().fuelKg().orElseThrow(), Dimension.MASS)
                : String.format(Locale.ROOT, "%.2f kWh", row.session().get().totalJ() / J_PER_KWH);
    }

    private void sentences(List<SourceRow> rows) {
        page.heading("One by one");
        for (SourceRow row : rows) {
            page.paragraph(
                    "  " + row.id() + ", " + row.title() + ": ",
                    4,
                    row.verdict() + (row.condition().isEmpty() ? "" : " " + row.condition()));
        }
    }

    private void gas(List<SourceRow> rows) {
        List<SourceRow> burners = rows.stream().filter(r -> r.gas().isPresent()).toList();
        if (burners.isEmpty()) {
            return;
        }
        page.heading("Gas");
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("", "least flame", "a session", "cartridges", "of", "too cold after"));
        for (SourceRow row : burners) {
            GasUse gas = row.gas().orElseThrow();
            cells.add(List.of(
                    row.id(),
                    gas.leastFuelW().isPresent()
                            ? Sections.quantity(gas.leastFuelW().getAsDouble(), Dimension.POWER)
                            : "none is enough",
                    gas.fuelKg().isPresent() ? Sections.quantity(gas.fuelKg().getAsDouble(), Dimension.MASS) : "-",
                    gas.cartridges() > 0 ? Integer.toString(gas.cartridges()) : "-",
                    Sections.quantity(gas.cartridgeKg(), Dimension.MASS),
                    chill(gas)));
        }
        page.table(cells);
        GasWords.sentences(burners).forEach(sentence -> page.paragraph("  ", 2, sentence));
    }

    private static String chill(GasUse gas) {
        if (gas.coldestK().isEmpty()) {
            return "regulated";
        }
        return gas.chillsAfterS().isPresent()
                ? EventWords.clock(gas.chillsAfterS().getAsDouble())
                : "never";
    }

    private void carbonMonoxide(CarbonMonoxide room) {
        page.heading("Carbon monoxide");
        GasWords.carbonMonoxide(room).forEach(sentence -> page.paragraph("  ", 2, sentence));
    }

    private static String ratio(OptionalDouble value) {
        return value.isPresent() ? Sections.ratio(value.getAsDouble()) : "-";
    }

    private static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
