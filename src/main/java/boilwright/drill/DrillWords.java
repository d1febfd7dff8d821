package boilwright.drill;

import boilwright.answers.Say;
import boilwright.rig.Protection.Load;
import boilwright.rig.Protection.TripKind;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.DrillRun.LimitTime;
import boilwright.thermal.Fault;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** A drill in words. */
final class DrillWords {
    /** What happens sooner happens at once, s. */
    static final double AT_ONCE_S = 1;

    private DrillWords() {}

    static String title(DrillLimit limit) {
        return DrillSentence.valueOf("LIMIT_" + limit.name()).say();
    }

    static String title(Fault fault) {
        return DrillSentence.valueOf("FAULT_" + fault.name()).say();
    }

    static String title(TripKind kind) {
        return DrillSentence.valueOf("KIND_" + kind.name()).say();
    }

    static String kept(Set<Load> keeps) {
        return keeps.stream()
                .sorted()
                .map(k -> DrillSentence.valueOf("KEEPS_" + k.name()).say())
                .collect(Collectors.joining(", "));
    }

    /** A value that a trip watches, with its unit. */
    static String value(TripKind kind, double si) {
        return switch (kind) {
            case WATER_FLOW -> Say.flow(si);
            case FORELINE_PRESSURE -> Say.pressure(si);
            default -> Say.temperature(si);
        };
    }

    /** The limits that were passed and harm something, soonest first. */
    static List<LimitTime> passed(DrillRun run) {
        return run.limits().stream()
                .filter(l -> l.limit().harms() && l.passedS().isPresent() && !l.before())
                .sorted(Comparator.comparingDouble(LimitTime::orNever))
                .toList();
    }

    /** What happens after how long, or at once. */
    static String after(DrillSentence later, DrillSentence atOnce, String what, double seconds) {
        return seconds < AT_ONCE_S ? atOnce.say(what) : later.say(what, Say.time(seconds));
    }

    static String verdict(
            String fault,
            DrillRun heatOn,
            boolean heatEnds,
            OptionalDouble delayS,
            Optional<DrillLimit> governing,
            List<DrillLimit> notKept) {
        StringBuilder text = new StringBuilder(fault);
        List<LimitTime> passed = passed(heatOn);
        String list = passed.stream()
                .map(l -> after(DrillSentence.AFTER, DrillSentence.AT_ONCE, title(l.limit()), l.orNever()))
                .collect(Collectors.joining(", "));
        String watched = Say.time(heatOn.watchedS());
        if (passed.isEmpty()) {
            add(text, (heatEnds ? DrillSentence.NOTHING : DrillSentence.NOTHING_HEAT_ON).say(watched));
        } else {
            add(text, (heatEnds ? DrillSentence.THEN : DrillSentence.HEAT_ON).say(list));
        }
        String before = heatOn.limits().stream()
                .filter(l -> l.limit().harms() && l.before())
                .map(l -> title(l.limit()))
                .collect(Collectors.joining(", "));
        if (!before.isEmpty()) {
            add(text, DrillSentence.BEFORE_FAULT.say(before));
        }
        if (heatOn.firstJetLostS().isPresent()) {
            String first = Say.time(heatOn.firstJetLostS().getAsDouble());
            add(
                    text,
                    heatOn.jetsGoneS().isPresent()
                            ? DrillSentence.JETS.say(
                                    first, Say.time(heatOn.jetsGoneS().getAsDouble()))
                            : DrillSentence.JETS_SOME.say(first));
        }
        if (heatOn.brokenOff()) {
            add(text, DrillSentence.BROKEN_OFF.say(watched));
        }
        if (delayS.isPresent() && governing.isPresent()) {
            add(text, DrillSentence.DELAY.say(Say.time(delayS.getAsDouble()), title(governing.get())));
        }
        if (!notKept.isEmpty() && !heatEnds) {
            add(
                    text,
                    DrillSentence.NOT_KEPT.say(
                            notKept.stream().map(DrillWords::title).collect(Collectors.joining(", "))));
        }
        return text.toString();
    }

    private static void add(StringBuilder text, String sentence) {
        text.append(' ').append(sentence);
    }
}
