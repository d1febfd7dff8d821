package boilwright.sequence;

import boilwright.rig.Schedule;
import java.util.ArrayList;
import java.util.List;

/** Schedules of heat that a plan asks for in place of the rig's own. */
final class HeatChange {
    /** Share of a schedule's first power with which a fresh charge is heated; engineering judgement. */
    private static final double GENTLE = 0.5;
    /** Times that differ by less are the same, s. */
    private static final double SAME_S = 0.5;

    private HeatChange() {}

    /**
     * A schedule that heats with half its first power for a while and then goes on as it would have begun.
     *
     * @param own the rig's own; it must heat
     * @param gentleS how long, s
     */
    static Schedule gentle(Schedule own, double gentleS) {
        List<Schedule.Step> steps = new ArrayList<>();
        double begin = own.heatOnS();
        boolean started = false;
        for (Schedule.Step step : own.steps()) {
            HeatLevel level = HeatLevel.of(step);
            if (!started && level.isOn()) {
                started = true;
                steps.add(new Schedule.Power(step.atS(), GENTLE * level.fraction()));
            }
            steps.add(started ? level.at(step.atS() + gentleS) : step);
        }
        if (begin > 0 && !(steps.get(0).atS() == 0)) {
            steps.add(0, new Schedule.Power(0, 0));
        }
        return new Schedule(steps);
    }

    /** A schedule that heats with the level that is held once hot from the first heat on. */
    static Schedule withoutBoost(Schedule own) {
        double begin = own.heatOnS();
        Schedule.Step held = own.last().at(begin);
        return begin > 0 ? new Schedule(List.of(new Schedule.Power(0, 0), held)) : new Schedule(List.of(held));
    }

    /** The schedule that a plan's own steps make, counted from the run's time 0, s from cold; empty when it never heats. */
    static List<Schedule.Step> of(Plan plan, double zeroS) {
        List<Schedule.Step> steps = new ArrayList<>();
        double last = 0;
        for (PlanStep step : plan.steps()) {
            boolean heats = step.action() == Action.HEAT || step.action() == Action.HEAT_OFF;
            if (heats && step.moment().clock() == Clock.FROM_COLD) {
                double at = Math.max(last, step.moment().atS() - zeroS);
                HeatLevel level = step.action() == Action.HEAT ? step.level() : HeatLevel.OFF;
                if (!steps.isEmpty() && steps.get(steps.size() - 1).atS() == at) {
                    steps.remove(steps.size() - 1);
                }
                steps.add(level.at(at));
                last = at;
            }
        }
        if (!steps.isEmpty() && steps.get(0).atS() > 0) {
            steps.add(0, HeatLevel.OFF.at(0));
        }
        return steps;
    }

    /** Whether two schedules heat alike. */
    static boolean same(List<Schedule.Step> one, List<Schedule.Step> other) {
        List<Schedule.Step> a = merged(one);
        List<Schedule.Step> b = merged(other);
        boolean same = a.size() == b.size();
        for (int i = 0; same && i < a.size(); i++) {
            same = Math.abs(a.get(i).atS() - b.get(i).atS()) < SAME_S
                    && HeatLevel.of(a.get(i)).equals(HeatLevel.of(b.get(i)));
        }
        return same;
    }

    /** Without steps that change nothing. */
    private static List<Schedule.Step> merged(List<Schedule.Step> steps) {
        List<Schedule.Step> list = new ArrayList<>();
        HeatLevel before = HeatLevel.OFF;
        for (Schedule.Step step : steps) {
            HeatLevel level = HeatLevel.of(step);
            if (!level.equals(before)) {
                list.add(step);
            }
            before = level;
        }
        return list;
    }
}
