package boilwright.report;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.choice.CompareAnswer;
import boilwright.choice.FluidRow;
import boilwright.choice.FluidsAnswer;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import boilwright.fluid.PropertyLine;
import boilwright.thermal.NeededState;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The working fluids as a page of text. */
public final class FluidsText {
    private static final int UNDER_PROPERTY = 6;

    private FluidsText() {}

    /** Every fluid with the figures by which one is chosen. */
    public static String list(FluidLibrary library) {
        Page page = new Page();
        page.line("Working fluids (fluid data " + library.dataVersion() + ")");
        page.gap();
        page.table(rows(library, library.workingFluids()));
        page.gap();
        page.paragraph(
                "",
                0,
                "Boils: oil temperature at the boiler pressure that jets for this fluid are usually designed for. Oil at most,"
                        + " film at most: highest temperature recommended for the bulk and at the heated wall. Air below:"
                        + " let no air in while the oil is hotter. A dash: no figure is known.");
        if (!library.validationOnly().isEmpty()) {
            page.gap();
            page.line("Only for checking the program against published values: "
                    + String.join(", ", library.validationOnly()));
        }
        page.gap();
        page.line("Every figure of one fluid, with its source: boilwright fluids ID");
        return page.toString();
    }

    /** Everything that is recorded of one fluid, each figure with its source. */
    public static String one(FluidLibrary library, String id) {
        Page page = new Page();
        page.line(library.find(id).title() + " (" + id + ", fluid data " + library.dataVersion() + ")");
        for (PropertyLine.Words entry : library.entries(id)) {
            page.gap();
            page.paragraph("", UNDER_PROPERTY, entry.title() + ": " + (entry.valueText() + " " + entry.unit()).strip());
            detail(page, "range: ", entry.range());
            detail(page, "uncertainty: ", entry.uncertainty());
            detail(page, entry.fromMemory() ? "source (from memory): " : "source: ", entry.source());
        }
        return page.toString();
    }

    private static void detail(Page page, String name, String words) {
        if (!words.isEmpty()) {
            page.paragraph("    " + name, UNDER_PROPERTY, words);
        }
    }

    private static List<List<String>> rows(FluidLibrary library, List<String> ids) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("id", "molar mass", "boils", "at", "oil at most", "film at most", "air below"));
        for (String id : ids) {
            FluidRecord fluid = library.find(id);
            double pressure = fluid.usualBoilerPressure();
            rows.add(List.of(
                    id,
                    Sections.quantity(fluid.molarMass(), Dimension.MOLAR_MASS),
                    Sections.quantity(fluid.saturationTemperature(pressure), Dimension.TEMPERATURE),
                    Sections.quantity(pressure, Dimension.PRESSURE),
                    temperature(fluid.bulkLimit()),
                    temperature(fluid.filmLimit()),
                    temperature(fluid.airAdmissionLimit())));
        }
        return rows;
    }

    private static String temperature(OptionalDouble value) {
        return value.isPresent() ? Sections.quantity(value.getAsDouble(), Dimension.TEMPERATURE) : "-";
    }

    /** The whole page: table, one sentence a fluid, what was assumed. */
    public static String compared(FluidsAnswer answer) {
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
