package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RigSchemaTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(RigSchema.text(), InputFormat.JSON);

    @Test
    void thePublishedSchemaIsTheOneOfTheCatalogue() throws IOException {
        assertThat(RigSchema.text())
                .as("write the schema's text to docs/rig.schema.json after a change of the catalogue")
                .isEqualTo(Files.readString(Path.of("docs", "rig.schema.json")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"neon-workshop", "mirror-club", "teaching-lab"})
    void theDemosFollowTheSchemaAsTheyAreAndAsTheyAreWritten(String name) {
        String text = Texts.demo(name);
        assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
        assertThat(SCHEMA.validate(RigWriter.write(Texts.read(text)), InputFormat.JSON))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "\"charge\"; \"chrage\"",
                "\"100 mL\"; \"100 kg\"",
                "\"100 mL\"; 100",
                "\"format\": 3; \"format\": 4",
                "\"borosilicate\"; \"diamond\"",
                "\"contact\": \"domed-glass\",; ",
                "\"lossArea\"; \"wrappedArea\"",
                "\"power\": \"100 %\"; \"power\": \"100 %\", \"holdOil\": \"200 degC\"",
                "\"gap\": \"6 mm\"; \"gap\": \"6 L\"",
            })
    void whatTheReaderRefusesForItsShapeTheSchemaRefusesToo(String from, String to) {
        String text = Texts.changed("version-3/glass-on-plate", from, to == null ? "" : to);
        assertThat(SCHEMA.validate(text, InputFormat.JSON)).isNotEmpty();
        assertThat(Texts.faults(text)).isNotEmpty();
    }

    @Test
    void everyKindOfSupplyAndElementFollowsTheSchema() {
        for (String supply : List.of(Texts.CHILLER, Texts.TABLE_CHILLER, Texts.TAP, Texts.TANK)) {
            for (String elements : List.of(Texts.IN_BRANCHES, Texts.EVERY_PART)) {
                String text = Texts.cooled(supply, elements);
                assertThat(SCHEMA.validate(text, InputFormat.JSON)).isEmpty();
                assertThat(SCHEMA.validate(RigWriter.write(Texts.read(text)), InputFormat.JSON))
                        .isEmpty();
            }
        }
        assertThat(SCHEMA.validate(Texts.cooled(Texts.FAN, ""), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void aSupplyOfTheWrongShapeIsRefusedByBoth() {
        for (String supply : List.of(
                Texts.CHILLER + ", " + Texts.TABLE,
                Texts.CHILLER.replaceFirst("\"capacity\".*?,", ""),
                Texts.TAP + ", \"volume\": \"3 L\"",
                Texts.TANK.replaceFirst(", \"pumpCurve.*", ""),
                Texts.TAP.replace("\"tap\"", "\"well\""))) {
            String text = Texts.cooled(supply, Texts.BOTH_COILS);
            assertThat(SCHEMA.validate(text, InputFormat.JSON)).as(supply).isNotEmpty();
            assertThat(Texts.faults(text)).isNotEmpty();
        }
    }

    @Test
    void aPowerMayBeAShareOrAnAmount() {
        assertThat(SCHEMA.validate(
                        Texts.changed("version-3/glass-on-plate", "\"100 %\"", "\"1.2 kW\""), InputFormat.JSON))
                .isEmpty();
    }
}
