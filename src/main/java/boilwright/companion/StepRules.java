package boilwright.companion;

import boilwright.sequence.Action;
import boilwright.sequence.Rule;
import java.util.Optional;

/** Which rule a step of a plan serves. */
final class StepRules {
    private StepRules() {}

    /** The rule that nobody can be sure of when the step was not done; empty when none hangs on it. */
    static Optional<Rule> served(Action action) {
        return Optional.ofNullable(
                switch (action) {
                    case AIR_ROOM -> Rule.AIR_FOR_FLAME;
                    case BACKING_ON -> Rule.BACKING_BEFORE_HEAT;
                    case OPEN_OUTLET -> Rule.OUTLET_OPEN;
                    case COOLING_ON -> Rule.WATER_WITH_HEAT;
                    case LOOK_FORELINE, LOOK_DEGASSED -> Rule.FORELINE_WITH_HEAT;
                    case FILL, LOOK_FIRST_JET -> Rule.HEAT_WITHIN_LIMITS;
                    case LOOK_TOP_JET, LOOK_FULL, CLOSE_VALVE -> Rule.VALVE_WITH_JETS;
                    case ROUGH_CHAMBER, OPEN_VALVE -> Rule.VALVE_BELOW_CROSSOVER;
                    case HEAT_OFF, KEEP, LOOK_JETS_GONE -> Rule.WATER_UNTIL_COLD;
                    case LOOK_COLD -> Rule.BACKING_UNTIL_COLD;
                    case VENT_CHAMBER, LET_AIR_IN -> Rule.AIR_ON_COLD_OIL;
                    case HEAT, RUN, COOLING_OFF, BACKING_OFF, LEAVE_SHUT, OPEN_PUMP -> null;
                });
    }
}
