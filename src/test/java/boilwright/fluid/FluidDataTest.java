package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boilwright.errors.InputRefusedException;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The files of fluid-data: schema, sources, index and version, and that schema and reader agree. */
class FluidDataTest {
    private static final Path FOLDER = Path.of("fluid-data");
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    static List<String> ids() {
        return LIBRARY.ids();
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyFileKeepsToTheSchema(String id) throws IOException {
        assertThat(schema().validate(tree(id))).isEmpty();
    }

    @Test
    void indexListsExactlyTheFilesOfTheFolder() throws IOException {
        Set<String> files = new TreeSet<>();
        try (Stream<Path> entries = Files.list(FOLDER)) {
            entries.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json"))
                    .filter(name -> !name.equals("index.json") && !name.equals("fluid.schema.json"))
                    .map(name -> name.substring(0, name.length() - ".json".length()))
                    .forEach(files::add);
        }
        assertThat(LIBRARY.ids()).containsExactlyInAnyOrderElementsOf(files);
        for (String id : LIBRARY.ids()) {
            FluidRecord fluid = LIBRARY.find(id);
            assertThat(fluid.id()).isEqualTo(id);
            assertThat(fluid.isValidationOnly())
                    .isEqualTo(LIBRARY.validationOnly().contains(id));
        }
    }

    @Test
    void everySourceKeyIsInTheBibliographyAndEveryEntryIsUsed() throws IOException {
        String bibliography = Files.readString(FOLDER.resolve("sources.bib"), StandardCharsets.UTF_8);
        Set<String> used = new TreeSet<>();
        for (String id : LIBRARY.ids()) {
            for (FluidProperty property : FluidProperty.values()) {
                LIBRARY.find(id)
                        .value(property)
                        .figures()
                        .forEach(figure -> used.add(figure.provenance().source()));
            }
        }
        assertThat(Bibliography.keys(bibliography)).containsExactlyInAnyOrderElementsOf(used);
    }

    @Test
    void bibliographyIsReadWhole() throws IOException {
        String text = Files.readString(FOLDER.resolve("sources.bib"), StandardCharsets.UTF_8);
        Sources sources = Sources.parse(text);
        assertThat(Bibliography.keys(text))
                .allSatisfy(key -> assertThat(sources.citation(key)).isNotEqualTo(key));
        assertThat(sources.citation("huber-2006"))
                .isEqualTo(
                        "M. L. Huber and A. Laesecke and D. G. Friend, Correlation for the vapor pressure of mercury,"
                                + " Ind. Eng. Chem. Res. 45, 7351; NISTIR 6643, 2006");
        assertThat(sources.citation("Somebody, Somewhere (1999)")).isEqualTo("Somebody, Somewhere (1999)");
    }

    /** Whoever changes a figure sees this fail, writes the new checksum, and thinks about the number before it. */
    @Test
    void versionHoldsTheChecksumOfTheData() throws IOException {
        CRC32 hash = new CRC32();
        for (String id : LIBRARY.ids()) {
            hash.update(lines(FOLDER.resolve(id + ".json")));
        }
        hash.update(lines(FOLDER.resolve("sources.bib")));
        assertThat(LIBRARY.dataVersion()).matches("\\d+-" + String.format(Locale.ROOT, "%08x", hash.getValue()));
    }

    /** Each of these is refused by the schema and by the reader, so neither lets through what the other refuses. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "/properties/molarMass/unit=kg",
                "/properties/molarMass/value=heavy",
                "/properties/molarMass/usual=[1, 2]",
                "/properties/molarMass/source=",
                "/properties/molarMass={\"not-available\": \"no idea\"}",
                "/properties/molarMass/uncertainty={\"relative\": 0}",
                "/properties/molarMass/uncertainty={\"factor\": 0.5}",
                "/properties/molarMass/uncertainty={\"about\": 0.5}",
                "/properties/vapourPressure/form=log10-invers",
                "/properties/vapourPressure/form=linear",
                "/properties/vapourPressure/coefficients=[11.3]",
                "/properties/vapourPressure/coefficients=[11.3, 5667, 1]",
                "/properties/vapourPressure/unit=bar",
                "/properties/vapourPressure/outside=guess",
                "/properties/vapourPressure/range=[300]",
                "/properties/vapourPressure/note=hello",
                "/properties/vapourPressure/from memory=1",
                "/properties/boilerPressure/usual=",
                "/properties/filmLimit={\"not-available\": \"\"}",
                "/properties/resistsOxidation/value=1",
                "/properties/colour={}",
                "/use=decoration",
                "/family=goose",
                "/id=704 Type",
                "/format=2",
                "/temperatureSpan=[240]",
                "/colour=blue"
            })
    void schemaAndReaderRefuseTheSame(String change) throws IOException {
        ObjectNode changed = changed(change);
        assertThat(schema().validate(changed)).isNotEmpty();
        assertThat(assertThrows(
                                InputRefusedException.class,
                                () -> FluidFileReader.read(
                                        "changed.json", changed.toString().getBytes(StandardCharsets.UTF_8)))
                        .faults())
                .isNotEmpty();
    }

    @Test
    void schemaNamesTheUnitsAndFormsThatTheReaderAccepts() throws IOException {
        JsonNode properties = schemaTree().at("/properties/properties/properties");
        for (FluidProperty property : FluidProperty.values()) {
            JsonNode own = properties.get(property.key());
            switch (property.kind()) {
                case FLAG -> assertThat(own.at("/$ref").stringValue()).endsWith("/flag");
                case NUMBER -> {
                    JsonNode number = property.required() ? own : own.at("/oneOf/1");
                    assertThat(texts(number.at("/allOf/1/properties/unit/enum")))
                            .isEqualTo(property.units());
                }
                case RELATION -> {
                    assertThat(texts(own.at("/allOf/1/properties/unit/enum")))
                            .containsExactlyInAnyOrderElementsOf(property.units());
                    assertThat(texts(own.at("/allOf/1/properties/form/enum")))
                            .isEqualTo(EquationForm.texts(property.forms()));
                }
            }
        }
        assertThat(texts(schemaTree().at("/properties/properties/required")))
                .isEqualTo(Stream.of(FluidProperty.values())
                        .map(FluidProperty::key)
                        .toList());
    }

    private static ObjectNode changed(String change) throws IOException {
        int equals = change.indexOf('=');
        List<String> path = new ArrayList<>(List.of(change.substring(1, equals).split("/")));
        String last = path.remove(path.size() - 1);
        String value = change.substring(equals + 1);
        ObjectNode root = (ObjectNode) tree("704-type");
        JsonNode parent = root;
        for (String name : path) {
            parent = parent.get(name);
        }
        boolean json = value.startsWith("{") || value.startsWith("[") || value.matches("\\d+");
        ((ObjectNode) parent)
                .set(
                        last,
                        json ? MAPPER.readTree(value) : MAPPER.getNodeFactory().stringNode(value));
        return root;
    }

    private static JsonNode tree(String id) throws IOException {
        return MAPPER.readTree(Files.readAllBytes(FOLDER.resolve(id + ".json")));
    }

    private static JsonNode schemaTree() throws IOException {
        return MAPPER.readTree(Files.readAllBytes(FOLDER.resolve("fluid.schema.json")));
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schemaTree());
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::stringValue).toList();
    }

    private static byte[] lines(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8).replace("\r", "").getBytes(StandardCharsets.UTF_8);
    }
}
