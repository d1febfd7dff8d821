package boilwright.rig.file;

import static boilwright.errors.Said.said;
import static boilwright.rig.file.Texts.changed;
import static boilwright.rig.file.Texts.faults;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import boilwright.errors.MessageKey;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Foreline;
import boilwright.rig.Protection;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class MigrationsTest {
    /** Two made-up steps: version 1 said "filling" and version 2 "oil" for what is "charge" in version 3. */
    private static final Migrations THREE = new Migrations(List.of(rename("filling", "oil"), rename("oil", "charge")));

    private static UnaryOperator<Json.JsonObject> rename(String from, String to) {
        return file -> file.with(to, file.members().get(from)).without(from);
    }

    private static final String TODAY = "version-3/glass-on-plate";
    private static final List<String> STORED = List.of(
            "glass-on-plate",
            "glass-in-mantle",
            "metal-clamped",
            "version-1/neon-workshop",
            "version-1/mirror-club",
            "version-1/teaching-lab");
    private static final List<String> SECOND = List.of(
            "glass-on-plate", "glass-in-mantle", "metal-clamped", "neon-workshop", "mirror-club", "teaching-lab");

    private static Rig read(String text) {
        return RigReader.parse("pump.json", text, Texts.FLUIDS, Set.of(), THREE);
    }

    @Test
    void everyOlderVersionIsBroughtToTheNewestStepByStep() {
        Rig today = Texts.read(Texts.sample(TODAY));
        String first = changed(TODAY, "\"charge\"", "\"filling\"").replace("\"format\": 3", "\"format\": 1");
        String second = changed(TODAY, "\"charge\"", "\"oil\"").replace("\"format\": 3", "\"format\": 2");
        String third = Texts.sample(TODAY);
        assertThat(read(first)).isEqualTo(today);
        assertThat(read(second)).isEqualTo(today);
        assertThat(read(third)).isEqualTo(today);
        assertThat(THREE.newest()).isEqualTo(3);
    }

    @Test
    void aFaultInAMigratedFieldStillNamesItsLine() {
        String text = changed(TODAY, "\"charge\": \"100 mL\"", "\"filling\": \"100 kg\"")
                .replace("\"format\": 3", "\"format\": 1");
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageStartingWith("pump.json, line 6: charge: \"100 kg\" is a mass;");
    }

    @Test
    void theFilesOfThisProgramAreOfVersionThree() {
        assertThat(Migrations.CURRENT.newest()).isEqualTo(3);
        assertThat(FieldCatalogue.find("format").orElseThrow().allowedHigh()).isEqualTo(3);
        assertThat(RigWriter.write(Texts.read(Texts.sample(TODAY)))).contains("\"format\": 3");
    }

    @ParameterizedTest
    @FieldSource("STORED")
    void aStoredFileOfVersionOneIsTheSameRigInVersionTwo(String name) {
        assertThat(Texts.sample(name)).contains("\"format\": 1");
        Rig first = Texts.read(Texts.sample(name));
        String plain = name.replace("version-1/", "");
        assertThat(first).isEqualTo(Texts.read(Texts.sample("version-2/" + plain)));
        assertThat(first.cooling().supply()).isInstanceOf(Supply.GivenFlow.class);
    }

    @ParameterizedTest
    @FieldSource("SECOND")
    void aStoredFileOfVersionTwoKeepsItsForeline(String name) {
        String text = Texts.sample("version-2/" + name);
        assertThat(text).contains("\"format\": 2");
        Rig second = Texts.read(text);
        assertThat(second.foreline()).isInstanceOf(Foreline.GivenPressure.class);
        assertThat(second.vacuum()).isEmpty();
        assertThat(second.protection()).isEqualTo(Protection.NONE);
        Rig third = Texts.read(Texts.sample("version-3/" + name));
        assertThat(third.withForeline(second.foreline()).boiler()).isEqualTo(second.boiler());
        if (third.vacuum().isEmpty()) {
            assertThat(third).isEqualTo(second);
        }
    }

    @Test
    void theMeasuredFlowOfVersionOneIsASupply() {
        Rig metal = Texts.read(Texts.sample("metal-clamped"));
        assertThat(metal.cooling().supply())
                .isEqualTo(new Supply.GivenFlow(291.15, 1.8e-3 / 60, OptionalDouble.of(1800)));
        assertThat(metal.cooling().elements()).hasSize(2);
    }

    @Test
    void marksOfGuessesMoveAlong() {
        String marks = "\"format\": 1, \"guesses\": [\"cooling.flow\", \"charge\", \"cooling.chillerCapacity\","
                + " \"cooling.inletTemperature\", \"cooling.elements[0].tubeLength\"],";
        assertThat(Texts.read(changed("metal-clamped", "\"format\": 1,", marks)).guesses())
                .containsExactlyInAnyOrder(
                        "charge",
                        "cooling.supply.inletTemperature",
                        "cooling.supply.flow",
                        "cooling.supply.chillerCapacity",
                        "cooling.elements[0].tubeLength");
        assertThat(faults(changed(
                        "glass-on-plate", "\"format\": 1,", "\"format\": 1, \"guesses\": [7, \"cooling.flow\"],")))
                .containsExactly(said(
                        MessageKey.RIG_FIELD_TYPE,
                        "pump.json, line 2",
                        "guesses[0]",
                        "7",
                        "a text in quotation marks"));
    }

    @Test
    void faultsOfMovedFieldsNameTheirLineAndTheirNewPath() {
        assertThat(faults(changed("glass-on-plate", "\"1 L/min\"", "\"1 L/s\"")))
                .containsExactly(said(
                        MessageKey.RIG_FIELD_SLIP,
                        "pump.json, line 46",
                        "cooling.supply.flow",
                        "\"1 L/s\"",
                        "1 L/min",
                        "0.05 L/min",
                        "25 L/min"));
        assertThat(Texts.read(changed("glass-on-plate", "\"1 L/min\"", "\"1 L/s\""), "cooling.supply.flow"))
                .isNotNull();
        assertThat(faults(changed("glass-on-plate", "\"flow\": \"1 L/min\",", "")))
                .singleElement()
                .asString()
                .startsWith("pump.json, line 44: cooling.supply.flow is missing.");
        assertThat(faults(changed("glass-on-plate", "\"flow\": \"1 L/min\",", "\"flow\": \"1 L/min\", \"flo\": 1,")))
                .containsExactly(
                        said(MessageKey.RIG_FIELD_UNKNOWN, "pump.json, line 46", "cooling.flo", "supply, elements"));
    }

    @Test
    void whatWasNeverInVersionOneIsNotDroppedSilently() {
        String both = changed("glass-on-plate", "\"flow\": \"1 L/min\",", "\"flow\": \"1 L/min\", \"supply\": {},");
        assertThat(faults(both))
                .contains(said(MessageKey.RIG_FIELD_MOVED, "pump.json, line 46", "cooling.flow", "cooling.supply.flow"))
                .anyMatch(fault -> fault.contains("cooling.supply.kind is missing"));
        String list = changed("glass-on-plate", "\"cooling\": {", "\"cooling\": [], \"coolin\": {");
        assertThat(faults(list))
                .contains(
                        said(MessageKey.RIG_FIELD_TYPE, "pump.json, line 44", "cooling", "[]", "an object in braces"));
    }

    @Test
    void oldNamesAreToldTheirNewOnes() {
        assertThat(faults(changed(TODAY, "\"elements\": [", "\"flow\": \"1 L/min\", \"elements\": [")))
                .containsExactly(
                        said(MessageKey.RIG_FIELD_MOVED, "pump.json, line 50", "cooling.flow", "cooling.supply.flow"));
        assertThatThrownBy(() -> Texts.checked(changed(TODAY, "\"1 L/min\"", "\"1 L/s\""), "cooling.flow"))
                .hasMessage(said(MessageKey.RIG_ACCEPT_UNKNOWN_NEAR, "cooling.flow", "cooling.supply.flow"));
        assertThat(faults(changed(TODAY, "\"format\": 3,", "\"format\": 3, \"guesses\": [\"cooling.flow\"],")))
                .singleElement()
                .asString()
                .contains("Did you mean \"cooling.supply.flow\"?");
    }

    @Test
    void aNewerVersionIsRefusedWithWords() {
        assertThat(faults(changed("glass-on-plate", "\"format\": 1", "\"format\": 4")))
                .containsExactly(said(MessageKey.RIG_FORMAT_NEWER, "pump.json, line 2", "4", "3"));
    }

    @Test
    void aVersionThatNeverWasIsRefused() {
        for (String odd : List.of("0", "-1", "1.5", "\"1\"", "1e0", "99999999999")) {
            assertThat(faults(changed("glass-on-plate", "\"format\": 1", "\"format\": " + odd)))
                    .containsExactly(
                            "pump.json, line 2: format is " + odd + "; accepted is a whole number from 1 to 3.");
        }
    }

    @Test
    void aMissingVersionIsNamed() {
        assertThat(faults(changed("glass-on-plate", "\"format\": 1,", "")))
                .containsExactly(said(MessageKey.RIG_FORMAT_MISSING, "pump.json, line 1", "3"));
    }
}
