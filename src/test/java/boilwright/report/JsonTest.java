package boilwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.spread.Bands;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class JsonTest {
    private final JsonNode check =
            read(CheckJson.write(Samples.check(Margin.Status.FAILS), Bands.NONE, Samples.CERTAINTY, Samples.SESSION));

    @Test
    void checkHasThePublishedKeys() {
        assertThat(check.propertyNames()).contains("format", "rig", "fluid", "steady", "events", "margins", "cautions");
        assertThat(check.get("format").intValue()).isEqualTo(1);
        assertThat(check.get("fluid").stringValue()).isEqualTo("704-type");
        assertThat(check.get("steady").propertyNames())
                .contains(
                        "liquidTemperatureK",
                        "boilerPressurePa",
                        "vapourFlowKgPerS",
                        "heatDeliveredW",
                        "heatNeededW",
                        "heatToWaterW",
                        "heatToAirW",
                        "heatToForelineW",
                        "sourceLossW",
                        "columnMach",
                        "closureRelative",
                        "assumptions",
                        "stages");
        assertThat(check.get("steady").get("stages").get(0).propertyNames())
                .contains("name", "flowKgPerS", "pressurePa", "lit", "full", "fullFlowFraction", "condensedShare");
        assertThat(check.get("events").get(0).propertyNames()).containsExactly("id", "stage", "timeS", "reason");
        assertThat(check.get("margins").get(0).propertyNames())
                .containsSubsequence("id", "title", "side", "value", "limit", "unit", "ratio", "status", "basis");
    }

    @Test
    void stagesStandBottomToTopAndMarginsAsGiven() {
        assertThat(names("stages", check.get("steady"), "name")).containsExactly("lower", "middle", "upper");
        assertThat(names("margins", check, "id"))
                .containsExactly(MarginId.HEAT.id(), MarginId.OIL_FILM.id(), MarginId.COLUMN_MACH.id());
        assertThat(check.get("margins").get(0).get("status").stringValue()).isEqualTo("fails");
    }

    @Test
    void whatIsAbsentIsNull() {
        assertThat(check.get("margins").get(1).get("limit").isNull()).isTrue();
        assertThat(check.get("events").get(6).get("timeS").isNull()).isTrue();
        assertThat(check.get("events").get(6).get("reason").stringValue()).startsWith("Too little");
        assertThat(check.get("steady").get("capK").isNull()).isTrue();
    }

    @Test
    void neededHeatIsThatOfTheNeededState() {
        assertThat(check.get("steady").get("heatNeededW").doubleValue()).isEqualTo(660);
        assertThat(check.get("steady").get("heatDeliveredW").doubleValue()).isEqualTo(412);
    }

    @Test
    void runSaysWhichItIsAndHowItCloses() {
        JsonNode run = read(RunJson.write(Samples.runAnswer("cooldown", Margin.Status.HOLDS)))
                .get("run");
        assertThat(run.get("kind").stringValue()).isEqualTo("cooldown");
        assertThat(run.get("closureRelative").doubleValue()).isEqualTo(2.1e-7);
    }

    @Test
    void theSameAnswerGivesTheSameText() {
        assertThat(CheckJson.write(Samples.check(Margin.Status.FAILS), Bands.NONE, Samples.CERTAINTY, Samples.SESSION))
                .isEqualTo(CheckJson.write(
                        Samples.check(Margin.Status.FAILS), Bands.NONE, Samples.CERTAINTY, Samples.SESSION))
                .doesNotContain("\r", "NaN")
                .endsWith("}\n");
    }

    @Test
    void aValueThatIsNoNumberIsAFaultOfTheProgram() {
        assertThatThrownBy(() -> new JsonTree().put("heatW", Double.NaN))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("heatW");
    }

    private static List<String> names(String list, JsonNode in, String key) {
        return in.get(list)
                .valueStream()
                .map(node -> node.get(key).stringValue())
                .toList();
    }

    private static JsonNode read(String text) {
        return JsonMapper.shared().readTree(text);
    }
}
