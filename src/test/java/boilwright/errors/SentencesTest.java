package boilwright.errors;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.ResourceBundle;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every enum of sentences and its bundle: each sentence is there once, shows its values and loses no quote. */
class SentencesTest {
    private static final Path MAIN = Path.of("src/main/java");

    /** Every enum in the product that keeps its sentences in a bundle of its own. */
    static List<Class<?>> enums() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(SentencesTest::keepsSentences)
                    .sorted()
                    .<Class<?>>map(SentencesTest::type)
                    .toList();
        }
    }

    private static boolean keepsSentences(Path file) {
        try {
            return Files.readString(file).contains("new Sentences(\"boilwright.text.");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Class<?> type(Path file) {
        String path = MAIN.relativize(file).toString();
        try {
            return Class.forName(path.substring(0, path.length() - ".java".length())
                    .replace(file.getFileSystem().getSeparator(), "."));
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void thereAreTenOrMore() throws IOException {
        assertThat(enums()).hasSizeGreaterThanOrEqualTo(10).allMatch(Class::isEnum);
    }

    @ParameterizedTest
    @MethodSource("enums")
    void everyConstantHasASentenceThatShowsItsValues(Class<?> type) throws ReflectiveOperationException {
        Sentences sentences = (Sentences) open(type, "SENTENCES").get(null);
        ResourceBundle bundle = (ResourceBundle) open(Sentences.class, "bundle").get(sentences);
        Field count = open(type, "argumentCount");
        Method say = type.getDeclaredMethod("say", String[].class);
        say.setAccessible(true);
        for (Object constant : type.getEnumConstants()) {
            String pattern = bundle.getString(Sentences.bundleKey((Enum<?>) constant));
            String[] values = IntStream.range(0, count.getInt(constant))
                    .mapToObj(i -> "<value " + i + ">")
                    .toArray(String[]::new);
            String said = (String) say.invoke(constant, (Object) values);
            assertThat(said).as("%s", constant).isNotBlank().doesNotContain("{", "}");
            for (int i = 0; i < values.length; i++) {
                // a sentence may leave a value out that its siblings show, but never asks for one more
                if (pattern.contains("{" + i)) {
                    assertThat(said).as("%s", constant).contains(values[i]);
                }
            }
            assertThat(pattern.replace("''", "")).as("%s", constant).doesNotContain("'");
        }
        assertThat(bundle.keySet())
                .as("%s", type)
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(type.getEnumConstants())
                        .map(constant -> Sentences.bundleKey((Enum<?>) constant))
                        .toList());
    }

    private static Field open(Class<?> type, String name) throws NoSuchFieldException {
        Field field = type.getDeclaredField(name);
        field.setAccessible(true);
        return field;
    }
}
