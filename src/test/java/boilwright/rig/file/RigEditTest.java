package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RigEditTest {
    private static final Rig PLATE = Texts.read(Texts.sample("glass-on-plate"));

    @Test
    void quantitiesAreFoundByPath() {
        assertThat(RigFields.of(PLATE).quantity("stages[1].throatGap"))
                .hasValue(PLATE.stages().get(1).throatGapM());
        assertThat(RigFields.of(PLATE).quantity("boiler.emissivity"))
                .hasValue(PLATE.boiler().emissivity());
        assertThat(RigFields.of(PLATE).quantity("charge")).hasValue(PLATE.chargeM3());
        assertThat(RigFields.of(PLATE).quantity("heatSource.contact")).isEmpty();
        assertThat(RigFields.of(PLATE).quantity("stages[9].throatGap")).isEmpty();
        assertThat(RigFields.of(PLATE).quantity("topCap.area")).isEmpty();
        assertThat(RigFields.of(PLATE).quantity("no.such")).isEmpty();
        assertThat(RigFields.of(PLATE).shown("heatSource.contact")).hasValue("domed-glass");
        assertThat(RigFields.of(PLATE).shown("boiler")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"glass-on-plate", "glass-in-mantle", "metal-clamped"})
    void everyQuantityCanBeSetToWhatItIs(String sample) {
        Rig rig = Texts.read(Texts.sample(sample));
        for (String path : RigPaths.of(rig)) {
            boolean quantity = FieldCatalogue.find(path).orElseThrow().kind() == Field.Kind.QUANTITY;
            if (quantity && RigFields.of(rig).quantity(path).isPresent()) {
                double value = RigFields.of(rig).quantity(path).getAsDouble();
                assertThat(RigEdit.of(path, value).applied(rig)).as(path).isEqualTo(rig);
            }
        }
    }

    @Test
    void aChangedFieldIsNoGuessAnyMoreAndNothingElseChanges() {
        Rig rig = PLATE.withGuesses(Set.of("charge", "room.temperature"));
        Rig changed = RigEdit.of("charge", 1.1e-4).applied(rig);
        assertThat(changed.chargeM3()).isEqualTo(1.1e-4);
        assertThat(changed.guesses()).containsExactly("room.temperature");
        assertThat(RigEdit.of("charge", rig.chargeM3()).applied(changed).withGuesses(rig.guesses()))
                .isEqualTo(rig);
    }

    @Test
    void aFieldThatWasLeftOutIsAdded() {
        Rig changed = RigEdit.of("heatSource.contactConductance", 55).applied(PLATE);
        assertThat(RigFields.of(changed).quantity("heatSource.contactConductance"))
                .hasValue(55);
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThatThrownBy(() -> RigEdit.of("charge", 7).applied(PLATE)).isInstanceOf(InputRefusedException.class);
        double tooLarge = 2 * PLATE.boiler().heatedAreaM2();
        assertThatThrownBy(() -> RigEdit.of("heatSource.contactArea", tooLarge).applied(PLATE))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("boiler.heatedArea");
        assertThat(RigFields.of(PLATE)
                        .with(List.of(
                                RigEdit.of("heatSource.contactArea", 0.02), RigEdit.of("boiler.heatedArea", 0.04)))
                        .rig(List.of(PLATE.fluidId())))
                .isNotEqualTo(PLATE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"no.such", "stages[9].throatGap", "charge.more"})
    void onlyFieldsThatARigCanHaveCanBeSet(String path) {
        assertThatThrownBy(() -> RigEdit.of(path, 1).applied(PLATE)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"boiler.material", "topCap.area", "boiler"})
    void aQuantityWhereARigHasSomethingElseOrAPartOnlyIsRefused(String path) {
        assertThatThrownBy(() -> RigEdit.of(path, "1 m2").applied(PLATE)).isInstanceOf(InputRefusedException.class);
    }
}
