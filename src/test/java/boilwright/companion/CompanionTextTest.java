package boilwright.companion;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.Sentences;
import boilwright.sequence.Action;
import boilwright.sequence.Rule;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CompanionTextTest {
    @Test
    void everySentenceIsThereOnceAndShowsTheValuesItTakes() {
        for (CompanionText text : CompanionText.values()) {
            String[] values = IntStream.range(0, text.argumentCount())
                    .mapToObj(i -> "<value " + i + ">")
                    .toArray(String[]::new);
            String said = text.say(values);
            assertThat(values)
                    .as(text.name())
                    .allSatisfy(value -> assertThat(said).contains(value));
            assertThat(said).isNotBlank().doesNotContain("{");
            assertThat(new MessageFormat(text.pattern(), Locale.ROOT).getFormatsByArgumentIndex())
                    .hasSize(text.argumentCount());
            assertThat(text.pattern().replace("''", "")).as(text.name()).doesNotContain("'");
        }
        assertThat(Collections.list(ResourceBundle.getBundle("boilwright.text.companion", Locale.ROOT)
                        .getKeys()))
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(CompanionText.values())
                        .map(Sentences::bundleKey)
                        .toList());
    }

    /** A rule that no step serves could never be named when somebody skips what proves it; the shock is told by no single step. */
    @Test
    void everyRuleButTheShockIsServedBySomeStep() {
        Set<Rule> served = Arrays.stream(Action.values())
                .flatMap(action -> StepRules.served(action).stream())
                .collect(Collectors.toSet());
        assertThat(EnumSet.complementOf(EnumSet.copyOf(served))).containsExactly(Rule.NO_COLD_SHOCK);
    }
}
