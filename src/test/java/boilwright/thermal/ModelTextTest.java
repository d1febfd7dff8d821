package boilwright.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.Sentences;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

class ModelTextTest {
    @Test
    void everySentenceIsThereOnceAndTakesTheValuesItSays() {
        for (ModelText text : ModelText.values()) {
            MessageFormat pattern = new MessageFormat(text.pattern(), Locale.ROOT);
            int highest = pattern.getFormatsByArgumentIndex().length;
            assertThat(highest).as(text.name()).isLessThanOrEqualTo(text.argumentCount());
        }
        List<String> inBundle = Collections.list(
                ResourceBundle.getBundle("boilwright.text.model", Locale.ROOT).getKeys());
        assertThat(inBundle)
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(ModelText.values())
                        .map(Sentences::bundleKey)
                        .toList());
    }
}
