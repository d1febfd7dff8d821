package boilwright.sequence;

import boilwright.answers.Cautions;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Steps of a plan in the making, with what all of them need to be worded. */
final class StepList {
    /** A wait is overdue when it lasts longer than computed by this share of it; engineering judgement. */
    private static final double OVERDUE_SHARE = 0.5;

    private static final double OVERDUE_LEAST_S = 120;

    private final SimulatedRun run;
    private final PumpSetup setup;
    private final List<PlanStep> steps = new ArrayList<>();

    StepList(SimulatedRun run) {
        this.run = run;
        setup = PumpSetup.of(run.rig());
    }

    SimulatedRun run() {
        return run;
    }

    PumpSetup setup() {
        return setup;
    }

    List<PlanStep> steps() {
        return steps;
    }

    /** A step that just follows. */
    void add(Action action, Moment when, String what, String hold, String otherwise, String why, String caution) {
        add(action, when, HeatLevel.OFF, OptionalDouble.empty(), what, hold, otherwise, why, caution);
    }

    /** A step that is waited for from some moment on. */
    void await(Action action, Moment when, double fromS, String what, String hold, String otherwise, String why) {
        double late = when.atS() + Math.max(OVERDUE_LEAST_S, OVERDUE_SHARE * (when.atS() - fromS));
        add(action, when, HeatLevel.OFF, OptionalDouble.of(late), what, hold, otherwise, why, "");
    }

    void add(
            Action action,
            Moment when,
            HeatLevel level,
            OptionalDouble latestS,
            String what,
            String hold,
            String otherwise,
            String why,
            String caution) {
        steps.add(new PlanStep(action, when, level, latestS, new PlanStep.Words(what, hold, otherwise, why, caution)));
    }

    /** Times that people read are whole seconds, never before what was computed. */
    static double up(double seconds) {
        return Math.ceil(seconds - 1e-9);
    }

    /** The cautions that belong to a place. */
    String cautions(Cautions.Place place) {
        return Cautions.placed(run.rig(), run.fluid(), run.check().steady().hottestOutsideK()).stream()
                .filter(c -> c.place() == place)
                .map(Cautions.Caution::sentence)
                .collect(Collectors.joining(" "));
    }
}
