package boilwright.rig;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.units.UnitTable;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FieldCatalogueTest {
    static Collection<Field> fields() {
        return FieldCatalogue.fields();
    }

    @ParameterizedTest
    @MethodSource("fields")
    void everyFieldHasTitleExplanationAndSource(Field field) {
        assertThat(FieldTexts.title(field)).isNotBlank().doesNotEndWith(".");
        assertThat(FieldTexts.explanation(field)).isNotBlank().endsWith(".");
        assertThat(field.source()).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("fields")
    void theUsualRangeLiesInsideTheAllowedOne(Field field) {
        assertThat(field.allowedLow()).isLessThanOrEqualTo(field.typicalLow());
        assertThat(field.typicalLow()).isLessThanOrEqualTo(field.typicalHigh());
        assertThat(field.typicalHigh()).isLessThanOrEqualTo(field.allowedHigh());
    }

    @ParameterizedTest
    @MethodSource("fields")
    void quantitiesHaveAUnitThatTheReaderKnowsAndARangeToCheck(Field field) {
        assertThat(field.kind() == Field.Kind.QUANTITY)
                .isEqualTo(field.dimension().isPresent());
        field.dimension().ifPresent(dimension -> {
            assertThat(UnitTable.find(field.unit(), dimension)).isPresent();
            assertThat(field.allowedLow()).isLessThan(field.allowedHigh());
        });
    }

    @ParameterizedTest
    @MethodSource("fields")
    void choicesAndOnlyTheyHaveWordsToChooseFrom(Field field) {
        assertThat(field.choices().isEmpty()).isNotEqualTo(field.kind() == Field.Kind.CHOICE);
    }

    @ParameterizedTest
    @MethodSource("fields")
    void everyFieldStandsInAnObjectOrListThatIsAFieldToo(Field field) {
        if (!field.parent().isEmpty()) {
            assertThat(FieldCatalogue.find(field.parent()))
                    .get()
                    .extracting(Field::kind)
                    .isIn(Field.Kind.OBJECT, Field.Kind.LIST);
        }
    }

    @Test
    void noTextIsLeftOverInTheBundle() {
        Set<String> wanted = new TreeSet<>();
        fields().forEach(field -> wanted.addAll(List.of(field.textKey() + ".title", field.textKey() + ".explanation")));
        assertThat(ResourceBundle.getBundle("boilwright.text.fields", Locale.ROOT)
                        .keySet())
                .containsExactlyInAnyOrderElementsOf(wanted);
    }

    @Test
    void listEntriesAreFoundWithAndWithoutTheirNumber() {
        Field gap = FieldCatalogue.find("stages[].throatGap").orElseThrow();
        assertThat(FieldCatalogue.find("stages[11].throatGap")).contains(gap);
        assertThat(FieldCatalogue.find("stages"))
                .contains(FieldCatalogue.find("stages[]").orElseThrow());
        assertThat(FieldCatalogue.find("stages[].gap")).isEmpty();
        assertThat(gap.name()).isEqualTo("throatGap");
        assertThat(gap.parent()).isEqualTo("stages[]");
    }

    @Test
    void theChildrenOfAnObjectComeInTheOrderOfTheFile() {
        assertThat(FieldCatalogue.children("topCap"))
                .extracting(Field::name)
                .containsExactly("area", "thickness", "material");
        assertThat(FieldCatalogue.children("cooling.elements[3]"))
                .extracting(Field::name)
                .startsWith("kind", "name", "branch", "covers");
    }

    @Test
    void everyParameterIsAFieldWithTheRangeOfTheRegistry() {
        Stream.of(Parameter.values()).forEach(parameter -> {
            Field field = FieldCatalogue.find("parameters." + parameter.id()).orElseThrow();
            assertThat(field.allowedLow()).isEqualTo(parameter.low());
            assertThat(field.allowedHigh()).isEqualTo(parameter.high());
            assertThat(field.dimension()).contains(parameter.dimension());
        });
    }

    @Test
    void fieldsOfAHeatSourceKnowTheKindsThatHaveThem() {
        Field wrapped = FieldCatalogue.find("heatSource.wrappedArea").orElseThrow();
        assertThat(wrapped.belongsTo("heating-mantle")).isTrue();
        assertThat(wrapped.belongsTo("gas-burner")).isFalse();
        assertThat(FieldCatalogue.find("heatSource.ratedPower").orElseThrow().belongsTo("gas-burner"))
                .isTrue();
    }

    @Test
    void noneOfSomethingIsUsualWhereItIsAllowed() {
        Field insulation = FieldCatalogue.find("boiler.insulationThickness").orElseThrow();
        assertThat(insulation.isTypical(0)).isTrue();
        assertThat(insulation.isTypical(1e-4)).isFalse();
        assertThat(insulation.allows(1e-4)).isTrue();
    }
}
