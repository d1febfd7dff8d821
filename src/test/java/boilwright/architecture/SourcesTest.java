package boilwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What no byte code shows: the form of the source files themselves. */
class SourcesTest {
    private static final Path MAIN = Path.of("src", "main", "java", "boilwright");
    private static final int MOST_LINES = 400;

    @Test
    void everyPackageSaysWhatBelongsThere() throws IOException {
        for (Path folder : sources().stream().map(Path::getParent).distinct().toList()) {
            assertThat(folder.resolve("package-info.java"))
                    .content()
                    .contains("/**")
                    .hasSizeGreaterThan(150);
        }
    }

    @Test
    void noClassIsLongerThanCanBeReadAtASitting() throws IOException {
        assertThat(sources())
                .allSatisfy(file -> assertThat(lines(file)).as(file.toString()).hasSizeLessThanOrEqualTo(MOST_LINES));
    }

    @Test
    void nothingIsLeftForLater() throws IOException {
        String[] marks = {"TO" + "DO", "FIX" + "ME"};
        assertThat(sources())
                .allSatisfy(file -> assertThat(String.join("\n", lines(file)))
                        .as(file.toString())
                        .doesNotContain(marks));
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
