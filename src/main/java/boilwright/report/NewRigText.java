package boilwright.report;

import boilwright.estimate.Guess;
import boilwright.estimate.GuessRanking;
import boilwright.estimate.RankedGuess;
import boilwright.estimate.RigEstimate;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.file.RigFields;
import boilwright.spread.Certainty;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A rig estimated from outside measurements as a page of text: what was guessed, and which guess matters most. */
public final class NewRigText {
    private static final int SHOWN = 6;

    private NewRigText() {}

    /**
     * The whole page.
     *
     * @param estimate the rig and its guesses
     * @param certainty how likely it is that its jets fill
     * @param ranking its guesses in order; empty when the model finds no working state of the rig
     * @param file where the rig was written, as the person named it
     * @param next the command to run next
     */
    public static String write(
            RigEstimate estimate, Certainty certainty, Optional<List<RankedGuess>> ranking, String file, String next) {
        Page page = new Page();
        Rig rig = estimate.rig();
        page.line(rig.name() + ", estimated from outside measurements, written to " + file);
        page.gap();
        page.paragraph("", 0, certainty.sentence());
        estimate.notes().forEach(note -> page.paragraph("", 0, note));
        page.heading("Guessed, not measured");
        byBasis(estimate).forEach((basis, fields) -> {
            page.paragraph("  ", 2, basis);
            fields.forEach(path -> page.line(
                    "      " + path + " = " + RigFields.of(rig).shown(path).orElse("")));
        });
        page.heading("Which guess matters most");
        if (ranking.isPresent()) {
            page.paragraph("", 0, GuessRanking.sentence(rig, ranking.get()));
            page.gap();
            table(page, ranking.get());
        } else {
            page.paragraph(
                    "", 0, "The model finds no working state of this rig, so that its guesses cannot be ranked.");
        }
        page.heading("Next");
        page.line("  " + next);
        page.paragraph(
                "  ",
                2,
                "A field that you have measured since: change it in the file and take it out of guesses there.");
        return page.toString();
    }

    private static Map<String, List<String>> byBasis(RigEstimate estimate) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (Guess guess : estimate.guesses()) {
            fields.computeIfAbsent(guess.basis(), basis -> new ArrayList<>()).add(guess.path());
        }
        return fields;
    }

    private static void table(Page page, List<RankedGuess> ranking) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("heat margin when it is", "low", "", "as guessed", "high", ""));
        for (RankedGuess guess : ranking.subList(0, Math.min(SHOWN, ranking.size()))) {
            rows.add(List.of(
                    guess.path(),
                    quantity(guess, guess.low()),
                    ratio(guess.ratioAtLow()),
                    ratio(OptionalDouble.of(guess.ratioNow())),
                    quantity(guess, guess.high()),
                    ratio(guess.ratioAtHigh())));
        }
        page.table(rows);
    }

    private static String quantity(RankedGuess guess, double si) {
        String unit = FieldCatalogue.find(guess.path()).orElseThrow().unit();
        return QuantityWriter.write(si, UnitTable.find(unit, guess.dimension()).orElseThrow());
    }

    private static String ratio(OptionalDouble ratio) {
        return ratio.isPresent() ? Sections.ratio(ratio.getAsDouble()) : "unknown";
    }
}
