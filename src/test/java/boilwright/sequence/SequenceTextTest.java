package boilwright.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SequenceTextTest {
    @Test
    void everyRuleStatesItsBasis() {
        for (Rule rule : Rule.values()) {
            assertThat(rule.sentence()).as(rule.id()).endsWith(".");
            assertThat(rule.basis()).as(rule.id()).hasSizeGreaterThan(30);
        }
    }
}
