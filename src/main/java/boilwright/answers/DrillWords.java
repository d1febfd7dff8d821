package boilwright.answers;

import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.DrillRun.LimitTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** A drill in words. */
final class DrillWords {
    private DrillWords() {}

    static String title(DrillLimit limit) {
        return switch (limit) {
            case FILM -> AnswerText.DRILL_TITLE_FILM.say();
            case CAP -> AnswerText.DRILL_TITLE_CAP.say();
            case WATER_BOILS -> AnswerText.DRILL_TITLE_BOILS.say();
            case COLD_SHOCK -> AnswerText.DRILL_TITLE_SHOCK.say();
            case OIL -> AnswerText.DRILL_TITLE_OIL.say();
            case OIL_LOSS -> AnswerText.DRILL_TITLE_OIL_LOSS.say();
            case TOUCH -> AnswerText.DRILL_TITLE_TOUCH.say();
        };
    }

    static String verdict(
            DrillRun heatOn, OptionalDouble delayS, Optional<DrillLimit> governing, List<DrillLimit> notKept) {
        StringBuilder text = new StringBuilder();
        List<LimitTime> passed = heatOn.limits().stream()
                .filter(l -> l.limit().harms() && l.passedS().isPresent())
                .sorted(Comparator.comparingDouble(LimitTime::orNever))
                .toList();
        if (passed.isEmpty()) {
            return AnswerText.DRILL_NOTHING.say(Say.time(heatOn.watchedS()));
        }
        String first = passed.stream()
                .map(l -> AnswerText.DRILL_AFTER.say(title(l.limit()), Say.time(l.orNever())))
                .collect(Collectors.joining(", "));
        text.append(AnswerText.DRILL_HEAT_ON.say(first));
        if (heatOn.brokenOff()) {
            text.append(' ').append(AnswerText.DRILL_BROKEN_OFF.say(Say.time(heatOn.watchedS())));
        }
        if (delayS.isPresent() && governing.isPresent()) {
            text.append(' ').append(AnswerText.DRILL_DELAY.say(Say.time(delayS.getAsDouble()), title(governing.get())));
        }
        if (!notKept.isEmpty()) {
            String which = notKept.stream().map(DrillWords::title).collect(Collectors.joining(", "));
            text.append(' ').append(AnswerText.DRILL_NOT_KEPT.say(which));
        }
        return text.toString();
    }
}
