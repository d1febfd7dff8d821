package boilwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What no byte code shows: the form of the source files themselves. */
class SourcesTest {
    private static final Path MAIN = Path.of("src", "main", "java", "boilwright");
    /** Most lines of code of a file: blank lines and lines that hold only a comment do not count. */
    private static final int MOST_LINES = 600;

    /** A comment, or a text or character in which what looks like one is none. */
    private static final Pattern COMMENT =
            Pattern.compile("\"\"\"[\\s\\S]*?\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*\"|'(?:\\\\.|[^'\\\\\n])*'"
                    + "|//[^\n]*|/\\*[\\s\\S]*?\\*/");

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
                .allSatisfy(file ->
                        assertThat(linesOfCode(lines(file))).as(file.toString()).isLessThanOrEqualTo(MOST_LINES));
    }

    @Test
    void onlyLinesOfCodeCount() {
        List<String> source = List.of(
                "/** A comment. */",
                "class Example {",
                "",
                "    /**",
                "     * A longer comment;",
                "     */",
                "    int one; // counts",
                "    // does not count",
                "    int two = 2; /* a comment that goes on",
                "       in the next line */",
                "    /* before */ int three;",
                "    String address = \"a//b/*c\";",
                "    int four;",
                "}");
        assertThat(linesOfCode(source)).isEqualTo(7);
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

    private static int linesOfCode(List<String> lines) {
        String code = COMMENT.matcher(String.join("\n", lines)).replaceAll(found -> {
            boolean isText = found.group().startsWith("\"") || found.group().startsWith("'");
            String kept = isText ? found.group() : found.group().replaceAll("[^\n]", "");
            return Matcher.quoteReplacement(kept);
        });
        return (int) code.lines().filter(line -> !line.isBlank()).count();
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }
}
