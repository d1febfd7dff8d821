package boilwright.thermal;

import boilwright.rig.Schedule;

/** Sets a source to a level of a schedule. */
final class RunSchedule {
    private RunSchedule() {}

    static void apply(SourceBlock source, Schedule.Step step) {
        source.setLevel(step.level(), step.holdK().orElse(Double.POSITIVE_INFINITY));
    }
}
