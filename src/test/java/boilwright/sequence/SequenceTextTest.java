package boilwright.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.SentenceBundle;
import org.junit.jupiter.api.Test;

class SequenceTextTest {
    @Test
    void everySentenceIsThereOnceAndShowsTheValuesItTakes() {
        SentenceBundle.check(
                "boilwright.text.sequence",
                SequenceText.values(),
                SequenceText::argumentCount,
                SequenceText::pattern,
                SequenceText::say);
    }

    @Test
    void everyRuleStatesItsBasis() {
        for (Rule rule : Rule.values()) {
            assertThat(rule.sentence()).as(rule.id()).endsWith(".");
            assertThat(rule.basis()).as(rule.id()).hasSizeGreaterThan(30);
        }
    }
}
