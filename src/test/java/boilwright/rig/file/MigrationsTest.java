package boilwright.rig.file;

import static boilwright.rig.file.Texts.changed;
import static boilwright.rig.file.Texts.faults;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import boilwright.rig.Rig;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class MigrationsTest {
    /** Two made-up steps: version 1 said "filling" and version 2 "oil" for what is "charge" in version 3. */
    private static final Migrations THREE = new Migrations(List.of(rename("filling", "oil"), rename("oil", "charge")));

    private static UnaryOperator<Json.JsonObject> rename(String from, String to) {
        return file -> file.with(to, file.members().get(from)).without(from);
    }

    private static Rig read(String text) {
        return RigReader.parse("pump.json", text, Texts.FLUIDS, Set.of(), THREE);
    }

    @Test
    void everyOlderVersionIsBroughtToTheNewestStepByStep() {
        Rig today = Texts.read(Texts.sample("glass-on-plate"));
        String first = changed("glass-on-plate", "\"charge\"", "\"filling\"");
        String second = changed("glass-on-plate", "\"charge\"", "\"oil\"").replace("\"format\": 1", "\"format\": 2");
        String third = changed("glass-on-plate", "\"format\": 1", "\"format\": 3");
        assertThat(read(first)).isEqualTo(today);
        assertThat(read(second)).isEqualTo(today);
        assertThat(read(third)).isEqualTo(today);
        assertThat(THREE.newest()).isEqualTo(3);
    }

    @Test
    void aFaultInAMigratedFieldStillNamesItsLine() {
        String text = changed("glass-on-plate", "\"charge\": \"100 mL\"", "\"filling\": \"100 kg\"");
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageStartingWith("pump.json, line 6: charge: \"100 kg\" is a mass;");
    }

    @Test
    void theFilesOfThisProgramAreOfVersionOne() {
        assertThat(Migrations.CURRENT.newest()).isEqualTo(1);
    }

    @Test
    void aNewerVersionIsRefusedWithWords() {
        assertThat(faults(changed("glass-on-plate", "\"format\": 1", "\"format\": 2")))
                .containsExactly(
                        "pump.json, line 2: format is 2, but this program knows versions up to 1 only. The file"
                                + " was written by a newer program: update this one to read it.");
    }

    @Test
    void aVersionThatNeverWasIsRefused() {
        for (String odd : List.of("0", "-1", "1.5", "\"1\"", "1e0", "99999999999")) {
            assertThat(faults(changed("glass-on-plate", "\"format\": 1", "\"format\": " + odd)))
                    .containsExactly(
                            "pump.json, line 2: format is " + odd + "; accepted is a whole number from 1 to 1.");
        }
    }

    @Test
    void aMissingVersionIsNamed() {
        assertThat(faults(changed("glass-on-plate", "\"format\": 1,", "")))
                .containsExactly("pump.json, line 1: format is missing; the current version is \"format\": 1.");
    }
}
