package boilwright.dashboard.model;

import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Cuts the axis into named stretches. */
final class RunPhases {
    private static final Set<EventKind> ARRIVALS =
            Set.of(EventKind.FRONT_AT_STAGE, EventKind.JET_LIT, EventKind.JET_FULL);

    private final List<RunPhase> phases = new ArrayList<>();
    private double reachedS;

    private RunPhases() {}

    static List<RunPhase> of(
            RunResult warmup, SteadyState steady, RunResult cooldown, double warmS, double restS, double endS) {
        RunPhases phases = new RunPhases();
        List<TimeEvent> events = warmup.events();
        double heatOn = first(events, EventKind.HEAT_ON, 0);
        double vapour = first(events, EventKind.FIRST_VAPOUR, warmS);
        double arrived = first(events, EventKind.FULL_PUMPING, lastArrival(events, vapour));
        phases.upTo(RunPhase.Kind.DEGAS, Math.min(vapour, Math.max(heatOn, first(events, EventKind.DEGASSED, heatOn))));
        phases.upTo(RunPhase.Kind.HEAT, vapour);
        phases.upTo(RunPhase.Kind.FRONT_CLIMBS, arrived);
        phases.upTo(atRest(steady), warmS + restS);
        if (cooldown != null) {
            double safe = first(cooldown.events(), EventKind.AIR_ALLOWED, endS - warmS - restS);
            phases.upTo(RunPhase.Kind.COOLING, warmS + restS + safe);
            phases.upTo(RunPhase.Kind.SAFE_TO_OPEN, endS);
        }
        return List.copyOf(phases.phases);
    }

    private void upTo(RunPhase.Kind kind, double endS) {
        if (endS > reachedS) {
            phases.add(new RunPhase(kind, reachedS, endS));
            reachedS = endS;
        }
    }

    private static RunPhase.Kind atRest(SteadyState steady) {
        if (steady.stages().stream().allMatch(StageState::full)) {
            return RunPhase.Kind.PUMPING;
        }
        return steady.stages().stream().anyMatch(StageState::lit) ? RunPhase.Kind.PARTLY_LIT : RunPhase.Kind.NO_JET;
    }

    private static double first(List<TimeEvent> events, EventKind kind, double otherwise) {
        return events.stream()
                .filter(event -> event.kind() == kind && event.timeS().isPresent())
                .mapToDouble(event -> event.timeS().getAsDouble())
                .min()
                .orElse(otherwise);
    }

    private static double lastArrival(List<TimeEvent> events, double otherwise) {
        return events.stream()
                .filter(event ->
                        ARRIVALS.contains(event.kind()) && event.timeS().isPresent())
                .mapToDouble(event -> event.timeS().getAsDouble())
                .max()
                .orElse(otherwise);
    }
}
