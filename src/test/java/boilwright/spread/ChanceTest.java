package boilwright.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceTest {
    /** Newcombe, Stat. Med. 17 (1998) 857, table I, score method without correction, 95 %; from memory. */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void theErrorIsThePublishedOne(int cases, int samples, double low, double high) {
        Chance chance = new Chance(cases, samples);
        assertThat(chance.low()).isCloseTo(low, within(5e-5));
        assertThat(chance.high()).isCloseTo(high, within(5e-5));
        assertThat(chance.share()).isBetween(chance.low(), chance.high());
    }

    @Test
    void noneAndAllAreCertainAtOneEnd() {
        assertThat(new Chance(0, 50).low()).isZero();
        assertThat(new Chance(50, 50).high()).isEqualTo(1);
        assertThat(new Chance(50, 50).low()).isLessThan(1);
        assertThat(new Chance(0, 0).isKnown()).isFalse();
    }

    @Test
    void percentSaysWhenItIsNotQuiteNoneOrAll() {
        assertThat(Percent.of(0)).isEqualTo("0 %");
        assertThat(Percent.of(1e-6)).isEqualTo("<0.1 %");
        assertThat(Percent.of(0.004)).isEqualTo("0.4 %");
        assertThat(Percent.of(0.5)).isEqualTo("50 %");
        assertThat(Percent.of(0.997)).isEqualTo("99.7 %");
        assertThat(Percent.of(0.99999)).isEqualTo(">99.9 %");
        assertThat(Percent.of(1)).isEqualTo("100 %");
    }
}
