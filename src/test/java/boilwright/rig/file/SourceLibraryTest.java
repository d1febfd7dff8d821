package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.fluid.Bibliography;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.OfferedSource;
import boilwright.rig.SourceKind;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The library of heat sources, its files, and files of a user's own with what can be wrong in them. */
class SourceLibraryTest {
    private static final Path FOLDER = Path.of("fluid-data", "heat-sources");
    private static final String GOOD = """
            { "format": 1, "sources": [
              { "id": "my-plate", "title": "my plate", "heatSource": {
                  "kind": "contact-plate", "ratedPower": "1.2 kW", "contact": "domed-glass", "contactArea": "150 cm2",
                  "heatCapacity": "800 J/K", "limit": "450 degC", "thermostat": "on-off", "lossArea": "300 cm2" },
                "ranges": { "limit": ["420 degC", "480 degC"] } } ] }
            """;

    @TempDir
    Path folder;

    private SourceLibrary read(String text) throws IOException {
        return read(text, Set.of());
    }

    private SourceLibrary read(String text, Set<String> accepted) throws IOException {
        Path file = Files.writeString(folder.resolve("mine.json"), text);
        return SourceLibrary.builtIn().withFile(file, accepted);
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(FOLDER.resolve("heat-source.schema.json")), InputFormat.JSON);
    }

    @Test
    void thePublishedSchemaIsTheOneOfTheCatalogue() throws IOException {
        assertThat(RigSchema.sourcesText())
                .as("write the schema's text to fluid-data/heat-sources/heat-source.schema.json")
                .isEqualTo(Files.readString(FOLDER.resolve("heat-source.schema.json")));
    }

    @Test
    void theIndexListsTheFilesAndEachKeepsToTheSchema() throws IOException {
        Set<String> files = new TreeSet<>();
        try (Stream<Path> entries = Files.list(FOLDER)) {
            entries.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json"))
                    .filter(name -> !name.equals("index.json") && !name.equals("heat-source.schema.json"))
                    .map(name -> name.replace(".json", ""))
                    .forEach(files::add);
        }
        assertThat(SourceLibrary.files()).containsExactlyInAnyOrderElementsOf(files);
        for (String file : files) {
            assertThat(schema().validate(Files.readString(FOLDER.resolve(file + ".json")), InputFormat.JSON))
                    .as(file)
                    .isEmpty();
        }
        assertThat(schema().validate(GOOD, InputFormat.JSON)).isEmpty();
    }

    @Test
    void everyKindIsThereWithRangesAndASource() throws IOException {
        List<OfferedSource> all = SourceLibrary.builtIn().sources();
        assertThat(all).hasSizeGreaterThanOrEqualTo(12);
        assertThat(all.stream().map(s -> s.source().kind()).distinct()).containsExactlyInAnyOrder(SourceKind.values());
        assertThat(all).allSatisfy(source -> {
            assertThat(source.citation()).isNotBlank();
            assertThat(source.note()).isNotBlank();
            if (source.source().kind() != SourceKind.IMMERSED_ELEMENT) {
                assertThat(source.ranges()).isNotEmpty();
            }
        });
        String bibliography = Files.readString(FOLDER.resolve("sources.bib"));
        Set<String> used = new TreeSet<>();
        for (String file : SourceLibrary.files()) {
            Matcher key = Pattern.compile("\"source\": \"([^\"]+)\"")
                    .matcher(Files.readString(FOLDER.resolve(file + ".json")));
            while (key.find()) {
                used.add(key.group(1));
            }
        }
        assertThat(Bibliography.keys(bibliography)).containsExactlyInAnyOrderElementsOf(used);
    }

    /** What a source is said to be lies in the range that is said to be possible. */
    @Test
    void everyFigureLiesInItsRange() {
        for (OfferedSource source : SourceLibrary.builtIn().sources()) {
            for (OfferedSource.FigureRange range : source.ranges()) {
                OptionalDouble figure = figure(source.source(), range.field());
                figure.ifPresent(value ->
                        assertThat(value).as(source.id() + " " + range.field()).isBetween(range.low(), range.high()));
            }
        }
    }

    private static OptionalDouble figure(HeatSource source, String field) {
        return switch (field) {
            case "ratedPower" -> OptionalDouble.of(source.ratedPowerW());
            case "limit" -> source.limitK();
            case "efficiency" -> OptionalDouble.of(source.efficiency());
            case "contactConductance" ->
                source.body().map(ContactBody::conductance).orElse(OptionalDouble.empty());
            default -> throw new AssertionError("no figure " + field);
        };
    }

    @Test
    void onesOwnComeFirst() throws IOException {
        OfferedSource mine = read(GOOD).sources().get(0);
        assertThat(mine.id()).isEqualTo("my-plate");
        assertThat(mine.source().ratedPowerW()).isEqualTo(1200);
        assertThat(mine.ranges().get(0).low()).isCloseTo(693.15, within(1e-9));
        assertThat(mine.citation()).isEmpty();
    }

    /** Each refusal names the file, the field, what was found and what is accepted. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "\"1.2 kW\"; \"1.2 kPa\"; sources[0].heatSource.ratedPower; a power is wanted",
                "\"1.2 kW\"; 1200; sources[0].heatSource.ratedPower; without a unit",
                "\"1.2 kW\"; \"1200 kW\"; sources[0].heatSource.ratedPower; did you mean",
                "\"lossArea\"; \"lossarea\"; sources[0].heatSource.lossarea; Did you mean lossArea",
                "\"lossArea\"; \"colour\"; sources[0].heatSource.colour; not a known field",
                "\"420 degC\", \"480 degC\"; \"480 degC\", \"420 degC\"; sources[0].ranges.limit; the lower first",
                "\"420 degC\", \"480 degC\"; \"420 degC\"; sources[0].ranges.limit; the lower first",
                "\"420 degC\"; \"420 W\"; sources[0].ranges.limit[0]; a temperature is wanted",
                "{ \"limit\"; { \"wrappedArea\"; sources[0].ranges.wrappedArea; not a known field",
                "my-plate; My Plate; sources[0].id; small letters",
                "my-plate; burner-1000; sources[0].id; another source",
                "\"title\"; \"titel\"; sources[0].titel; Did you mean title",
                "contact-plate; hot-plate; sources[0].heatSource.kind; contact-plate",
                "\"format\": 1; \"format\": 7; format; accepted: 1",
                "\"sources\": [; \"source\": [; source; Did you mean sources",
            })
    void whatIsWrongIsNamed(String from, String to, String field, String words) {
        String changed = GOOD.replace(from, to);
        assertThat(changed).isNotEqualTo(GOOD);
        InputRefusedException refusal = assertThrows(InputRefusedException.class, () -> read(changed));
        assertThat(refusal.faults().stream().map(Message::text))
                .anySatisfy(text -> assertThat(text).contains("mine.json", field, words));
    }

    @Test
    void allFaultsAreToldTogetherInTheOrderOfTheFile() {
        String bad = GOOD.replace("\"1.2 kW\"", "\"1.2 kPa\"")
                .replace("\"450 degC\"", "450")
                .replace("420 degC", "420 W");
        List<String> lines = new ArrayList<>();
        assertThrows(InputRefusedException.class, () -> read(bad))
                .faults()
                .forEach(fault -> lines.add(fault.text().replaceAll(".*, line (\\d+):.*", "$1")));
        assertThat(lines).containsExactly("3", "4", "5");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "[]; one object in braces",
                "{; cut off",
                "{\"format\": 1, \"sources\": []}; 1 to 200 heat sources",
                "~ ~; empty"
            })
    void aFileThatIsNoneIsRefused(String text, String words) {
        InputRefusedException refusal = assertThrows(InputRefusedException.class, () -> read(text));
        assertThat(refusal.faults().get(0).text()).contains(words);
    }

    @Test
    void aFolderIsRefused() {
        InputRefusedException refusal = assertThrows(
                InputRefusedException.class, () -> SourceLibrary.builtIn().withFile(folder, Set.of()));
        assertThat(refusal.faults().get(0).text()).contains("folder");
    }

    @Test
    void anUnusualValueThatIsMeantIsAccepted() throws IOException {
        String strong = GOOD.replace("1.2 kW", "1200 kW");
        assertThat(read(strong, Set.of("sources[0].heatSource.ratedPower"))
                        .sources()
                        .get(0)
                        .source()
                        .ratedPowerW())
                .isEqualTo(1.2e6);
    }
}
