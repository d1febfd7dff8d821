package boilwright.report;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.spread.Advice;
import boilwright.spread.Band;
import boilwright.spread.Chance;
import boilwright.spread.EventSpread;
import boilwright.spread.InputShare;
import boilwright.spread.MarginSpread;
import boilwright.spread.Percent;
import boilwright.spread.SpreadAnswer;
import boilwright.spread.SpreadAnswer.Rejection;
import boilwright.thermal.EventKind;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** An uncertainty run as a page of text for the person at the pump. */
public final class SpreadText {
    private static final int MOST_INPUTS = 4;
    private static final double COUNTS = 0.02;

    private SpreadText() {}

    /** The whole page: verdict, margins, times, what to find out first, what matters, samples left out, assumptions. */
    public static String write(SpreadAnswer answer) {
        Page page = new Page();
        Sections.opening(page, answer.rig().name(), answer.fluidTitle(), answer.verdict());
        if (answer.accepted() > 0) {
            advice(page, answer.advice());
            margins(page, answer);
            if (!answer.events().isEmpty()) {
                events(page, answer);
            }
            shares(page, answer);
        }
        rejections(page, answer);
        Sections.assumptions(page, answer.notes());
        page.gap();
        page.line("Samples " + answer.done() + ", number of the shift " + answer.seed() + " (--seed)");
        Sections.versions(page, answer.programVersion(), answer.dataVersion());
        return page.toString();
    }

    private static void advice(Page page, List<Advice> advice) {
        if (!advice.isEmpty()) {
            page.heading("Measure this first");
            advice.forEach(one -> page.paragraph("  - ", 4, one.sentence()));
        }
    }

    private static void margins(Page page, SpreadAnswer answer) {
        page.heading("Margins of " + answer.accepted() + " samples, the likeliest to fail first");
        page.line("Half of the samples lie below the median, a tenth below 10 %, a tenth above 90 %.");
        page.line("Ratio: 1.00 is at the limit, below it fails. Error: from the number of samples alone.");
        page.gap();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("margin", "10 %", "median", "90 %", "ratio 10 %", "fails in, error"));
        answer.margins().stream()
                .filter(m -> !m.band().value().isEmpty())
                .sorted(Comparator.comparingDouble(
                                (MarginSpread m) -> m.band().failing().share())
                        .reversed()
                        .thenComparingDouble(m -> m.band().ratio().median().orElse(Double.MAX_VALUE)))
                .forEach(m -> rows.add(row(m)));
        page.table(rows);
        String unknown = answer.margins().stream()
                .filter(m -> m.band().value().isEmpty())
                .map(MarginSpread::title)
                .collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            page.paragraph("  ", 2, "Not known in any sample: " + unknown + ".");
        }
    }

    private static List<String> row(MarginSpread margin) {
        Band value = margin.band().value();
        Band ratio = margin.band().ratio();
        boolean known = margin.band().failing().isKnown();
        return List.of(
                margin.title(),
                Sections.figure(value.low(), margin.id(), ""),
                Sections.figure(value.median(), margin.id(), ""),
                Sections.figure(value.high(), margin.id(), ""),
                known ? Sections.ratio(ratio.low().orElseThrow()) : "",
                known ? share(margin.band().failing()) : "no limit");
    }

    /** A share with its error, both in per cent. */
    private static String share(Chance chance) {
        String error;
        if (chance.cases() == 0) {
            error = "<" + plain(chance.high());
        } else if (chance.cases() == chance.samples()) {
            error = ">" + plain(chance.low());
        } else {
            error = plain(chance.low()) + "-" + plain(chance.high());
        }
        return Percent.of(chance.share()) + " (" + error + ")";
    }

    private static String plain(double share) {
        return Percent.of(share).replaceAll("[<> %]", "");
    }

    private static void events(Page page, SpreadAnswer answer) {
        page.heading("Warm-up from cold, h:mm:ss after the foreline is pumped down");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("event", "as it stands", "10 %", "median", "90 %", "never in"));
        for (EventSpread event : answer.events()) {
            Band time = event.band().timeS();
            rows.add(List.of(
                    title(event),
                    Sections.clock(event.nominalS()),
                    Sections.clock(time.low()),
                    Sections.clock(time.median()),
                    Sections.clock(time.high()),
                    Percent.of(event.band().never().share())));
        }
        page.table(rows);
    }

    /** What an event is called, with the limit that was reached. */
    static String title(EventSpread event) {
        String title =
                EventWords.title(new TimeEvent(event.key().kind(), event.key().stage(), event.nominalS(), ""));
        return event.key().what().isEmpty()
                ? title
                : title + ": " + event.key().what().replaceAll("\\.$", "");
    }

    private static void shares(Page page, SpreadAnswer answer) {
        List<String> lines = new ArrayList<>();
        for (MarginSpread margin : answer.margins()) {
            boolean wanting =
                    answer.advice().stream().anyMatch(a -> a.marginId() == margin.id()) || margin.id() == MarginId.HEAT;
            if (wanting && !margin.shares().isEmpty()) {
                lines.add(margin.title() + ": " + shares(margin.shares(), margin.noise()));
            }
        }
        for (EventSpread event : answer.events()) {
            if (event.key().kind() == EventKind.FULL_PUMPING && !event.shares().isEmpty()) {
                lines.add(title(event) + ", time: " + shares(event.shares(), event.noise()));
            }
        }
        if (!lines.isEmpty()) {
            page.heading("What the spread comes from, share of the variance by each input alone");
            lines.forEach(line -> page.paragraph("  - ", 4, line));
        }
    }

    private static String shares(List<InputShare> shares, double noise) {
        String list = shares.stream()
                .limit(MOST_INPUTS)
                .filter(share -> share.share() > Math.max(COUNTS, noise))
                .map(share -> share.inputId() + " " + Percent.of(share.share()))
                .collect(Collectors.joining(", "));
        return (list.isEmpty() ? "none stands out" : list) + ".";
    }

    private static void rejections(Page page, SpreadAnswer answer) {
        if (!answer.rejections().isEmpty()) {
            page.heading("Samples without an answer");
            for (Rejection one : answer.rejections()) {
                page.paragraph(
                        "  - ",
                        4,
                        one.samples() + " of " + answer.done()
                                + (one.impossible() ? ", values that no rig can have together" : ", no answer found")
                                + ". The first, number " + one.firstIndex() + ": " + one.example());
            }
        }
    }

    /** Whether a margin stands in pictures and tables: its ratio is known. */
    static boolean isShown(MarginSpread margin) {
        return margin.band().failing().isKnown()
                && margin.nominal()
                        .map(m -> m.status() != Margin.Status.UNKNOWN)
                        .orElse(true);
    }
}
