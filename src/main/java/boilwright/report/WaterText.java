package boilwright.report;

import boilwright.answers.SessionOutlook;
import boilwright.answers.WaterAnswer;
import boilwright.answers.WaterAnswer.Element;
import boilwright.answers.WaterAnswer.LeastFlow;
import boilwright.fluid.Water;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.units.Dimension;
import boilwright.units.PhysicalConstants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The cooling side as a page of text. */
public final class WaterText {

    private final WaterAnswer answer;
    private final Page page = new Page();

    private WaterText(WaterAnswer answer) {
        this.answer = answer;
    }

    /** The whole page: verdict, elements, what is needed, both orders, margins, cautions. */
    public static String write(WaterAnswer answer, SessionOutlook session) {
        return new WaterText(answer).text(session);
    }

    private String text(SessionOutlook session) {
        Sections.opening(page, answer.check().rig().name(), answer.check().fluidTitle(), answer.verdict());
        page.paragraph("", 0, session.sentence());
        elements();
        duty();
        needs();
        orders();
        if (!answer.cures().isEmpty()) {
            page.heading("What would make the chiller enough");
            answer.cures().forEach(cure -> page.paragraph("  - ", 4, cure));
        }
        Sections.margins(page, answer.margins());
        Sections.assumptions(page, answer.notes());
        Sections.cautions(page, answer.check().cautions());
        Sections.versions(page, answer.check().programVersion(), answer.check().dataVersion());
        return page.toString();
    }

    private void elements() {
        if (answer.elements().isEmpty()) {
            return;
        }
        page.heading("Along the water, at rest");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "in", "out", "flow", "heat", "h, W/(m2 K)", "Re", "pressure"));
        for (Element e : answer.elements()) {
            rows.add(List.of(
                    e.name(),
                    Sections.quantity(e.inletK(), Dimension.TEMPERATURE),
                    Sections.quantity(e.outletK(), Dimension.TEMPERATURE),
                    Sections.quantity(e.flowKgPerS() / density(), Dimension.VOLUME_FLOW),
                    Sections.quantity(e.heatW(), Dimension.POWER),
                    whole(e.coefficient()),
                    whole(e.reynolds()),
                    Sections.quantity(e.pressureDropPa(), Dimension.PRESSURE)));
        }
        page.table(rows);
    }

    /** Of the water where its flow is counted, kg/m3. */
    private double density() {
        return Water.density(answer.check().rig().cooling().inletTemperatureK());
    }

    /** The search for the least flow ends at 10 mL/min. */
    private static String flow(double m3PerS) {
        return m3PerS <= WaterAnswer.HARDLY_ANY_M3_PER_S
                ? "hardly any"
                : Sections.quantity(m3PerS, Dimension.VOLUME_FLOW);
    }

    private static String whole(OptionalDouble value) {
        return value.isPresent() ? String.format(Locale.ROOT, "%.0f", value.getAsDouble()) : "-";
    }

    private void duty() {
        page.heading("Duty");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("heat into the water at rest", watts(answer.restDutyW())));
        rows.add(List.of("highest along the warm-up", watts(answer.peakDutyW())));
        rows.add(List.of("heat of the supply's pump", watts(answer.pumpHeatW())));
        answer.capacityW().ifPresent(c -> rows.add(List.of("the supply carries", watts(c))));
        page.table(rows);
    }

    private static String watts(double watts) {
        return Sections.quantity(watts, Dimension.POWER);
    }

    private void needs() {
        page.heading("What it needs");
        List<List<String>> rows = new ArrayList<>();
        for (LeastFlow least : answer.leastFlows()) {
            boolean governs =
                    answer.governing().isPresent() && answer.governing().get().equals(least);
            rows.add(List.of(
                    "least flow for: " + least.limit().title() + (governs ? " (governs)" : ""),
                    least.flowM3PerS().isPresent() ? flow(least.flowM3PerS().getAsDouble()) : "none is enough"));
        }
        answer.chillerW().ifPresent(c -> rows.add(List.of("smallest chiller, 20 % reserve", watts(c))));
        answer.pumpFlowM3PerS().ifPresent(flow -> {
            double head = answer.pumpHeadPa().orElseThrow();
            rows.add(List.of(
                    "pump, 25 % over the least flow",
                    Sections.quantity(flow, Dimension.VOLUME_FLOW) + " against "
                            + Sections.quantity(head, Dimension.PRESSURE) + " ("
                            + String.format(
                                    Locale.ROOT, "%.2f", head / (density() * PhysicalConstants.STANDARD_GRAVITY))
                            + " m)"));
        });
        answer.tank()
                .ifPresent(tank -> rows.add(List.of(
                        "tank lasts until its water is at " + Sections.quantity(tank.limitK(), Dimension.TEMPERATURE),
                        tank.runTimeS().isPresent()
                                ? EventWords.clock(tank.runTimeS().getAsDouble())
                                : "for ever")));
        if (answer.steady().waterOutK().isPresent()) {
            rows.add(List.of(
                    "ice for a session of " + Sections.quantity(answer.sessionS(), Dimension.TIME),
                    Sections.quantity(answer.iceKg(), Dimension.MASS)));
        }
        page.table(rows);
    }

    private void orders() {
        if (answer.turnedRound().isEmpty()) {
            return;
        }
        page.heading("The water led either way");
        SteadyState as = answer.steady();
        SteadyState turned = answer.turnedRound().get();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "as plumbed", "other way round"));
        rows.add(List.of("water out", kelvin(as.waterOutK()), kelvin(turned.waterOutK())));
        if (as.capK().isPresent()) {
            rows.add(List.of("top cap", kelvin(as.capK()), kelvin(turned.capK())));
        }
        for (int k = as.stages().size() - 1; k >= 0; k--) {
            StageState a = as.stages().get(k);
            StageState b = turned.stages().get(k);
            rows.add(List.of(
                    "wall at " + a.name(),
                    Sections.quantity(a.wallK(), Dimension.TEMPERATURE),
                    Sections.quantity(b.wallK(), Dimension.TEMPERATURE)));
        }
        page.table(rows);
    }

    private static String kelvin(OptionalDouble value) {
        return value.isPresent() ? Sections.quantity(value.getAsDouble(), Dimension.TEMPERATURE) : "-";
    }
}
