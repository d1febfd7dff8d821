package boilwright.errors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Keys and sentences belong together one to one, and every value given to a sentence is shown in it. */
class MessageBundleTest {
    private static final ResourceBundle TEXT = ResourceBundle.getBundle("boilwright.text.messages", Locale.ROOT);

    static Stream<MessageKey> keys() {
        return Stream.of(MessageKey.values());
    }

    @Test
    void everyKeyHasASentenceAndEverySentenceAKey() {
        assertThat(TEXT.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        keys().map(MessageKey::bundleKey).collect(Collectors.toList()));
    }

    @ParameterizedTest
    @MethodSource("keys")
    void everyValueIsShownAndNoPlaceholderIsLeftOver(MessageKey key) {
        String[] values = IntStream.range(0, key.argumentCount())
                .mapToObj(index -> "<value " + index + ">")
                .toArray(String[]::new);
        String text = Message.of(key, values).text();
        assertThat(List.of(values)).allSatisfy(value -> assertThat(text).contains(value));
        assertThat(text).doesNotContain("{").doesNotContain("}");
    }

    /** A single quote that is not written twice silently vanishes and can take a placeholder with it. */
    @ParameterizedTest
    @MethodSource("keys")
    void singleQuotesAreWrittenTwice(MessageKey key) {
        assertThat(Message.pattern(key).replace("''", "")).doesNotContain("'");
    }
}
