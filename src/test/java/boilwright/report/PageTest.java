package boilwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class PageTest {
    @Property(tries = 100, seed = "20261125")
    void breaksAnyParagraphWithinTheWidthAndKeepsItsWords(
            @ForAll @AlphaChars @StringLength(min = 1, max = 30) String word) {
        String words = (word + " ").repeat(20).strip();
        String text = new Page().paragraph("  - ", 4, words).toString();
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(Page.WIDTH));
        assertThat(text.replace("  - ", "").replaceAll("\\s+", " ").strip()).isEqualTo(words);
    }

    @Test
    void leavesAWordLongerThanTheLineWhole() {
        String word = "w".repeat(Page.WIDTH + 5);
        assertThat(new Page().paragraph("  ", 2, "a " + word + " b")).hasToString("  a\n  " + word + "\n  b\n");
    }

    @Test
    void alignsColumns() {
        String text = new Page()
                .table(List.of(List.of("a", "10"), List.of("bbb", "5")))
                .toString();
        assertThat(text).isEqualTo("  a    10\n  bbb   5\n");
    }
}
