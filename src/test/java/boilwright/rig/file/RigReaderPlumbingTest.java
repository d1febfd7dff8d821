package boilwright.rig.file;

import static boilwright.errors.Said.said;
import static boilwright.errors.Said.saidThere;
import static boilwright.rig.file.Texts.BODY_COIL;
import static boilwright.rig.file.Texts.BOTH_COILS;
import static boilwright.rig.file.Texts.CAP_COIL;
import static boilwright.rig.file.Texts.CHILLER;
import static boilwright.rig.file.Texts.FAN;
import static boilwright.rig.file.Texts.HOSE;
import static boilwright.rig.file.Texts.TABLE;
import static boilwright.rig.file.Texts.TABLE_CHILLER;
import static boilwright.rig.file.Texts.TANK;
import static boilwright.rig.file.Texts.TAP;
import static boilwright.rig.file.Texts.changedText;
import static boilwright.rig.file.Texts.cooled;
import static boilwright.rig.file.Texts.faults;
import static boilwright.rig.file.Texts.placed;
import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.MessageKey;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the reader says when a supply's figures or the way of the water cannot be as described. */
class RigReaderPlumbingTest {
    private static final String BAFFLE =
            "{ \"kind\": \"baffle-coil\", \"tubeInnerDiameter\": \"6 mm\", \"tubeLength\": \"1 m\" }";

    /** The faults without their line, which moves with the supply's. */
    private static List<String> faultsOf(String supply, String elements, String... accepted) {
        return faults(cooled(supply, elements), accepted).stream()
                .map(fault -> fault.replaceFirst("^pump.json, line \\d+: ", ""))
                .toList();
    }

    private static void says(String supply, String elements, String... messages) {
        assertThat(faultsOf(supply, elements)).containsExactly(messages);
    }

    @Test
    void aSupplyIsNeeded() {
        String text = Texts.sample("version-3/glass-on-plate").replaceFirst("(?s)\"supply\": \\{.*?},", "");
        assertThat(faults(text))
                .containsExactly(
                        said(
                                MessageKey.RIG_FIELD_MISSING,
                                "pump.json, line 44",
                                "cooling.supply",
                                "Where the cooling comes from: a flow that was measured, a chiller, a tap, a tank with a pump, or fins and a fan.",
                                "an object in braces, whose kind is one of \"given-flow\", \"chiller\", \"tap\", \"tank\", \"fins-and-fan\""));
        assertThat(faults(changedText(cooled(TAP, BOTH_COILS), "\"kind\": \"tap\",", "")))
                .anyMatch(fault -> fault.contains("cooling.supply.kind is missing"));
    }

    @Test
    void airHasNoWaterForElements() {
        says(FAN, BOTH_COILS, saidThere(MessageKey.RIG_ELEMENTS_WITHOUT_WATER, "cooling.elements", "2"));
    }

    @Test
    void waterPassesSomethingThatItCools() {
        for (String supply : List.of(CHILLER, TAP, TANK)) {
            assertThat(faultsOf(supply, ""))
                    .singleElement()
                    .asString()
                    .startsWith("cooling.elements is [], so the water of the supply \"")
                    .contains("Describe the jackets or coils that it passes, or take the supply \"fins-and-fan\"");
        }
        says(TAP, HOSE, saidThere(MessageKey.RIG_CIRCUIT_COOLS_NOTHING, "cooling.elements"));
        assertThat(Texts.read(cooled(TAP, HOSE + ", " + BAFFLE)).cooling().elements())
                .hasSize(2);
    }

    @Test
    void aNameStandsOnce() {
        says(
                TAP,
                placed(HOSE, "feed", "") + ", " + BOTH_COILS + ", " + placed(HOSE, "feed", ""),
                saidThere(
                        MessageKey.RIG_ELEMENT_NAME_DOUBLED,
                        "cooling.elements[3].name",
                        "\"feed\"",
                        "cooling.elements[0]"));
    }

    @Test
    void aBaffleStandsOnceUnlessBothHaveNames() {
        says(
                TAP,
                BOTH_COILS + ", " + BAFFLE + ", " + placed(BAFFLE, "upper", ""),
                saidThere(
                        MessageKey.RIG_ELEMENT_DOUBLED,
                        "cooling.elements[3].kind",
                        "\"baffle-coil\"",
                        "cooling.elements[2]"));
        assertThat(Texts.read(cooled(
                                TAP,
                                BOTH_COILS + ", " + placed(BAFFLE, "lower", "") + ", " + placed(BAFFLE, "upper", "")))
                        .cooling()
                        .elements())
                .hasSize(4);
    }

    @Test
    void aStageIsCoveredOnce() {
        says(
                TAP,
                BODY_COIL + ", " + BODY_COIL.replace("\"middle\", \"bottom\"", "\"middle\""),
                saidThere(MessageKey.RIG_STAGE_COVERED_TWICE, "cooling.elements[1].covers[0]", "\"top\""),
                saidThere(MessageKey.RIG_STAGE_COVERED_TWICE, "cooling.elements[1].covers[1]", "\"middle\""));
    }

    @Test
    void aBranchIsNotMetAgain() {
        String again = " but the water left that branch after cooling.elements[0] and would meet it again here. That"
                + " would be a loop, or an element met twice. List the elements of a branch one after the other, or"
                + " give this branch another name.";
        says(
                TAP,
                placed(CAP_COIL, "", "a") + "," + HOSE + "," + placed(HOSE, "", "a") + "," + placed(BODY_COIL, "", "b"),
                "cooling.elements[2].branch is \"a\"," + again);
        says(
                TAP,
                placed(CAP_COIL, "", "a") + "," + placed(BODY_COIL, "", "b") + "," + placed(HOSE, "", "a"),
                "cooling.elements[2].branch is \"a\"," + again);
    }

    @Test
    void aBranchHasAnotherBesideIt() {
        says(
                TAP,
                HOSE + "," + placed(CAP_COIL, "", "left") + "," + placed(HOSE, "", "left") + "," + BODY_COIL,
                saidThere(MessageKey.RIG_BRANCH_ALONE, "cooling.elements[1].branch", "\"left\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "tubeInnerDiameter\": \"9 mm; tubeInnerDiameter\": \"0 mm; tubeInnerDiameter; 1 mm; 100 mm",
                "tubeInnerDiameter\": \"9 mm; tubeInnerDiameter\": \"-0 mm; tubeInnerDiameter; 1 mm; 100 mm",
            })
    void aZeroBoreIsAskedAbout(String from, String to, String field, String low, String high) {
        String zero = to.substring(to.lastIndexOf('"') + 1);
        says(
                TAP,
                BOTH_COILS + ", " + changedText(HOSE, from, to),
                "cooling.elements[2]." + field + " is \"" + zero
                        + "\", which leaves the water no way. When the water does"
                        + " not pass this element, take it out of cooling.elements; else write what it measures,"
                        + " accepted is " + low + " to " + high + ".");
    }

    @Test
    void aShutValveAndAClosedJacketAreAskedAboutToo() {
        assertThat(faultsOf(TAP, BOTH_COILS + ", { \"kind\": \"valve\", \"flowAtOneBar\": \"0 m3/h\" }"))
                .singleElement()
                .asString()
                .startsWith("cooling.elements[2].flowAtOneBar is \"0 m3/h\", which leaves the water no way.");
        assertThat(faults(Texts.changed("version-3/glass-on-plate", "\"6 mm\"", "\"0 mm\"")))
                .singleElement()
                .asString()
                .contains("cooling.elements[0].gap is \"0 mm\", which leaves the water no way.");
    }

    @Test
    void aPumpCurveFallsFromPointToPoint() {
        says(
                CHILLER.replace("\"9 m\"", "\"12 m\""),
                BOTH_COILS,
                saidThere(
                        MessageKey.RIG_PUMP_CURVE_RISING, "cooling.supply.pumpCurve[1].head", "\"12 m\"", "\"11 m\""));
        says(
                CHILLER.replace("\"9 m\"", "\"11 m\""),
                BOTH_COILS,
                saidThere(
                        MessageKey.RIG_PUMP_CURVE_RISING, "cooling.supply.pumpCurve[1].head", "\"11 m\"", "\"11 m\""));
        says(
                CHILLER.replace("\"3 L/min\"", "\"9 L/min\""),
                BOTH_COILS,
                saidThere(
                        MessageKey.RIG_PUMP_CURVE_ORDER,
                        "cooling.supply.pumpCurve[2].flow",
                        "\"9 L/min\"",
                        "\"9 L/min\""));
        says(
                TANK.replaceFirst(", \\{ \"flow\": \"10.*?}", ""),
                BOTH_COILS,
                saidThere(MessageKey.RIG_LIST_LENGTH, "cooling.supply.pumpCurve", "1", "2", "40"));
        assertThat(faultsOf(TANK.replaceFirst(", \"pumpCurve.*", ""), BOTH_COILS))
                .singleElement()
                .asString()
                .startsWith("cooling.supply.pumpCurve is missing. Head of the pump against its flow");
    }

    @Test
    void aChillerHasEitherARatingOrATable() {
        says(
                CHILLER + ", " + TABLE,
                BOTH_COILS,
                saidThere(MessageKey.RIG_CAPACITY_TWICE, "cooling.supply.capacity"),
                saidThere(MessageKey.RIG_CAPACITY_TWICE, "cooling.supply.ratedWaterTemperature"),
                saidThere(MessageKey.RIG_CAPACITY_TWICE, "cooling.supply.ratedRoomTemperature"));
        String end = " is missing. A chiller has either capacity with ratedWaterTemperature and ratedRoomTemperature,"
                + " such as \"1.5 kW\", \"20 degC\" and \"25 degC\", or a capacityTable from its data sheet.";
        says(
                CHILLER.replaceFirst("\"capacity\".*?25 degC\",", ""),
                BOTH_COILS,
                "cooling.supply.capacity" + end,
                "cooling.supply.ratedWaterTemperature" + end,
                "cooling.supply.ratedRoomTemperature" + end);
    }

    @Test
    void aTableIsInOrderAndWhole() {
        says(
                TABLE_CHILLER.replace(
                        "\"water\": \"20 degC\", \"room\": \"20 degC\"",
                        "\"water\": \"15 degC\", \"room\": \"20 degC\""),
                BOTH_COILS,
                saidThere(
                        MessageKey.RIG_TABLE_ORDER,
                        "cooling.supply.capacityTable[1].water",
                        "\"15 degC\"",
                        "\"15 degC\""));
        says(
                TABLE_CHILLER.replace(
                        "\"water\": \"25 degC\", \"room\": \"32 degC\"",
                        "\"water\": \"25 degC\", \"room\": \"18 degC\""),
                BOTH_COILS,
                saidThere(
                        MessageKey.RIG_TABLE_ORDER,
                        "cooling.supply.capacityTable[5].room",
                        "\"18 degC\"",
                        "\"32 degC\""));
        says(
                TABLE_CHILLER.replace(
                        "\"water\": \"20 degC\", \"room\": \"32 degC\"",
                        "\"water\": \"21 degC\", \"room\": \"32 degC\""),
                BOTH_COILS,
                saidThere(
                        MessageKey.RIG_TABLE_GRID,
                        "cooling.supply.capacityTable[3]",
                        "15.0 degC, 21.0 degC, 25.0 degC",
                        "15.0 degC, 20.0 degC, 25.0 degC"));
        says(
                TABLE_CHILLER.replaceFirst("(?s)\"capacityTable\": \\[.*?]", "\"capacityTable\": []"),
                BOTH_COILS,
                saidThere(MessageKey.RIG_LIST_LENGTH, "cooling.supply.capacityTable", "0", "1", "200"));
    }

    @Test
    void nothingIsGuessedBeyondATable() {
        says(
                TABLE_CHILLER.replace("\"setPoint\": \"18 degC\"", "\"setPoint\": \"14 degC\""),
                BOTH_COILS,
                saidThere(
                        MessageKey.RIG_TABLE_OUTSIDE,
                        "cooling.supply.setPoint",
                        "\"14 degC\"",
                        "15.0 degC",
                        "25.0 degC"));
        String hot = changedText(
                cooled(TABLE_CHILLER, BOTH_COILS), "\"temperature\": \"20 degC\"", "\"temperature\": \"34 degC\"");
        assertThat(faults(hot))
                .singleElement()
                .asString()
                .contains(
                        "room.temperature is \"34 degC\", but cooling.supply.capacityTable goes from 20.0 degC to 32.0"
                                + " degC only.");
        for (String edge : List.of("15 degC", "25 degC", "59 degF")) {
            String at = TABLE_CHILLER.replace("\"setPoint\": \"18 degC\"", "\"setPoint\": \"" + edge + "\"");
            assertThat(Texts.read(cooled(at, BOTH_COILS))).isNotNull();
        }
    }

    @Test
    void aRatingHoldsNearby() {
        says(
                CHILLER.replace("\"setPoint\": \"18 degC\"", "\"setPoint\": \"4 degC\""),
                BOTH_COILS,
                saidThere(MessageKey.RIG_RATING_FAR, "cooling.supply.setPoint", "\"4 degC\"", "\"20 degC\"", "15.0 K"));
        assertThat(Texts.read(
                        cooled(CHILLER.replace("\"setPoint\": \"18 degC\"", "\"setPoint\": \"5 degC\""), BOTH_COILS)))
                .isNotNull();
        String hot = changedText(
                cooled(CHILLER, BOTH_COILS), "\"temperature\": \"20 degC\"", "\"temperature\": \"41 degC\"");
        assertThat(faults(hot))
                .singleElement()
                .asString()
                .contains("room.temperature is \"41 degC\", but the chiller is rated at \"25 degC\".");
        says(
                CHILLER.replace("\"setPoint\": \"18 degC\"", "\"setPoint\": \"6 degC\"")
                        + ", \"capacityPerWaterKelvin\": \"150 W/K\"",
                BOTH_COILS,
                saidThere(
                        MessageKey.RIG_CHILLER_WITHOUT_CAPACITY,
                        "cooling.supply.setPoint",
                        "\"6 degC\"",
                        "\"20 degC\""));
    }

    @Test
    void iceFitsTheTank() {
        says(
                TANK + ", \"ice\": \"3 kg\"",
                BOTH_COILS,
                saidThere(MessageKey.RIG_ICE_IN_WARM_WATER, "cooling.supply.startTemperature", "\"21 degC\""));
        says(
                TANK.replace("21 degC", "32 degF") + ", \"ice\": \"12 kg\"",
                BOTH_COILS,
                saidThere(MessageKey.RIG_ICE_ABOVE_WATER, "cooling.supply.ice", "\"12 kg\"", "13.1 L", "\"12 L\""));
        assertThat(Texts.read(cooled(TANK.replace("21 degC", "273.15 K") + ", \"ice\": \"11 kg\"", BOTH_COILS)))
                .isNotNull();
    }

    @Test
    void airPassesBetweenFins() {
        says(
                FAN.replace("\"finThickness\": \"1 mm\"", "\"finThickness\": \"4 mm\""),
                "",
                saidThere(MessageKey.RIG_FINS_CLOSED, "cooling.supply.finThickness", "\"4 mm\"", "\"4 mm\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "12 L/min; 0.2 L/min; lineFlowAtOneBar; 0.2 L/s",
                "12 L/min; 12 m3/h; lineFlowAtOneBar; 12 L/min",
                "3 bar; 3 mbar; staticPressure; 3 bar",
                "12 degC; 54 degC; inletTemperature; 54 degF",
            })
    void slipsOfATapAreAskedAbout(String from, String to, String field, String meant) {
        assertThat(faultsOf(TAP.replace(from, to), BOTH_COILS))
                .singleElement()
                .asString()
                .startsWith("cooling.supply." + field + " is \"" + to + "\": did you mean " + meant + "?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.8 L/min", "0.5 L/min"})
    void aValvesFlowIsAskedAboutInItsUsualUnit(String flow) {
        String valve = BOTH_COILS + ", { \"kind\": \"valve\", \"flowAtOneBar\": \"" + flow + "\" }";
        String meant = flow.replace("L/min", "m3/h");
        assertThat(faultsOf(TAP, valve))
                .singleElement()
                .asString()
                .startsWith("cooling.elements[2].flowAtOneBar is \"" + flow + "\": did you mean " + meant + "?")
                .endsWith("go on with --accept cooling.elements[2].flowAtOneBar.");
        assertThat(Texts.read(cooled(TAP, valve), "cooling.elements[].flowAtOneBar"))
                .isNotNull();
    }

    @Test
    void aRiseMayGoDownButNotThroughTheHouse() {
        String rise = BOTH_COILS + ", { \"kind\": \"rise\", \"height\": \"HEIGHT\" }";
        assertThat(Texts.read(cooled(TAP, rise.replace("HEIGHT", "-3 m")))).isNotNull();
        assertThat(Texts.read(cooled(TAP, rise.replace("HEIGHT", "0 m")))).isNotNull();
        assertThat(faultsOf(TAP, rise.replace("HEIGHT", "-80 m")))
                .containsExactly(saidThere(
                        MessageKey.RIG_FIELD_RANGE_SLIP,
                        "cooling.elements[2].height",
                        "\"-80 m\"",
                        "-80 mm",
                        "-60 m",
                        "60 m"));
        assertThat(faultsOf(TAP, rise.replace("HEIGHT", "40 m")))
                .singleElement()
                .asString()
                .contains("did you mean 40 mm?");
    }

    @Test
    void fieldsOfAnotherKindAreNamed() {
        says(
                TAP + ", \"setPoint\": \"18 degC\"",
                BOTH_COILS,
                saidThere(MessageKey.RIG_FIELD_OF_ANOTHER_KIND, "cooling.supply.setPoint", "tap", "chiller"));
        says(
                TAP,
                BOTH_COILS + ", " + changedText(HOSE, "\"hose\",", "\"hose\", \"airConductance\": \"1 W/K\","),
                saidThere(
                        MessageKey.RIG_FIELD_OF_ANOTHER_KIND,
                        "cooling.elements[2].airConductance",
                        "hose",
                        "baffle-coil, foreline-trap"));
    }
}
