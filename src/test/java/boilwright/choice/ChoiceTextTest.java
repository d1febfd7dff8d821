package boilwright.choice;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.Sentences;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

class ChoiceTextTest {
    @Test
    void everySentenceIsThereOnceAndTakesTheValuesItSays() {
        for (ChoiceText text : ChoiceText.values()) {
            MessageFormat pattern = new MessageFormat(text.pattern(), Locale.ROOT);
            int highest = pattern.getFormatsByArgumentIndex().length;
            assertThat(highest).as(text.name()).isEqualTo(text.argumentCount());
        }
        List<String> inBundle = Collections.list(
                ResourceBundle.getBundle("boilwright.text.choice", Locale.ROOT).getKeys());
        assertThat(inBundle)
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(ChoiceText.values())
                        .map(Sentences::bundleKey)
                        .toList());
    }
}
