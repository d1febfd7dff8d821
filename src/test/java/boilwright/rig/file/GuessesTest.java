package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The marks on fields that were guessed: read, refused, kept by the writer. */
class GuessesTest {
    private static final Rig PLATE = Texts.read(Texts.sample("glass-on-plate"));

    private static String marked(String list) {
        return Texts.changed("glass-on-plate", "\"format\": 1,", "\"format\": 1, \"guesses\": " + list + ",");
    }

    @Test
    void aFileWithoutMarksHasNoGuesses() {
        assertThat(PLATE.guesses()).isEmpty();
        assertThat(RigWriter.write(PLATE)).doesNotContain("guesses");
    }

    @Test
    void marksAreReadAndKept() {
        Rig rig = Texts.read(marked("[\"stages[1].throatGap\", \"boiler.emissivity\"]"));
        assertThat(rig.guesses()).containsExactlyInAnyOrder("boiler.emissivity", "stages[1].throatGap");
        assertThat(rig.withGuesses(Set.of())).isEqualTo(PLATE);
        assertThat(Texts.read(RigWriter.write(rig))).isEqualTo(rig);
    }

    @Test
    void theOrderInWhichFieldsWereMarkedDoesNotShow() {
        Rig one = PLATE.withGuesses(new LinkedHashSet<>(List.of("room.temperature", "charge")));
        Rig other = PLATE.withGuesses(new LinkedHashSet<>(List.of("charge", "room.temperature")));
        assertThat(RigWriter.write(one)).isEqualTo(RigWriter.write(other));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "stages[1].throatGapp; stages[1].throatGap",
                "stage[0].throatGap; stages[0].throatGap",
                "stages[0].throatgap; stages[0].throatGap",
                "boiler.heatedarea; boiler.heatedArea",
            })
    void aMarkOnNoFieldIsRefusedWithTheNearest(String found, String nearest) {
        assertThat(Texts.faults(marked("[\"" + found + "\"]")))
                .singleElement()
                .asString()
                .contains("guesses[0]", '"' + found + '"', "Did you mean \"" + nearest + '"', "line 2");
    }

    @ParameterizedTest
    @ValueSource(strings = {"stages[7].throatGap", "topCap.area", "name", "guesses", "heatSource.wrappedArea", "x"})
    void whatThisRigDoesNotHaveCannotBeAGuess(String path) {
        assertThat(Texts.faults(marked("[\"" + path + "\"]")))
                .singleElement()
                .asString()
                .contains("is no field of this rig");
    }

    @Test
    void everyFaultIsNamedWithItsPlace() {
        List<String> faults = Texts.faults(marked("[7, \"charge\", \"charge\", \"chrage\", \"\"]"));
        assertThat(faults).hasSize(4);
        assertThat(faults).anyMatch(f -> f.contains("guesses[0] is 7"));
        assertThat(faults).anyMatch(f -> f.contains("guesses[2]") && f.contains("marked already"));
        assertThat(faults).anyMatch(f -> f.contains("guesses[3]") && f.contains("\"charge\""));
        assertThat(faults).anyMatch(f -> f.contains("guesses[4]"));
        assertThat(Texts.faults(marked("\"charge\"")))
                .singleElement()
                .asString()
                .contains("a list of texts");
    }

    @Property(tries = 60, seed = "3101")
    void everyChoiceOfMarksReadsBack(@ForAll("marks") Set<String> marks) {
        Rig rig = PLATE.withGuesses(marks);
        assertThat(Texts.read(RigWriter.write(rig))).isEqualTo(rig);
    }

    @Provide
    Arbitrary<Set<String>> marks() {
        return Arbitraries.of(RigPaths.of(PLATE)).set().ofMinSize(0).ofMaxSize(30);
    }
}
