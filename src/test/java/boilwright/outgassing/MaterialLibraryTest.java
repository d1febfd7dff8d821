package boilwright.outgassing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MaterialLibraryTest {
    private static final Path FOLDER = Path.of("fluid-data", "materials");

    static Stream<String> ids() {
        return MaterialLibrary.builtIn().ids().stream();
    }

    private static String text(String name) throws IOException {
        return Files.readString(FOLDER.resolve(name));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyFileFitsTheSchema(String id) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text("material.schema.json"), InputFormat.JSON);
        assertThat(schema.validate(text(id + ".json"), InputFormat.JSON)).isEmpty();
        assertThat(MaterialLibrary.builtIn().find(id).id()).isEqualTo(id);
    }

    @Test
    void everyFileOfTheFolderIsInTheIndex() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertThat(files.map(file -> file.getFileName().toString())
                            .filter(name -> name.endsWith(".json"))
                            .filter(name -> !List.of("index.json", "material.schema.json")
                                    .contains(name))
                            .map(name -> name.replace(".json", "")))
                    .containsExactlyInAnyOrderElementsOf(
                            MaterialLibrary.builtIn().ids());
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everySourceIsInTheBibliography(String id) throws IOException {
        MaterialRecord material = MaterialLibrary.builtIn().find(id);
        String sources = text("sources.bib");
        Stream.of(
                        Optional.of(material.afterOneHour()),
                        Optional.of(material.exponent()),
                        material.baked(),
                        Optional.of(material.dryGasShare()),
                        material.airPermeability())
                .flatMap(Optional::stream)
                .forEach(figure -> {
                    assertThat(sources).contains("{" + figure.source() + ",");
                    assertThat(figure.low()).isLessThanOrEqualTo(figure.value());
                    assertThat(figure.high()).isGreaterThanOrEqualTo(figure.value());
                });
    }

    @Test
    void faultsNameFileFieldValueAndWhatIsAccepted() throws IOException {
        String bad = text("fkm.json")
                .replace("\"elastomer\"", "\"cheese\"")
                .replaceFirst("\"unit\": \"Torr L/\\(s cm2\\)\"", "\"unit\": \"mbar\"")
                .replaceFirst("\"low\": 1e-14", "\"low\": 1");
        assertThatThrownBy(() -> MaterialFile.read("fkm.json", bad.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("kind")
                .hasMessageContaining("cheese")
                .hasMessageContaining("outgassing.afterOneHour.unit")
                .hasMessageContaining("airPermeability.value");
        assertThatThrownBy(() -> MaterialFile.read("x.json", "{".getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("line 1");
    }

    @Test
    void anUnknownMaterialIsToldThoseThatAreKnown() {
        assertThatThrownBy(() -> MaterialLibrary.builtIn().find("cheese"))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("borosilicate");
    }
}
