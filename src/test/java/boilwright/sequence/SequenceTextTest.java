package boilwright.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.Sentences;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Collections;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SequenceTextTest {
    @Test
    void everySentenceIsThereOnceAndShowsTheValuesItTakes() {
        for (SequenceText text : SequenceText.values()) {
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
        assertThat(Collections.list(ResourceBundle.getBundle("boilwright.text.sequence", Locale.ROOT)
                        .getKeys()))
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(SequenceText.values())
                        .map(Sentences::bundleKey)
                        .toList());
    }

    @Test
    void everyRuleStatesItsBasis() {
        for (Rule rule : Rule.values()) {
            assertThat(rule.sentence()).as(rule.id()).endsWith(".");
            assertThat(rule.basis()).as(rule.id()).hasSizeGreaterThan(30);
        }
    }
}
