package boilwright.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanFileTest {
    private static final String STEP = "{\"do\":\"backing-on\",\"clock\":\"from-cold\",\"atS\":0}";

    @TempDir
    Path folder;

    private static Plan read(String steps) {
        return PlanFile.readText("plan.json", "{\"variant\":\"normal\",\"steps\":[" + steps + "]}");
    }

    @Test
    void readsStepsWithTheirHeat() {
        Plan plan = read(STEP + ",{\"do\":\"heat\",\"clock\":\"from-cold\",\"atS\":600,\"powerFraction\":0.65}"
                + ",{\"do\":\"heat\",\"clock\":\"from-cold\",\"atS\":900.5,\"holdOilK\":480,\"what\":\"mine\"}");
        assertThat(plan.steps()).hasSize(3);
        assertThat(plan.steps().get(1).level().fraction()).isEqualTo(0.65);
        assertThat(plan.steps().get(2).level().holdOilK()).hasValue(480);
        assertThat(plan.steps().get(2).moment()).isEqualTo(new Moment(Clock.FROM_COLD, 900.5));
        assertThat(plan.steps().get(2).words().what()).isEqualTo("mine");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{'do':'warm','clock':'from-cold','atS':0}|steps[0].do",
                "{'clock':'from-cold','atS':0}|steps[0].do",
                "{'do':'heat','clock':'from-cold','atS':0}|steps[0].powerFraction",
                "{'do':'heat','clock':'from-cold','atS':0,'powerFraction':1.5}|steps[0].powerFraction",
                "{'do':'heat','clock':'from-cold','atS':0,'holdOilK':'hot'}|steps[0].holdOilK",
                "{'do':'run','clock':'noon','atS':0}|steps[0].clock",
                "{'do':'run','clock':'from-cold','atS':-1}|steps[0].atS",
                "{'do':'run','clock':'from-cold','atS':'10 min'}|steps[0].atS",
                "{'do':'run','clock':'from-cold','atS':1e9}|steps[0].atS",
                "7|steps[0].do"
            })
    void namesThePlaceOfAFault(String step, String place) {
        assertThatThrownBy(() -> read(step.replace('\'', '"')))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining(place)
                .hasMessageContaining("accepted is");
    }

    @Test
    void tellsEveryFaultAtOnce() {
        assertThatThrownBy(() -> PlanFile.readText(
                        "plan.json", "{\"variant\":\"lazy\",\"steps\":[{\"do\":\"run\"}," + STEP + ",3]}"))
                .isInstanceOfSatisfying(
                        InputRefusedException.class, e -> assertThat(e.faults()).hasSizeGreaterThan(4));
    }

    @Test
    void refusesWhatIsNoPlan() throws IOException {
        for (String text : new String[] {"", "[]", "{", "{\"variant\":\"normal\"}", "{} {}", "{\"a\":1,\"a\":2}"}) {
            assertThatThrownBy(() -> PlanFile.readText("plan.json", text))
                    .as(text)
                    .isInstanceOf(InputRefusedException.class);
        }
        assertThatThrownBy(() -> read("")).isInstanceOf(InputRefusedException.class);
        assertThatThrownBy(() -> PlanFile.read(folder)).hasMessageContaining("folder");
        assertThatThrownBy(() -> PlanFile.read(folder.resolve("none.json"))).hasMessageContaining("does not exist");
        Path bytes = folder.resolve("bytes.json");
        Files.write(bytes, new byte[] {'{', (byte) 0xff, (byte) 0xfe});
        assertThatThrownBy(() -> PlanFile.read(bytes)).hasMessageContaining("UTF-8");
        Path large = folder.resolve("large.json");
        Files.write(large, new byte[1_000_001]);
        assertThatThrownBy(() -> PlanFile.read(large)).hasMessageContaining("1 MB");
    }
}
