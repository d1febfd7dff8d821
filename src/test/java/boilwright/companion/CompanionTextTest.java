package boilwright.companion;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.sequence.Action;
import boilwright.sequence.Rule;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CompanionTextTest {
    /** A rule that no step serves could never be named when somebody skips what proves it; the shock is told by no single step. */
    @Test
    void everyRuleButTheShockIsServedBySomeStep() {
        Set<Rule> served = Arrays.stream(Action.values())
                .flatMap(action -> StepWarnings.served(action).stream())
                .collect(Collectors.toSet());
        assertThat(EnumSet.complementOf(EnumSet.copyOf(served))).containsExactly(Rule.NO_COLD_SHOCK);
    }
}
