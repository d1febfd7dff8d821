package boilwright.report;

import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanStep;
import boilwright.sequence.RuleFinding;
import boilwright.sequence.Variant;
import java.util.List;
import java.util.stream.Collectors;

/** Words that the forms of a plan have in common. */
public final class PlanTexts {
    /** Above the steps of a plan that is not safe. */
    static final String UP_TO_BREAK =
            "NOT TO BE RUN. These steps come before the limit is passed; there the heat must go off (see: If something fails).";

    static final String CODES =
            "Local codes, the papers of your equipment and licensed practice for gas, mains and pressure stand above this sheet.";

    private static final List<String> BLANKS_FROM_COLD = List.of(
            "Date, who",
            "Charge, level cold",
            "Foreline at heater-on",
            "Watts",
            "Water in",
            "Water out",
            "Water flow, jug",
            "First jet seen at",
            "Top jet seen at",
            "Heat off at");

    private static final List<String> BLANKS_FROM_HOT =
            List.of("Date, who", "Begun at", "Foreline", "Water in", "Water out", "Ended at");

    private PlanTexts() {}

    /** Readings that people forget to write down. */
    static List<String> blanks(Variant variant) {
        return variant.isFromHot() ? BLANKS_FROM_HOT : BLANKS_FROM_COLD;
    }

    static String title(Variant variant) {
        return switch (variant) {
            case FIRST -> "First heating of a fresh charge";
            case NORMAL -> "From cold to pumping to cold";
            case STANDBY -> "Pause with the pump hot";
            case QUICK_STOP -> "Quick stop";
            case EMERGENCY -> "Emergency";
        };
    }

    /** What the times of a clock are counted from. */
    static String clock(Clock clock, Variant variant) {
        if (clock == Clock.FROM_COLD) {
            return "Start, h:mm:ss after the backing pump is switched on";
        }
        return variant == Variant.STANDBY
                ? "Pause, h:mm:ss after it begins (the time for work is an example)"
                : "Stop, h:mm:ss after it begins";
    }

    /** When a step is overdue; empty for one that just follows. */
    static String overdue(PlanStep step) {
        return step.latestS().isPresent() && !step.words().otherwise().isEmpty()
                ? "Not by " + EventWords.clock(step.latestS().getAsDouble()) + ": "
                : "Else: ";
    }

    /** Whether a rule is kept, in a word or two. */
    public static String status(RuleFinding finding) {
        return switch (finding.status()) {
            case BROKEN -> "BROKEN";
            case NOT_PROVEN -> "not proven";
            case KEPT -> "kept";
            case NOT_ASKED -> "not asked";
        };
    }

    /** A step in the fewest words: those of the plan or, in a file that has none, what it does. */
    static String what(PlanStep step) {
        return step.words().what().isEmpty()
                ? step.action().id().replace('-', ' ')
                : step.words().what();
    }

    /** The rig and its oil. */
    static String subject(PlanAnswer answer) {
        return answer.check().rig().name() + ", charged with " + answer.check().fluidTitle();
    }

    /** Rules that a plan was proven to keep, in one line. */
    static String kept(PlanAnswer answer) {
        long kept = answer.findings().stream()
                .filter(f -> f.status() == RuleFinding.Status.KEPT)
                .count();
        String open = answer.findings().stream()
                .filter(f -> f.status() == RuleFinding.Status.NOT_PROVEN)
                .map(f -> f.rule().sentence())
                .collect(Collectors.joining(" "));
        return kept + " rules held against the simulated run." + (open.isEmpty() ? "" : " Not proven: " + open);
    }
}
