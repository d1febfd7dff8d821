package boilwright.sequence;

import boilwright.answers.Cautions;
import boilwright.answers.Say;

/** A pause: the pump stays hot behind its shut valve. */
final class PauseSteps {
    /** Time for work in the open chamber, s: an example, for the clock has to begin somewhere. */
    private static final double WORK_S = 600;

    private PauseSteps() {}

    static void add(StepList list) {
        SimulatedRun run = list.run();
        Moment start = new Moment(Clock.FROM_HOT, 0);
        boolean opens = list.setup().isRoughedApart();
        if (opens) {
            list.add(
                    Action.CLOSE_VALVE,
                    start,
                    SequenceText.WHAT_CLOSE_VALVE.say(),
                    "",
                    SequenceText.ELSE_CLOSE_VALVE.say(),
                    SequenceText.WHY_CLOSE_VALVE.say(),
                    "");
        }
        String bears = Say.pressure(
                Math.min(list.setup().forelineLimitPa(), run.check().steady().criticalBackingPa()));
        list.add(
                Action.KEEP,
                start,
                SequenceText.WHAT_KEEP.say(),
                "",
                SequenceText.ELSE_KEEP.say(bears),
                SequenceText.WHY_KEEP.say(),
                list.cautions(Cautions.Place.HEAT));
        if (opens) {
            list.add(
                    Action.VENT_CHAMBER,
                    start,
                    SequenceText.WHAT_VENT_CHAMBER.say(),
                    "",
                    "",
                    SequenceText.WHY_VENT_CHAMBER.say(),
                    list.cautions(Cautions.Place.OPENING));
            Moment back = new Moment(Clock.FROM_HOT, WORK_S);
            double opened = StartSteps.handOver(list, back, new Moment(Clock.FROM_HOT, 2 * WORK_S));
            StartSteps.run(list, new Moment(Clock.FROM_HOT, opened));
        } else {
            StartSteps.run(list, start);
        }
    }
}
