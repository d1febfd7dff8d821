package boilwright.dashboard.fluids;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.PropertyLine;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One fluid in full, in words. */
class DetailLineTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();

    @Test
    void everyPropertyHasALineWithItsSource() {
        for (String id : LIBRARY.workingFluids()) {
            List<PropertyLine> lines = LIBRARY.lines(id);
            List<DetailLine> words = DetailLine.all(lines, 450);
            for (int i = 0; i < lines.size(); i++) {
                DetailLine word = words.get(i);
                assertThat(word.title()).isEqualTo(lines.get(i).entry().title());
                assertThat(word.value()).isNotBlank();
                assertThat(word.source()).isEqualTo(lines.get(i).citation());
                if (lines.get(i).isAvailable()) {
                    int number = Integer.parseInt(word.place().replaceAll("^\\[(\\d+)].*$", "$1"));
                    DetailLine source = words.get(lines.size() + number - 1);
                    assertThat(source.title()).isEqualTo("source [" + number + "]");
                    assertThat(source.value()).isEqualTo(word.source());
                    assertThat(word.place()).contains(lines.get(i).place());
                    assertThat(word.place().endsWith("(from memory)"))
                            .isEqualTo(lines.get(i).entry().fromMemory());
                }
            }
        }
    }

    @Test
    void valuesFollowTheTemperatureAndSayWhenTheyAreExtrapolated() {
        DetailLine inside = line("704-type", "vapour pressure", 480);
        double p = LIBRARY.find("704-type").vapourPressure(480);
        assertThat(inside.value()).isEqualTo(QuantityWriter.writeAuto(p, Dimension.PRESSURE));
        assertThat(inside.range()).isEqualTo("20 to 230 degC");
        assertThat(inside.uncertainty()).isEqualTo("a factor of 1.5");
        DetailLine beyond = line("704-type", "vapour pressure", 540);
        assertThat(beyond.range()).isEqualTo("20 to 230 degC, extrapolated here");
        assertThat(beyond.value()).isNotEqualTo(inside.value());
    }

    @Test
    void whatIsNotAvailableIsSaidInWords() {
        assertThat(line("mercury", "vapour pressure", 900).value()).isEqualTo("not available at this temperature");
        assertThat(line("mercury", "vapour pressure", 900).range()).doesNotContain("extrapolated");
        DetailLine bulk = line("mercury", "highest bulk temperature", 400);
        assertThat(bulk.value()).isEqualTo("not available: an element: it does not decompose");
        assertThat(bulk.source()).isEmpty();
        assertThat(bulk.place()).isEmpty();
    }

    @Test
    void usualPressuresAndYesOrNoReadAsTheyAreMeant() {
        DetailLine boiler = line("704-type", "usual boiler pressure", 400);
        assertThat(boiler.value()).isEqualTo("65.0 Pa");
        assertThat(boiler.range()).isEqualTo("usually 65.0 Pa to 270 Pa");
        DetailLine poison = line("mercury", "vapour poisonous at room temperature", 400);
        assertThat(poison.value()).isEqualTo("yes");
        assertThat(poison.uncertainty()).isEmpty();
    }

    private static DetailLine line(String id, String title, double temperatureK) {
        return DetailLine.all(LIBRARY.lines(id), temperatureK).stream()
                .filter(line -> line.title().equals(title))
                .findFirst()
                .orElseThrow();
    }
}
