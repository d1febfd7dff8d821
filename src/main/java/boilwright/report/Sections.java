package boilwright.report;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.spread.Band;
import boilwright.spread.Bands;
import boilwright.spread.EventKey;
import boilwright.spread.Percent;
import boilwright.thermal.EnergyBalance;
import boilwright.thermal.TimeEvent;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The sections that several reports have in common. */
final class Sections {
    private static final int UNDER_MARGIN = 13;

    private Sections() {}

    /** Who the report is about and what was found. */
    static void opening(Page page, String rig, String fluid, String verdict) {
        page.line(rig + ", charged with " + fluid);
        page.gap();
        page.paragraph("", 0, verdict);
    }

    /** The ledger of margins, in the order given. */
    static void margins(Page page, List<Margin> margins) {
        margins(page, margins, Bands.NONE);
    }

    /** The ledger of margins with how far each spreads. */
    static void margins(Page page, List<Margin> margins, Bands bands) {
        if (margins.isEmpty()) {
            return;
        }
        page.heading("Margins, worst first");
        page.line("x fails   ^ tight   ? unknown   o holds       (1.00 is at the limit, below it fails)");
        if (!bands.isEmpty()) {
            page.line("Spread: 10 to 90 % of " + bands.samples() + " samples of what is uncertain");
        }
        for (Margin margin : margins) {
            page.gap();
            margin(page, margin);
            bands.margin(margin.id()).ifPresent(band -> band(page, margin, band));
        }
    }

    /** Of the margins only those that fail or are tight, and how many others there are. */
    static void wanting(Page page, List<Margin> margins, Bands bands) {
        List<Margin> wanting = margins.stream()
                .filter(m -> m.fails() || m.status() == Margin.Status.TIGHT)
                .toList();
        margins(page, wanting, bands);
        long others = margins.size() - wanting.size();
        if (others > 0) {
            page.gap();
            page.line("Margins that hold or have no limit: " + others + ". All of them, and all else: --all");
        }
    }

    private static void band(Page page, Margin margin, Bands.MarginBand band) {
        if (band.value().isEmpty() || !band.failing().isKnown()) {
            return;
        }
        String indent = " ".repeat(UNDER_MARGIN);
        String outside = holds(band.value(), margin.value())
                ? ""
                : " The middle of the samples, " + figure(band.value().median(), margin.id(), "")
                        + ", is the figure to go by: the one run with every nominal value, above, lies outside, because what is"
                        + " uncertain does not act alike both ways.";
        page.paragraph(
                indent + "Spread: ",
                UNDER_MARGIN,
                figure(band.value().low(), margin.id(), "") + " to "
                        + figure(band.value().high(), margin.id(), "") + ", ratio "
                        + ratio(band.ratio().low().orElseThrow()) + " to "
                        + ratio(band.ratio().high().orElseThrow()) + "; fails in "
                        + Percent.of(band.failing().share()) + "." + outside);
    }

    static boolean holds(Band band, OptionalDouble value) {
        return value.isEmpty()
                || (value.getAsDouble() >= band.low().orElse(Double.NEGATIVE_INFINITY)
                        && value.getAsDouble() <= band.high().orElse(Double.POSITIVE_INFINITY));
    }

    private static void margin(Page page, Margin margin) {
        String side = margin.side() == Margin.Side.AT_LEAST ? "at least " : "at most ";
        page.line(String.join(
                " ",
                Page.left("  " + margin.status().mark() + " " + margin.status().id(), UNDER_MARGIN - 1),
                Page.left(margin.title(), 38),
                Page.right(figure(margin.value(), margin, "not known"), 12),
                "",
                Page.left(
                        margin.limit().isPresent() ? side + figure(margin.limit(), margin, "") : "limit not known", 22),
                margin.ratio().isPresent() ? Page.right(ratio(margin.ratio().getAsDouble()), 6) : ""));
        String indent = " ".repeat(UNDER_MARGIN);
        page.paragraph(indent, UNDER_MARGIN, (margin.basis() + " " + judged(margin)).strip());
        if (!margin.cure().isEmpty()) {
            page.paragraph(indent + "Cure: ", UNDER_MARGIN, margin.cure());
        }
    }

    /** Over what it is judged, and from where on it is tight: not the same for all, because their figures are not equally sure. */
    private static String judged(Margin margin) {
        List<String> said = new ArrayList<>();
        if (margin.atS().isPresent()) {
            said.add("Judged " + margin.moment().words() + ", at "
                    + EventWords.clock(margin.atS().getAsDouble()) + ".");
        }
        if (margin.ratio().isPresent() && margin.tightBelow() > 1) {
            said.add("Tight below " + ratio(margin.tightBelow()) + ".");
        }
        return String.join(" ", said);
    }

    /** What happens when; what does not happen comes with its reason. */
    static void timeLine(Page page, String heading, List<TimeEvent> events) {
        timeLine(page, heading, events, Bands.NONE);
    }

    /** What happens when, with how far each time spreads. */
    static void timeLine(Page page, String heading, List<TimeEvent> events, Bands bands) {
        page.heading(heading);
        if (!bands.isEmpty()) {
            page.line("In brackets: 10 to 90 % of " + bands.samples() + " samples.");
        }
        List<EventKey> keys = EventKey.of(events);
        for (int i = 0; i < events.size(); i++) {
            TimeEvent event = events.get(i);
            Optional<Bands.EventBand> band = bands.event(keys.get(i));
            String when =
                    event.timeS().isPresent() ? EventWords.clock(event.timeS().getAsDouble()) : "never";
            String spread = band.map(Sections::spread).orElse("");
            String what = "  " + Page.right(when, 8) + "  " + EventWords.title(event) + spread;
            if (event.reason().isEmpty()) {
                page.line(what);
            } else {
                page.paragraph(Page.left(what, 44) + "  ", 46, event.reason());
            }
        }
    }

    /** A band of times; where it never comes in some samples, how likely it comes. */
    private static String spread(Bands.EventBand band) {
        return band.never().cases() == 0
                ? " (" + clock(band.timeS().low()) + " to " + clock(band.timeS().high()) + ")"
                : " (comes in " + Percent.of(1 - band.never().share()) + ")";
    }

    /** A time, or that it never comes. */
    static String clock(OptionalDouble seconds) {
        return seconds.isPresent() ? EventWords.clock(seconds.getAsDouble()) : "never";
    }

    /** Where the energy of a run went. */
    static void balance(Page page, String heading, EnergyBalance balance) {
        page.heading(heading);
        page.table(List.of(
                List.of("into the boiler", energy(balance.inJ())),
                List.of("carried off by water", energy(balance.toWaterJ())),
                List.of("lost to the room", energy(balance.toAirJ())),
                List.of("into the foreline", energy(balance.toForelineJ())),
                List.of("stored in walls, oil and water", energy(balance.storedJ())),
                List.of("left over", share(balance.closureRelative()))));
    }

    /** Assumptions of every part of an answer, each once, in the order given. */
    @SafeVarargs
    static void assumptions(Page page, Collection<String>... parts) {
        Collection<String> all = new LinkedHashSet<>();
        for (Collection<String> part : parts) {
            all.addAll(part);
        }
        if (!all.isEmpty()) {
            page.heading("Assumed");
            all.forEach(sentence -> page.paragraph("  - ", 4, sentence));
        }
    }

    /** What can hurt someone: last, so that it is what stands above the prompt. */
    static void cautions(Page page, List<String> cautions) {
        if (!cautions.isEmpty()) {
            page.heading("CAUTION");
            cautions.forEach(sentence -> page.paragraph("  ! ", 4, sentence));
        }
    }

    /** The versions that the figures come from. */
    static void versions(Page page, String program, String data) {
        page.gap();
        page.line("Boilwright " + program + ", fluid data " + data);
    }

    /** A quantity to three figures in an everyday unit. */
    static String quantity(double si, Dimension dimension) {
        return QuantityWriter.writeAuto(si, dimension);
    }

    private static String figure(OptionalDouble si, Margin margin, String absent) {
        return figure(si, margin.id(), absent);
    }

    /** A margin's figure. Plain numbers stay plain in the ledger: a Mach number or a ratio is no percentage. */
    static String figure(OptionalDouble si, MarginId id, String absent) {
        if (si.isEmpty()) {
            return absent;
        }
        double value = si.getAsDouble();
        if (id.dimension() == Dimension.FRACTION) {
            return threeFigures(value);
        }
        return quantity(value, id.dimension());
    }

    /** A share of what went in, for closures. */
    static String share(double value) {
        return value == 0 ? "0" : String.format(Locale.ROOT, "%.1e", value).replace("e-0", "e-") + " of what went in";
    }

    private static String energy(double joules) {
        double size = Math.abs(joules);
        if (size >= 1e6) {
            return threeFigures(joules / 1e6) + " MJ";
        }
        return size >= 1e3 ? threeFigures(joules / 1e3) + " kJ" : threeFigures(joules) + " J";
    }

    private static String threeFigures(double value) {
        double size = Math.abs(value);
        return String.format(
                Locale.ROOT, size >= 99.95 ? "%.0f" : size >= 9.995 ? "%.1f" : size >= 0.9995 ? "%.2f" : "%.3f", value);
    }

    /** A margin's ratio; beyond 99 only that. */
    static String ratio(double ratio) {
        return ratio >= 99.5 ? ">99" : String.format(Locale.ROOT, "%.2f", ratio);
    }
}
