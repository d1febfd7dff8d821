package boilwright.rise;

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

class RiseSentenceTest {
    @Test
    void everyConstantHasASentenceAndEverySentenceAConstant() {
        ResourceBundle bundle = ResourceBundle.getBundle("boilwright.text.rise", Locale.ROOT);
        assertThat(bundle.keySet())
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(RiseSentence.values())
                        .map(Sentences::bundleKey)
                        .toList());
    }

    @ParameterizedTest
    @EnumSource(RiseSentence.class)
    void everyValueIsShown(RiseSentence sentence) {
        String[] values = IntStream.range(0, sentence.argumentCount())
                .mapToObj(i -> "<" + i + ">")
                .toArray(String[]::new);
        assertThat(List.of(values))
                .allSatisfy(value -> assertThat(sentence.say(values)).contains(value));
        assertThat(sentence.say(values)).isNotBlank().doesNotContain("{", "}");
        assertThat(sentence.pattern().replace("''", "")).doesNotContain("'");
    }
}
