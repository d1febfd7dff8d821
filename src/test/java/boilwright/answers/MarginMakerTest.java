package boilwright.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MarginMakerTest {
    private static MarginMaker maker() {
        return MarginMaker.of(MarginId.CAP).cure(AnswerText.CURE_CAP).basis("basis");
    }

    @Test
    void temperaturesAreMeasuredFromTheRoom() {
        Margin margin = maker().value(333.15).atMost(366.15).from(293.15).make();
        assertThat(margin.ratio().getAsDouble()).isCloseTo(73.0 / 40.0, within(1e-12));
        assertThat(margin.status()).isEqualTo(Margin.Status.HOLDS);
        assertThat(margin.cure()).isEmpty();
    }

    @Test
    void oneIsAtTheLimitAndBelowItFails() {
        assertThat(maker().value(10).atLeast(10).make().status()).isEqualTo(Margin.Status.TIGHT);
        Margin under = maker().value(9.99).atLeast(10).make();
        assertThat(under.status()).isEqualTo(Margin.Status.FAILS);
        assertThat(under.cure()).isNotEmpty();
        assertThat(maker().value(10.01).atMost(10).make().status()).isEqualTo(Margin.Status.FAILS);
    }

    @Test
    void anythingColderThanTheRoomIsFarFromAHotLimit() {
        Margin margin = maker().value(290).atMost(366.15).from(293.15).make();
        assertThat(margin.ratio().getAsDouble()).isEqualTo(Margins.FAR);
    }

    @Test
    void withoutALimitItIsUnknownAndKeepsItsBasis() {
        Margin margin = maker().value(300).side(Margin.Side.AT_MOST).make();
        assertThat(margin.status()).isEqualTo(Margin.Status.UNKNOWN);
        assertThat(margin.ratio()).isEmpty();
        assertThat(margin.basis()).isEqualTo("basis");
    }

    @Test
    void nothingNeededIsEnough() {
        assertThat(maker().value(0).atLeast(0).make().ratio().getAsDouble()).isEqualTo(Margins.FAR);
    }
}
