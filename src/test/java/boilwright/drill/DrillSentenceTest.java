package boilwright.drill;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.Sentences;
import boilwright.rig.Protection.Load;
import boilwright.rig.Protection.TripKind;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.Fault;
import java.text.MessageFormat;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DrillSentenceTest {
    @Test
    void everySentenceIsThereOnceAndShowsTheValuesItTakes() {
        for (DrillSentence text : DrillSentence.values()) {
            String[] values = IntStream.range(0, text.argumentCount())
                    .mapToObj(i -> "<value " + i + ">")
                    .toArray(String[]::new);
            String said = text.say(values);
            assertThat(values)
                    .as(text.name())
                    .allSatisfy(value -> assertThat(said).contains(value));
            assertThat(said).isNotBlank().doesNotContain("{");
            assertThat(new MessageFormat(text.pattern(), Locale.ROOT).getFormatsByArgumentIndex())
                    .hasSize(text.argumentCount());
            assertThat(text.pattern().replace("''", "")).as(text.name()).doesNotContain("'");
        }
        assertThat(Collections.list(ResourceBundle.getBundle("boilwright.text.drill", Locale.ROOT)
                        .getKeys()))
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(DrillSentence.values())
                        .map(Sentences::bundleKey)
                        .toList());
    }

    @Test
    void faultsLimitsTripsAndLoadsHaveTheirWords() {
        for (Fault fault : Fault.values()) {
            assertThat(DrillWords.title(fault)).isNotBlank();
        }
        for (DrillLimit limit : DrillLimit.values()) {
            assertThat(DrillWords.title(limit)).isNotBlank();
        }
        for (TripKind kind : TripKind.values()) {
            assertThat(DrillWords.title(kind)).isNotBlank();
        }
        assertThat(DrillWords.kept(EnumSet.allOf(Load.class))).isEqualTo("water, backing pump, fan");
    }
}
