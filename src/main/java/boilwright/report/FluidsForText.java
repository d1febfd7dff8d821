package boilwright.report;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.choice.CompareAnswer;
import boilwright.choice.FluidRow;
import boilwright.choice.FluidsAnswer;
import boilwright.thermal.NeededState;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The same rig with each fluid as a page of text. */
public final class FluidsForText {
    private FluidsForText() {}

    /** The whole page: table, one sentence a fluid, what was assumed. */
    public static String write(FluidsAnswer answer) {
        Page page = new Page();
        page.line(answer.rig().name() + " with each fluid");
        page.heading("With every jet just full, and from cold");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "oil at", "boiler", "needs", "margin", "full after", "oil", "film"));
        List<List<String>> charges = new ArrayList<>();
        charges.add(List.of("", "vapour pressure at room temperature", "least charge"));
        for (FluidRow row : answer.rows()) {
            NeededState needed = row.check().needed();
            String name = (row.id().equals(answer.rig().fluidId()) ? "> " : "  ") + row.id();
            rows.add(List.of(
                    name,
                    Sections.quantity(needed.state().liquidTemperatureK(), Dimension.TEMPERATURE),
                    Sections.quantity(needed.state().boilerPressurePa(), Dimension.PRESSURE),
                    Sections.quantity(needed.heatNeededW(), Dimension.POWER),
                    String.format(Locale.ROOT, "%.2f", row.ratio()),
                    row.fullAfterS().isPresent()
                            ? EventWords.clock(row.fullAfterS().getAsDouble())
                            : "never",
                    margin(row, MarginId.OIL_BULK),
                    margin(row, MarginId.OIL_FILM)));
            charges.add(List.of(
                    name,
                    Sections.quantity(row.roomPressurePa(), Dimension.PRESSURE),
                    row.leastChargeM3().isPresent()
                            ? Sections.quantity(row.leastChargeM3().getAsDouble(), Dimension.VOLUME)
                            : "more than ten times this one"));
        }
        page.table(rows);
        page.gap();
        page.paragraph(
                "  ",
                2,
                "> in the rig now. Margin: heat the source could deliver over heat needed. Oil, film: margins of the oil's own"
                        + " limits at rest, below 1 they are passed; a dash: no limit is known.");
        page.heading("Cold, and how little is too little");
        page.table(charges);
        page.heading("One by one");
        answer.rows().forEach(row -> page.paragraph("  " + row.title() + ": ", 4, row.verdict()));
        if (!answer.unfit().isEmpty()) {
            page.heading("Not worked out");
            for (CompareAnswer.Unfit one : answer.unfit()) {
                page.paragraph("  " + one.id() + ": ", 4, one.reason());
            }
        }
        Sections.assumptions(page, answer.notes());
        Sections.cautions(page, answer.cautions());
        Sections.versions(page, answer.programVersion(), answer.dataVersion());
        return page.toString();
    }

    private static String margin(FluidRow row, MarginId id) {
        OptionalDouble ratio = row.check().margins().stream()
                .filter(m -> m.id() == id)
                .map(Margin::ratio)
                .findFirst()
                .orElse(OptionalDouble.empty());
        return ratio.isPresent() ? Sections.ratio(ratio.getAsDouble()) : "-";
    }
}
