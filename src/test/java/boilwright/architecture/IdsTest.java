package boilwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.MarginId;
import boilwright.thermal.EventKind;
import boilwright.thermal.SeriesQuantity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Events, margins and recorded quantities are spelled in their enums alone, so that the compiler leads to each place. */
class IdsTest {
    private static final Path MAIN = Path.of("src", "main", "java", "boilwright");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Set<String> ENUMS = Set.of("EventKind.java", "MarginId.java", "SeriesQuantity.java");

    private static final String FIELD = "a field of the rig file";
    private static final String ANSWER = "a key of the JSON of an answer, for the value at steady state or at a time";
    private static final String DATA = "a field of a data file";
    private static final String WORD = "a word of a table or picture";
    private static final String PLAN_LIMIT = "the id of a limit of a plan";

    /**
     * A word that means something else and is only spelled alike.
     *
     * @param file path below the sources, or how it begins
     * @param words the words
     * @param meaning what they are there
     */
    private record Namesake(String file, Set<String> words, String meaning) {}

    private static final List<Namesake> NAMESAKES = List.of(
            new Namesake("rig/LimitFields.java", Set.of("cap", "source"), FIELD),
            new Namesake("rig/RigPaths.java", Set.of("foreline"), FIELD),
            new Namesake("rig/VacuumFields.java", Set.of("foreline", "gauge"), FIELD),
            new Namesake("rig/VesselFields.java", Set.of("foreline"), FIELD),
            new Namesake("rig/file/Rig", Set.of("cap", "foreline", "source"), FIELD),
            new Namesake("rig/file/Migrations.java", Set.of("foreline"), FIELD),
            new Namesake("rig/file/Vacuum", Set.of("gauge"), FIELD),
            new Namesake("rig/SupplyKind.java", Set.of("chiller"), "a kind of supply"),
            new Namesake("dashboard/drawing/Part.java", Set.of("foreline"), FIELD),
            new Namesake("dashboard/pages/NewRigForm.java", Set.of("foreline", "source", "water-flow"), "a question"),
            new Namesake("dashboard/pages/RigPage.java", Set.of("foreline"), FIELD),
            new Namesake("dashboard/PageName.java", Set.of("heat"), "a page"),
            new Namesake("rig/file/SourceFileReader.java", Set.of("source"), DATA),
            new Namesake("fluid/FluidFileReader.java", Set.of("source"), DATA),
            new Namesake("fluid/GlycolWater.java", Set.of("source"), DATA),
            new Namesake("outgassing/MaterialFile.java", Set.of("source"), DATA),
            new Namesake(
                    "report/CheckJson.java",
                    Set.of(
                            "bodyGlassStressPa",
                            "boilerGlassStressPa",
                            "boilerInnerFaceK",
                            "boilerPressurePa",
                            "capK",
                            "heatDeliveredW",
                            "heatToAirW",
                            "heatToWaterW",
                            "hottestOutsideK",
                            "liquidTemperatureK",
                            "sourceInputW",
                            "vapourFlowKgPerS",
                            "waterOutK"),
                    ANSWER),
            new Namesake("answers/Part.java", Set.of("heat", "jets"), ANSWER),
            new Namesake("report/CompareJson.java", Set.of("heatDeliveredW", "sourceInputW"), ANSWER),
            new Namesake("report/DrillJson.java", Set.of("fault"), ANSWER),
            new Namesake("report/FluidsJson.java", Set.of("boilerPressurePa", "liquidTemperatureK"), ANSWER),
            new Namesake("report/FluidsJson.java", Set.of("source"), ANSWER),
            new Namesake("report/JsonParts.java", Set.of("timeS"), ANSWER),
            new Namesake("report/SizeJson.java", Set.of("heatToWaterW", "liquidTemperatureK", "sourceInputW"), ANSWER),
            new Namesake("report/SpreadJson.java", Set.of("source", "timeS"), ANSWER),
            new Namesake("report/VacuumJson.java", Set.of("foreline", "forelinePa", "gauge", "timeS"), ANSWER),
            new Namesake("report/WaterJson.java", Set.of("capK", "heatToWaterW", "iceKg", "waterOutK"), ANSWER),
            new Namesake("report/DrillText.java", Set.of("fault"), WORD),
            new Namesake("report/VacuumPage.java", Set.of("foreline", "gauge"), WORD),
            new Namesake("report/VacuumPicture.java", Set.of("foreline", "gauge"), WORD),
            new Namesake("report/WaterText.java", Set.of("heat"), WORD),
            new Namesake("sequence/PlanWords.java", Set.of("foreline", "water-out"), PLAN_LIMIT),
            new Namesake("companion/Alarms.java", Set.of("foreline", "water-out"), PLAN_LIMIT),
            new Namesake("companion/StepWarnings.java", Set.of("foreline"), PLAN_LIMIT));

    @Test
    void idsAreSpelledInTheirEnumsAlone() throws IOException {
        Set<String> ids = ids();
        Set<String> spelled = new TreeSet<>();
        Set<String> met = new HashSet<>();
        for (Path file : sources()) {
            String path = MAIN.relativize(file).toString().replace('\\', '/');
            Set<String> allowed = NAMESAKES.stream()
                    .filter(n -> path.startsWith(n.file()))
                    .flatMap(n -> n.words().stream())
                    .collect(Collectors.toSet());
            for (String literal : literals(file)) {
                if (ids.contains(literal) && !allowed.contains(literal)) {
                    spelled.add(path + ": " + literal);
                } else if (ids.contains(literal)) {
                    NAMESAKES.stream().filter(n -> path.startsWith(n.file())).forEach(n -> met.add(n.file() + literal));
                }
            }
        }
        assertThat(spelled).isEmpty();
        assertThat(NAMESAKES)
                .allSatisfy(n -> assertThat(n.words())
                        .as("%s: %s, still spelled there", n.file(), n.meaning())
                        .allMatch(word -> met.contains(n.file() + word)));
    }

    /** Files of answers name a thing by its id: two of one kind must not share one. */
    @Test
    void noTwoShareAnId() {
        assertThat(Arrays.stream(EventKind.values()).map(EventKind::id)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(MarginId.values()).map(MarginId::id)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(SeriesQuantity.values()).map(IdsTest::key)).doesNotHaveDuplicates();
    }

    @Test
    void everyMarginHasATitleAndTheUnitStandsAtTheEndOfAKey() {
        assertThat(MarginId.values())
                .allSatisfy(id -> assertThat(id.title()).as(id.id()).isNotBlank());
        assertThat(SeriesQuantity.values())
                .allSatisfy(q -> assertThat(key(q))
                        .matches(
                                switch (q.kind()) {
                                    case TIME -> ".*S";
                                    case TEMPERATURE -> ".*K";
                                    case FLOW -> ".*KgPerS";
                                    case PRESSURE -> ".*Pa";
                                    case HEAT -> ".*W";
                                    case MASS -> ".*Kg";
                                    case SHARE, GAS -> ".*(Fraction|Share|Lit)";
                                    case JUDGED -> ".*(K|Pa)";
                                }));
    }

    private static Set<String> ids() {
        Stream<String> series = Arrays.stream(SeriesQuantity.values())
                .flatMap(q -> Stream.of(key(q), q.isOfStage() ? key(q).substring("stage1".length()) : key(q)));
        return Stream.of(
                        Arrays.stream(EventKind.values()).map(EventKind::id),
                        Arrays.stream(MarginId.values()).map(MarginId::id),
                        series)
                .flatMap(s -> s)
                .collect(Collectors.toSet());
    }

    private static String key(SeriesQuantity quantity) {
        return quantity.key(quantity.isOfStage() ? 1 : 0);
    }

    private static List<String> literals(Path file) throws IOException {
        return LITERAL.matcher(Files.readString(file))
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !ENUMS.contains(file.getFileName().toString()))
                    .sorted()
                    .toList();
        }
    }
}
