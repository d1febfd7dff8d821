package boilwright.spread;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.Sentences;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SpreadSentenceTest {
    @Test
    void everyConstantHasASentenceAndEverySentenceAConstant() {
        ResourceBundle bundle = ResourceBundle.getBundle("boilwright.text.spread", Locale.ROOT);
        assertThat(bundle.keySet())
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(SpreadSentence.values())
                        .map(Sentences::bundleKey)
                        .toList());
    }

    @ParameterizedTest
    @EnumSource(SpreadSentence.class)
    void everyValueIsShown(SpreadSentence text) {
        String[] values = IntStream.range(0, text.argumentCount())
                .mapToObj(i -> "<" + i + ">")
                .toArray(String[]::new);
        assertThat(List.of(values))
                .allSatisfy(value -> assertThat(text.say(values)).contains(value));
        assertThat(text.say(values)).isNotBlank().doesNotContain("{", "}");
        assertThat(text.pattern().replace("''", "")).doesNotContain("'");
    }
}
