package boilwright.dashboard.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.ElementKind;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import boilwright.rig.Supply;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Single fields of a rig, read and changed by their paths. */
class RigFieldsTest {
    private static final List<String> FLUIDS = FluidLibrary.builtIn().workingFluids();

    @ParameterizedTest
    @ValueSource(strings = {"neon-workshop", "mirror-club", "teaching-lab"})
    void changesNothingUnasked(String demo) {
        Rig rig = demo(demo);
        assertThat(RigFields.of(rig).rig(FLUIDS)).isEqualTo(rig);
    }

    @Test
    void changesTheOneFieldThatIsNamed() {
        Rig before = demo("neon-workshop");
        Rig after = RigFields.of(before)
                .with("stages[1].throatGap", 0.8e-3)
                .with("cooling.supply.pumpCurve[1].head", 0.72)
                .rig(FLUIDS);
        assertThat(after.stages().get(1).throatGapM()).isEqualTo(0.8e-3);
        assertThat(((Supply.Tank) after.cooling().supply())
                        .pump()
                        .curve()
                        .get(1)
                        .headM())
                .isEqualTo(0.72);
        Rig back = RigFields.of(after)
                .with("stages[1].throatGap", before.stages().get(1).throatGapM())
                .with(
                        "cooling.supply.pumpCurve[1].head",
                        ((Supply.Tank) before.cooling().supply())
                                .pump()
                                .curve()
                                .get(1)
                                .headM())
                .rig(FLUIDS);
        assertThat(back).isEqualTo(before);
    }

    @Test
    void keepsTheValueToTheLastBit() {
        double odd = 1234.567890123456;
        Rig rig = RigFields.of(demo("neon-workshop"))
                .with("heatSource.ratedPower", odd)
                .with("room.temperature", 294.2611111111)
                .rig(FLUIDS);
        assertThat(rig.heatSource().ratedPowerW()).isEqualTo(odd);
        assertThat(rig.room().temperatureK()).isEqualTo(294.2611111111);
    }

    @Test
    void passesTheChecksOfAFile() {
        RigFields fields = RigFields.of(demo("neon-workshop")).with("heatSource.contactArea", 0.5);
        assertThatThrownBy(() -> fields.rig(FLUIDS))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("heatSource.contactArea");
    }

    @Test
    void makesAPartThatWasNotThere() {
        Rig rig = RigFields.of(demo("neon-workshop"))
                .with("limits.waterOut", 320)
                .with("parameters.contact-domed-glass", 80)
                .rig(FLUIDS);
        assertThat(rig.limits().waterOutK()).hasValue(320);
        assertThat(rig.parameters()).containsEntry("contact-domed-glass", 80.0);
    }

    @Test
    void readsEveryQuantityOfADemo() {
        RigFields fields = RigFields.of(demo("mirror-club"));
        assertThat(fields.quantity("column.segments[1].innerDiameter")).hasValue(0.072);
        assertThat(fields.quantity("limits.requiredBoilerPressure")).hasValue(100);
        assertThat(fields.quantity("limits.cap")).isEmpty();
        assertThat(fields.texts("cooling.elements[3].covers")).containsExactly("top", "middle", "bottom");
    }

    @ParameterizedTest
    @EnumSource(SourceKind.class)
    void everyKindOfSourceHasBelievableDefaults(SourceKind kind) {
        for (String demo : RigReader.demoNames()) {
            Rig rig = demo(demo);
            boolean fits = kind != SourceKind.CLAMPED_HEATER
                    || !rig.boiler().material().isGlass();
            if (fits) {
                RigFields fields = withSource(rig, kind);
                for (Field field : FieldCatalogue.children("heatSource")) {
                    String path = "heatSource." + field.name();
                    quantity(fields, path, field)
                            .ifPresent(si -> assertThat(field.isTypical(si))
                                    .as(demo + " " + path + " " + si)
                                    .isTrue());
                }
                assertThat(fields.rig(FLUIDS).heatSource().kind()).isEqualTo(kind);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(ElementKind.class)
    void anElementCanBecomeAnotherKind(ElementKind kind) {
        for (String part : List.of("cooling.elements[3]", "cooling.elements[2]")) {
            RigFields fields = FieldDefaults.ofKind(RigFields.of(demo("mirror-club")), part, kind.id());
            boolean covers = kind == ElementKind.JACKET || kind == ElementKind.SOLDERED_COIL;
            if (covers && part.endsWith("[2]")) {
                // The coil after it covers every stage.
                assertThatThrownBy(() -> fields.rig(FLUIDS)).hasMessageContaining("covered twice");
            } else {
                Rig rig = fields.rig(FLUIDS);
                int index = part.endsWith("[2]") ? 2 : 3;
                assertThat(rig.cooling().elements().get(index).kind()).isEqualTo(kind);
            }
        }
    }

    @Test
    void everythingThatMayBeAddedIsAccepted() {
        Rig rig = demo("mirror-club");
        RigFields bare = RigFields.of(rig);
        for (String part : Set.of("limits", "boiler", "cooling", "heatSource")) {
            for (Field field : FieldCatalogue.children(part)) {
                String path = part + "." + field.name();
                boolean mayBe = !field.required() && !bare.has(path) && field.belongsTo("clamped-heater");
                if (mayBe) {
                    assertThat(FieldDefaults.added(bare, path).rig(FLUIDS))
                            .as(path)
                            .isNotEqualTo(rig);
                }
            }
        }
    }

    @Test
    void oneMoreJetStandsBetweenItsNeighbours() {
        Rig rig = FieldDefaults.oneMore(RigFields.of(demo("neon-workshop")), "stages[1]")
                .rig(FLUIDS);
        assertThat(rig.stages()).hasSize(4);
        assertThat(rig.stages().get(1).name()).isEqualTo("middle 2");
        assertThat(rig.stages().get(1).heightM())
                .isBetween(rig.stages().get(0).heightM(), rig.stages().get(2).heightM());
    }

    @Test
    void oneMoreLevelComesLater() {
        RigFields fields = RigFields.of(demo("mirror-club"));
        for (int step = 0; step < 3; step++) {
            Rig rig = FieldDefaults.oneMore(fields, "schedule[" + step + "]").rig(FLUIDS);
            assertThat(rig.schedule().steps()).hasSize(4);
        }
    }

    @Test
    void takesEntriesAndPartsAway() {
        Rig rig = RigFields.of(demo("mirror-club"))
                .without("schedule[2]")
                .without("cooling.elements[2]")
                .without("topCap")
                .without("cooling.supply.pumpHeat")
                .without("cooling.supply.pumpCurve[1]")
                .rig(FLUIDS);
        assertThat(rig.schedule().steps()).hasSize(2);
        assertThat(rig.cooling().elements()).hasSize(4);
        assertThat(rig.topCap()).isEmpty();
        assertThat(((Supply.Chiller) rig.cooling().supply()).pump().curve()).hasSize(4);
    }

    @Test
    void whatIsEnteredIsNoGuessAnyMore() {
        Rig guessed = demo("neon-workshop")
                .withGuesses(Set.of("stages[0].throatGap", "stages[1].throatGap", "stages[2].throatGap", "charge"));
        RigFields fields = RigFields.of(guessed);
        assertThat(fields.with("stages[1].throatGap", 0.9e-3).rig(FLUIDS).guesses())
                .containsExactlyInAnyOrder("stages[0].throatGap", "stages[2].throatGap", "charge");
        assertThat(FieldDefaults.oneMore(fields, "stages[1]").rig(FLUIDS).guesses())
                .containsExactlyInAnyOrder(
                        "stages[0].throatGap",
                        "stages[1].throatGap",
                        "stages[2].throatGap",
                        "stages[3].throatGap",
                        "charge");
        RigFields fewer = fields.with("cooling.elements[1].covers", List.of("top", "middle"))
                .without("stages[0]");
        assertThat(fewer.rig(FLUIDS).guesses())
                .containsExactlyInAnyOrder("stages[0].throatGap", "stages[1].throatGap", "charge");
    }

    private static RigFields withSource(Rig rig, SourceKind kind) {
        Rig changed = new Rig(
                rig.name(),
                rig.note(),
                rig.fluidId(),
                rig.chargeM3(),
                rig.boiler(),
                rig.column(),
                rig.stages(),
                rig.body(),
                rig.topCap(),
                SourceDefaults.of(kind, rig),
                rig.schedule(),
                rig.foreline(),
                rig.cooling(),
                rig.room(),
                rig.limits(),
                rig.parameters());
        assertThat(RigWriter.write(changed)).contains(kind.id());
        return RigFields.of(changed);
    }

    private static OptionalDouble quantity(RigFields fields, String path, Field field) {
        return field.kind() == Field.Kind.QUANTITY ? fields.quantity(path) : OptionalDouble.empty();
    }

    private static Rig demo(String name) {
        return RigReader.readDemo(name, FLUIDS, Set.of());
    }
}
