package boilwright.report;

import boilwright.files.ProgramVersion;
import boilwright.rise.RiseAnswer;
import boilwright.rise.RiseCurve;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The answer of a pressure-rise test as a page of text. */
public final class RiseText {
    private RiseText() {}

    /**
     * The whole page: the sentence, the rates in the units of the trade, how the curves compare, what else to know.
     *
     * @param name name of the record, such as its file
     */
    public static String write(String name, RiseAnswer answer) {
        Page page = new Page();
        page.line(name + ": " + answer.record().readings().size() + " readings in "
                + Sections.quantity(answer.record().spanS(), Dimension.TIME) + ", "
                + Sections.quantity(answer.volumeM3(), Dimension.VOLUME) + " shut off");
        page.gap();
        page.paragraph("", 0, answer.sentence());
        rates(page, answer);
        scores(page, answer);
        page.heading("Notes");
        answer.notes().forEach(note -> page.paragraph("  - ", 4, note));
        page.gap();
        page.line("Boilwright " + ProgramVersion.current());
        return page.toString();
    }

    private static void rates(Page page, RiseAnswer answer) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "Pa m3/s", "Torr L/s", "mbar L/s", "95 % interval, Pa m3/s"));
        answer.leak().ifPresent(rate -> rows.add(row("leak", rate)));
        answer.surfaceGas().ifPresent(gas -> rows.add(row("surfaces, at first", gas.initialRate())));
        if (answer.leak().isPresent() == answer.surfaceGas().isPresent()) {
            answer.initialRise().ifPresent(rate -> rows.add(row("all gas, at first", rate)));
        }
        if (rows.size() > 1) {
            page.heading("Rates");
            page.table(rows);
            answer.surfaceGas().ifPresent(gas -> page.line("  " + fading(gas)));
        }
    }

    private static List<String> row(String title, RiseAnswer.Rate rate) {
        return List.of(
                title,
                figure(rate.value()),
                figure(gasFlow("Torr L/s").fromSi(rate.value())),
                figure(gasFlow("mbar L/s").fromSi(rate.value())),
                figure(rate.low()) + " to " + figure(rate.high()));
    }

    private static UnitSpelling gasFlow(String unit) {
        return UnitTable.find(unit, Dimension.GAS_FLOW).orElseThrow();
    }

    private static String fading(RiseAnswer.SurfaceGas gas) {
        String time = Sections.quantity(gas.timeConstantS(), Dimension.TIME);
        return gas.byPowerLaw()
                ? "The surfaces' gas halves in " + time + ", as one over the time."
                : "The surfaces' gas fades with a time constant of " + time + ".";
    }

    private static void scores(Page page, RiseAnswer answer) {
        Optional<Double> least = answer.scores().values().stream()
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .min(Double::compare);
        if (least.isEmpty()) {
            return;
        }
        page.heading("How the curves compare");
        List<List<String>> rows = new ArrayList<>();
        for (RiseCurve curve : RiseCurve.values()) {
            OptionalDouble score = answer.scores().get(curve);
            rows.add(List.of(
                    title(curve),
                    score.isPresent()
                            ? String.format(Locale.ROOT, "%.1f", score.getAsDouble() - least.get())
                            : "too few readings"));
        }
        page.table(rows);
        page.line(String.format(
                Locale.ROOT,
                "  (Akaike's criterion above the best; a difference of %.1f or more counts)",
                answer.leastDifference()));
    }

    private static String title(RiseCurve curve) {
        return switch (curve) {
            case LEVEL -> "no rise";
            case LEAK -> "leak";
            case SURFACE_GAS -> "surface gas";
            case POWER_LAW -> "surface gas by a power law";
            case MIXED -> "leak and surface gas";
        };
    }

    private static String figure(double value) {
        return QuantityWriter.write(
                value, UnitTable.find("1", Dimension.FRACTION).orElseThrow());
    }
}
