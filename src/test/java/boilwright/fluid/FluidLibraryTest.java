package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Finding fluids, and the refusals that users' own files meet. */
class FluidLibraryTest {
    private final FluidLibrary library = FluidLibrary.builtIn();

    @TempDir
    private Path folder;

    private String good;

    @BeforeEach
    void readAGoodFile() {
        good = new String(FluidLibrary.resource("704-type.json"), StandardCharsets.UTF_8)
                .replace("\"id\": \"704-type\"", "\"id\": \"my-oil\"");
    }

    @Test
    void knowsItsFluids() {
        assertThat(library.workingFluids())
                .containsExactly(
                        "704-type",
                        "705-type",
                        "five-ring-polyphenyl-ether",
                        "medium-hydrocarbon",
                        "di-2-ethylhexyl-phthalate",
                        "di-n-butyl-phthalate",
                        "mercury");
        assertThat(library.validationOnly()).containsExactly("n-hexadecane", "n-eicosane");
        assertThat(library.ids()).hasSize(9);
        assertThat(library.find("mercury")).isSameAs(library.find("mercury"));
    }

    @Test
    void unknownFluidIsRefusedWithTheNearest() {
        assertThatThrownBy(() -> library.find("704-typ"))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("Did you mean \"704-type\"?")
                .hasMessageContaining("mercury");
        assertThatThrownBy(() -> library.find("goose fat"))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageStartingWith("There is no fluid \"goose fat\". Known fluids: 704-type");
    }

    @Test
    void entriesSayWhatIsKnownAndWhatIsNot() {
        List<PropertyLine.Words> entries = library.entries("704-type");
        PropertyLine.Words pressure = entries.stream()
                .filter(e -> e.title().equals("vapour pressure"))
                .findFirst()
                .orElseThrow();
        assertThat(pressure.valueText()).isEqualTo("log10 y = A - B/T; coefficients A, B = 11.308, 5667");
        assertThat(pressure.unit()).isEqualTo("Torr");
        assertThat(pressure.range()).isEqualTo("293.15 to 503.15 K, extrapolated beyond");
        assertThat(pressure.uncertainty()).isEqualTo("a factor of 1.5");
        assertThat(pressure.source()).contains("remembered").contains("2e-8 Torr at 25 C");
        assertThat(pressure.fromMemory()).isTrue();
        assertThat(entries).anySatisfy(e -> {
            assertThat(e.title()).isEqualTo("vapour pressure (alternative, not used)");
            assertThat(e.valueText()).endsWith("11.025, 5570");
        });
        assertThat(entries).anySatisfy(e -> {
            assertThat(e.title()).isEqualTo("usual boiler pressure");
            assertThat(e.valueText()).isEqualTo("65, usually 65 to 270 Pa");
        });
        assertThat(library.entries("mercury")).anySatisfy(e -> {
            assertThat(e.title()).isEqualTo("flash point");
            assertThat(e.valueText()).isEqualTo("not available: it has none: it does not burn");
        });
        assertThat(library.entries("mercury")).anySatisfy(e -> {
            assertThat(e.title()).isEqualTo("vapour poisonous at room temperature");
            assertThat(e.valueText()).isEqualTo("yes");
        });
    }

    @Test
    void takesAUsersFluid() throws IOException {
        write("oil.json", good);
        Files.writeString(folder.resolve("notes.txt"), "not a fluid");
        FluidLibrary more = library.withFolder(folder);
        assertThat(more.ids()).hasSize(10).contains("my-oil");
        assertThat(more.workingFluids()).contains("my-oil");
        assertThat(more.find("my-oil").latentHeat(473.15))
                .isEqualTo(library.find("704-type").latentHeat(473.15));
        assertThat(more.dataVersion()).startsWith(library.dataVersion() + "+").hasSizeGreaterThan(9);
        assertThat(more.dataVersion()).isEqualTo(library.withFolder(folder).dataVersion());
    }

    @Test
    void aUsersValidationFluidFillsNoPump() throws IOException {
        write("oil.json", good.replace("\"use\": \"working fluid\"", "\"use\": \"validation only\""));
        FluidLibrary more = library.withFolder(folder);
        assertThat(more.validationOnly()).contains("my-oil");
        assertThat(more.workingFluids()).doesNotContain("my-oil");
    }

    @Test
    void takenIdsAreRefused() throws IOException {
        write("a.json", good.replace("my-oil", "mercury"));
        write("b.json", good);
        write("c.json", good);
        List<Message> faults = refusal();
        assertThat(faults).hasSize(2).allMatch(f -> f.key() == MessageKey.FLUID_ID_TAKEN);
        assertThat(faults.get(0).text()).contains("a.json").contains("\"mercury\"");
        assertThat(faults.get(1).text()).contains("c.json").contains("\"my-oil\"");
    }

    @Test
    void allFaultsOfAllFilesAreNamed() throws IOException {
        write(
                "a.json",
                good.replace("\"unit\": \"g/mol\"", "\"unit\": \"g/mole\"").replace("\"cas\"", "\"cass\""));
        write("b.json", good.replace("\"coefficients\": [11.308, 5667]", "\"coefficients\": [11.308]"));
        List<Message> faults = refusal();
        assertThat(faults).hasSize(3);
        assertThat(texts(faults))
                .anyMatch(t -> t.contains("a.json")
                        && t.contains("properties.molarMass.unit")
                        && t.contains("\"g/mole\"")
                        && t.contains("Did you mean \"g/mol\"?"))
                .anyMatch(t -> t.contains("unknown field cass") && t.contains("Did you mean \"cas\"?"))
                .anyMatch(t -> t.contains("b.json")
                        && t.contains("properties.vapourPressure.coefficients")
                        && t.contains("[11.308]")
                        && t.contains("2 numbers"));
    }

    @Test
    void aFileOfOnesOwnCanBeReadAnew() throws IOException {
        write("oil.json", good);
        FluidLibrary more = library.with(FluidFile.read(folder.resolve("oil.json")));
        assertThat(more.workingFluids()).hasSize(8).endsWith("my-oil");
        assertThat(more.ownFile("my-oil")).contains(folder.resolve("oil.json").toString());
        assertThat(more.ownFile("704-type")).isEmpty();
        assertThat(more.dataVersion()).isEqualTo(library.withFolder(folder).dataVersion());
        assertThat(library.ids()).doesNotContain("my-oil");
        assertThat(more.find("mercury"))
                .isSameAs(more.with(FluidFile.read(folder.resolve("oil.json"))).find("mercury"));
        write("oil.json", good.replace("[205000, -240, 473.15]", "[206000, -240, 473.15]"));
        FluidLibrary again = more.with(FluidFile.read(folder.resolve("oil.json")));
        assertThat(again.workingFluids()).isEqualTo(more.workingFluids());
        assertThat(again.find("my-oil").latentHeat(473.15)).isEqualTo(206000);
        assertThat(more.find("my-oil").latentHeat(473.15)).isEqualTo(205000);
        assertThat(again.dataVersion()).isNotEqualTo(more.dataVersion());
        write("oil.json", good.replace("\"use\": \"working fluid\"", "\"use\": \"validation only\""));
        FluidLibrary moved = again.with(FluidFile.read(folder.resolve("oil.json")));
        assertThat(moved.workingFluids()).doesNotContain("my-oil");
        assertThat(moved.validationOnly()).endsWith("my-oil");
    }

    @Test
    void aFileOfOnesOwnDoesNotReplaceAPackedFluid() throws IOException {
        write("oil.json", good.replace("my-oil", "mercury"));
        FluidFile file = FluidFile.read(folder.resolve("oil.json"));
        assertThatThrownBy(() -> library.with(file))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("that id is taken");
    }

    @Test
    void theFamilyMayBeLeftOut() throws IOException {
        write("oil.json", good.replace("\"family\": \"silicone\",", ""));
        assertThat(FluidFile.read(folder.resolve("oil.json")).fluid().family()).isEmpty();
        assertThat(library.find("mercury").family()).contains("metal");
    }

    @Test
    void missingFieldsAreNamed() throws IOException {
        write("a.json", "{\"format\": 1, \"properties\": {}}");
        List<Message> faults = refusal();
        assertThat(faults).hasSize(4 + FluidProperty.values().length);
        assertThat(texts(faults)).anyMatch(t -> t.contains("has no field properties.vapourPressure"));
        assertThat(texts(faults)).anyMatch(t -> t.contains("has no field title"));
    }

    @Test
    void figuresThatCannotBeAreRefused() throws IOException {
        write("a-unit.json", good.replace("[205000, -240, 473.15]", "[205, -0.24, 473.15]"));
        write("b-ratio.json", good.replace("[205000, -240, 473.15]", "[105000, -60, 473.15]"));
        write("c-falls.json", good.replace("[11.308, 5667]", "[-11.308, -5667]"));
        write("d-rises.json", good.replace("[1070, 0.00072, 298.15]", "[1070, -0.00072, 298.15]"));
        write(
                "e-refuse.json",
                good.replace(
                        "\"range\": [298.15, 473.15],\n      \"outside\": \"extrapolate\"",
                        "\"range\": [298.15, 473.15],\n      \"outside\": \"refuse\""));
        List<Message> faults = refusal();
        assertThat(faults)
                .extracting(Message::key)
                .containsExactly(
                        MessageKey.FLUID_PROPERTY_IMPLAUSIBLE,
                        MessageKey.FLUID_LATENT_HEAT,
                        MessageKey.FLUID_PROPERTY_IMPLAUSIBLE,
                        MessageKey.FLUID_PROPERTY_MUST_FALL,
                        MessageKey.FLUID_RANGE_TOO_SHORT);
        assertThat(faults.get(0).text()).contains("260.956 J/kg (240 K)").contains("5000 J/kg to 3000000 J/kg");
    }

    @Test
    void aVapourPressureMustRise() throws IOException {
        write("a.json", good.replace("[11.308, 5667]", "[1.0, -100]"));
        assertThat(refusal()).extracting(Message::key).containsExactly(MessageKey.FLUID_PROPERTY_MUST_RISE);
    }

    @Test
    void whatIsNoJsonIsRefusedWithItsPlace() throws IOException {
        write("a.json", good.substring(0, good.length() / 2));
        write("b.json", good.replace("\"format\": 1,", "\"format\": 1, \"format\": 1,"));
        write("c.json", "[".repeat(60) + "]".repeat(60));
        write("d.json", "\u0000\u0001\u0002binary");
        write("e.json", "");
        write("f.json", "[1, 2]");
        write("g.json", "{\"id\": 1e999}");
        List<String> texts = texts(refusal());
        assertThat(texts.stream().filter(t -> t.contains("is not valid JSON"))).hasSize(3);
        assertThat(texts).anyMatch(t -> t.contains("a.json is not valid JSON at line "));
        assertThat(texts).anyMatch(t -> t.contains("c.json is nested deeper than 50 levels"));
        assertThat(texts).anyMatch(t -> t.contains("e.json is empty"));
        assertThat(texts).anyMatch(t -> t.contains("g.json the field id is"));
        assertThat(texts).anyMatch(t -> t.contains("b.json") && t.contains("Duplicate"));
        assertThat(texts).anyMatch(t -> t.contains("f.json") && t.contains("an object in braces"));
        assertThat(texts).noneMatch(t -> t.contains("\n"));
    }

    @Test
    void hugeEmptyAndMissingAreRefused() throws IOException {
        assertThatThrownBy(() -> library.withFolder(folder))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("has no fluid file");
        assertThatThrownBy(() -> library.withFolder(folder.resolve("absent")))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("cannot be read");
        Files.write(folder.resolve("huge.json"), new byte[FluidFileReader.LONGEST_FILE + 1]);
        Files.createDirectory(folder.resolve("directory.json"));
        List<String> texts = texts(refusal());
        assertThat(texts).hasSize(2);
        assertThat(texts).anyMatch(t -> t.contains("huge.json is longer than 4000000 bytes"));
        assertThat(texts).anyMatch(t -> t.contains("directory.json cannot be read"));
    }

    private void write(String name, String content) throws IOException {
        Files.writeString(folder.resolve(name), content, StandardCharsets.UTF_8);
    }

    private List<Message> refusal() {
        return catchThrowableOfType(InputRefusedException.class, () -> library.withFolder(folder))
                .faults();
    }

    private static List<String> texts(List<Message> faults) {
        return faults.stream().map(Message::text).toList();
    }
}
