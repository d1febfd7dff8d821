package boilwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.spread.Bands;
import org.junit.jupiter.api.Test;

class CheckTextTest {
    private final String text =
            CheckText.write(Samples.check(Margin.Status.FAILS), Bands.NONE, Samples.CERTAINTY, Samples.SESSION);

    @Test
    void saysTheVerdictBeforeEverythingElse() {
        assertThat(text.lines().skip(2).findFirst().orElseThrow()).startsWith("Two of three jets light.");
    }

    @Test
    void keepsTheOrderThatAPersonReadsIn() {
        assertThat(text)
                .containsSubsequence(
                        "Margins, worst first",
                        "Warm-up from cold",
                        "Jets at rest",
                        "Heat at rest",
                        "Assumed",
                        "CAUTION");
    }

    @Test
    void fitsItsWidthInPlainCharacters() {
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(text).doesNotContain("\r");
        assertThat(text.chars()).allMatch(c -> c < 128);
    }

    @Test
    void givesAFailingMarginWithItsMarkLimitBasisAndCure() {
        assertThat(text)
                .containsSubsequence(
                        "x fails    " + MarginId.HEAT.title(),
                        "412 W  at least 660 W",
                        "0.62",
                        "Heat needed for full",
                        "Cure: Bed the boiler");
    }

    @Test
    void saysWhatIsNotKnown() {
        assertThat(text).containsSubsequence("? unknown  " + MarginId.OIL_FILM.title(), "257 degC", "limit not known");
    }

    @Test
    void writesAPlainNumberAsSuchAndNotAsAPercentage() {
        assertThat(text).containsSubsequence(MarginId.COLUMN_MACH.title(), "0.110  at most 0.300");
    }

    @Test
    void givesTheReasonForAnEventThatDoesNotHappen() {
        assertThat(text).containsSubsequence("never  jet lights: upper", "Too little pressure reaches it");
    }

    @Test
    void letsNoNameMoveTheCursor() {
        Page page = new Page();
        page.line("red \u001b[31m and\nmore");
        assertThat(page).hasToString("red  [31m and more\n");
    }
}
