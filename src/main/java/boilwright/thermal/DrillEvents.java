package boilwright.thermal;

import boilwright.rig.Schedule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** What happens in a drill, in order of time, each with its reason. */
final class DrillEvents {
    private DrillEvents() {}

    static List<TimeEvent> of(PumpModel model, RunWatches watches, RunSimulator.Script script) {
        List<TimeEvent> events = new ArrayList<>();
        script.happenings()
                .forEach(h -> events.add(
                        new TimeEvent(h.kind(), "", OptionalDouble.of(h.change().atS()), h.sentence())));
        double before = 0;
        for (Schedule.Step step : script.steps()) {
            double level = step instanceof Schedule.Power power ? power.fraction() : 1;
            if (level == 0 && before > 0) {
                events.add(
                        new TimeEvent(EventKind.HEAT_OFF, "", OptionalDouble.of(step.atS()), ModelText.HEAT_OFF.say()));
            }
            before = level;
        }
        for (DrillLimit limit : DrillLimit.values()) {
            OptionalDouble t = watches.first(WatchKind.DRILL_LIMIT, limit.name(), true);
            if (t.isPresent()) {
                events.add(new TimeEvent(EventKind.LIMIT_REACHED, "", t, sentence(limit)));
            }
        }
        for (int k = 0; k < model.jets.stages; k++) {
            String stage = watches.stage(k);
            OptionalDouble lost = watches.lit(k).lastOff();
            if (lost.isPresent()) {
                events.add(new TimeEvent(EventKind.JET_LOST, stage, lost, ModelText.JET_LOST.say(stage)));
            }
        }
        events.sort(Comparator.comparingDouble(e -> e.timeS().orElse(Double.MAX_VALUE)));
        return events;
    }

    private static String sentence(DrillLimit limit) {
        return switch (limit) {
            case FILM -> ModelText.DRILL_FILM.say();
            case CAP -> ModelText.DRILL_CAP.say();
            case WATER_BOILS -> ModelText.DRILL_BOILS.say();
            case COLD_SHOCK -> ModelText.DRILL_SHOCK.say();
            case OIL -> ModelText.DRILL_OIL.say();
            case OIL_LOSS -> ModelText.DRILL_OIL_LOSS.say();
            case FORELINE -> ModelText.DRILL_FORELINE.say();
            case TOUCH -> ModelText.DRILL_TOUCH.say();
        };
    }
}
