package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RigEditTest {
    private static final Rig PLATE = Texts.read(Texts.sample("glass-on-plate"));

    @Test
    void quantitiesAreFoundByPath() {
        assertThat(RigEdit.value(PLATE, "stages[1].throatGap"))
                .hasValue(PLATE.stages().get(1).throatGapM());
        assertThat(RigEdit.value(PLATE, "boiler.emissivity"))
                .hasValue(PLATE.boiler().emissivity());
        assertThat(RigEdit.value(PLATE, "charge")).hasValue(PLATE.chargeM3());
        assertThat(RigEdit.value(PLATE, "heatSource.contact")).isEmpty();
        assertThat(RigEdit.value(PLATE, "stages[9].throatGap")).isEmpty();
        assertThat(RigEdit.value(PLATE, "topCap.area")).isEmpty();
        assertThat(RigEdit.value(PLATE, "no.such")).isEmpty();
        assertThat(RigEdit.shown(PLATE, "heatSource.contact")).hasValue("domed-glass");
        assertThat(RigEdit.shown(PLATE, "boiler")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"glass-on-plate", "glass-in-mantle", "metal-clamped"})
    void everyQuantityCanBeSetToWhatItIs(String sample) {
        Rig rig = Texts.read(Texts.sample(sample));
        for (String path : RigPaths.of(rig)) {
            boolean quantity = FieldCatalogue.find(path).orElseThrow().kind() == Field.Kind.QUANTITY;
            if (quantity && RigEdit.value(rig, path).isPresent()) {
                double value = RigEdit.value(rig, path).getAsDouble();
                assertThat(RigEdit.with(rig, path, value)).as(path).isEqualTo(rig);
            }
        }
    }

    @Test
    void aChangedFieldIsNoGuessAnyMoreAndNothingElseChanges() {
        Rig rig = PLATE.withGuesses(Set.of("charge", "room.temperature"));
        Rig changed = RigEdit.with(rig, "charge", 1.1e-4);
        assertThat(changed.chargeM3()).isEqualTo(1.1e-4);
        assertThat(changed.guesses()).containsExactly("room.temperature");
        assertThat(RigEdit.with(changed, "charge", rig.chargeM3()).withGuesses(rig.guesses()))
                .isEqualTo(rig);
    }

    @Test
    void aFieldThatWasLeftOutIsAdded() {
        Rig changed = RigEdit.with(PLATE, "heatSource.contactConductance", 55);
        assertThat(RigEdit.value(changed, "heatSource.contactConductance")).hasValue(55);
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThatThrownBy(() -> RigEdit.with(PLATE, "charge", 7)).isInstanceOf(InputRefusedException.class);
        double tooLarge = 2 * PLATE.boiler().heatedAreaM2();
        assertThatThrownBy(() -> RigEdit.with(PLATE, "heatSource.contactArea", tooLarge))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("boiler.heatedArea");
        assertThat(RigEdit.with(PLATE, Map.of("heatSource.contactArea", 0.02, "boiler.heatedArea", 0.04)))
                .isNotEqualTo(PLATE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"boiler.material", "no.such", "stages[9].throatGap", "topCap.area", "boiler"})
    void onlyQuantitiesOfTheRigCanBeSet(String path) {
        assertThatThrownBy(() -> RigEdit.with(PLATE, path, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
