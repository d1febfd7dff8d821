package boilwright.dashboard.model;

import boilwright.thermal.RunResult;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Cuts the axis into named stretches. */
final class RunPhases {
    private static final Set<String> ARRIVALS = Set.of("front-at-stage", "jet-lit", "jet-full");

    private final List<RunPhase> phases = new ArrayList<>();
    private double reachedS;

    private RunPhases() {}

    static List<RunPhase> of(
            RunResult warmup, SteadyState steady, RunResult cooldown, double warmS, double restS, double endS) {
        RunPhases phases = new RunPhases();
        List<TimeEvent> events = warmup.events();
        double heatOn = first(events, "heat-on", 0);
        double vapour = first(events, "first-vapour", warmS);
        double arrived = first(events, "full-pumping", lastArrival(events, vapour));
        phases.upTo(RunPhase.Kind.DEGAS, Math.min(vapour, Math.max(heatOn, first(events, "degassed", heatOn))));
        phases.upTo(RunPhase.Kind.HEAT, vapour);
        phases.upTo(RunPhase.Kind.FRONT_CLIMBS, arrived);
        phases.upTo(atRest(steady), warmS + restS);
        if (cooldown != null) {
            double safe = first(cooldown.events(), "air-allowed", endS - warmS - restS);
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

    private static double first(List<TimeEvent> events, String id, double otherwise) {
        return events.stream()
                .filter(event -> event.id().equals(id) && event.timeS().isPresent())
                .mapToDouble(event -> event.timeS().getAsDouble())
                .min()
                .orElse(otherwise);
    }

    private static double lastArrival(List<TimeEvent> events, double otherwise) {
        return events.stream()
                .filter(event -> ARRIVALS.contains(event.id()) && event.timeS().isPresent())
                .mapToDouble(event -> event.timeS().getAsDouble())
                .max()
                .orElse(otherwise);
    }
}
