package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.rig.Material;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TypedFieldsTest {
    private final TypedFields typed = new TypedFields(Set.of());

    private List<String> faults() {
        return catchThrowableOfType(InputRefusedException.class, typed::refuseFaults).faults().stream()
                .map(Message::text)
                .toList();
    }

    @Test
    void goodValuesAreReadLikeThoseOfAFile() {
        assertThat(typed.quantity("--bore", "body.innerDiameter", "3 in")).isEqualTo(0.0762);
        assertThat(typed.quantities("--gap", "stages[].throatGap", "0.6 mm, 0.7 mm"))
                .containsExactly(6e-4, 7e-4);
        assertThat(typed.choice("--material", "body.material", "stainless", Material.values(), Material::id))
                .contains(Material.STAINLESS);
        assertThat(typed.count("--stages", "stages", "4")).isEqualTo(4);
        typed.text("--name", "name", "My pump");
        typed.word("--fluid", "fluid", "704-type", List.of("704-type"));
        typed.refuseFaults();
    }

    @Test
    void everyFaultIsToldWithItsPlaceFieldValueAndWhatIsAccepted() {
        assertThat(typed.quantity("--bore", "body.innerDiameter", "75 m")).isNaN();
        typed.quantities("--gap", "stages[].throatGap", "0.6 mm,,0.8");
        typed.choice("--material", "body.material", "stanless", Material.values(), Material::id);
        typed.count("--stages", "stages", "three");
        typed.count("--stages", "stages", "0");
        typed.text("--name", "name", " ");
        typed.word("--fluid", "fluid", "704", List.of("704-type", "705-type"));
        assertThat(faults())
                .hasSize(8)
                .satisfiesExactly(
                        f -> assertThat(f).startsWith("--bore: body.innerDiameter is \"75 m\": did you mean 75 mm?"),
                        f -> assertThat(f).startsWith("--gap: stages[].throatGap"),
                        f -> assertThat(f)
                                .startsWith("--gap: stages[].throatGap")
                                .contains("no unit"),
                        f -> assertThat(f).contains("did you mean \"stainless\"?"),
                        f -> assertThat(f).contains("\"three\"", "a whole number"),
                        f -> assertThat(f).contains("0 entries; accepted are 1 to 12"),
                        f -> assertThat(f).startsWith("--name: name has 0 characters"),
                        f -> assertThat(f).contains("did you mean \"704-type\"?"));
    }

    @Test
    void anUnusualValueCanBeMeant() {
        TypedFields meant = new TypedFields(Set.of("charge"));
        assertThat(meant.quantity("--charge", "charge", "12 L")).isEqualTo(12e-3);
        meant.refuseFaults();
        typed.quantity("--charge", "charge", "12 L");
        assertThat(faults()).singleElement().asString().contains("did you mean 12 mL", "--accept charge");
    }

    @Test
    void onlyFieldsCanBeAccepted() {
        assertThatThrownBy(() -> new TypedFields(Set.of("chrage"))).hasMessageContaining("Did you mean charge?");
    }
}
