package boilwright.errors;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Collections;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;

/** What holds for every bundle of sentences and the constants that name them. */
public final class SentenceBundle {
    private SentenceBundle() {}

    /** Every sentence is there once, shows the values it takes, and loses no quote. */
    public static <E extends Enum<E>> void check(
            String bundle,
            E[] constants,
            ToIntFunction<E> argumentCount,
            Function<E, String> pattern,
            BiFunction<E, String[], String> say) {
        for (E text : constants) {
            int count = argumentCount.applyAsInt(text);
            String[] values =
                    IntStream.range(0, count).mapToObj(i -> "<value " + i + ">").toArray(String[]::new);
            String said = say.apply(text, values);
            assertThat(values)
                    .as(text.name())
                    .allSatisfy(value -> assertThat(said).contains(value));
            assertThat(said).isNotBlank().doesNotContain("{");
            assertThat(new MessageFormat(pattern.apply(text), Locale.ROOT).getFormatsByArgumentIndex())
                    .hasSize(count);
            assertThat(pattern.apply(text).replace("''", "")).as(text.name()).doesNotContain("'");
        }
        assertThat(Collections.list(
                        ResourceBundle.getBundle(bundle, Locale.ROOT).getKeys()))
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(constants).map(Sentences::bundleKey).toList());
    }
}
