package boilwright.thermal;

import boilwright.rig.Schedule;

/** Sets a source to a level of a schedule. */
final class RunSchedule {
    private RunSchedule() {}

    static void apply(SourceBlock source, Schedule.Step step) {
        if (step instanceof Schedule.HoldOil hold) {
            source.setLevel(1, hold.oilK());
        } else {
            source.setLevel(((Schedule.Power) step).fraction(), Double.POSITIVE_INFINITY);
        }
    }
}
