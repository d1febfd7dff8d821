package boilwright.rig.file;

import static boilwright.errors.Said.said;
import static boilwright.rig.file.Texts.changed;
import static boilwright.rig.file.Texts.changedText;
import static boilwright.rig.file.Texts.faults;
import static org.assertj.core.api.Assertions.assertThat;

import boilwright.errors.MessageKey;
import boilwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What the reader says when the parts of a rig do not fit one another. */
class RigReaderFitTest {
    private static final String GLASS = "glass-on-plate";
    private static final String METAL = "metal-clamped";

    private static void says(String sample, String from, String to, String... messages) {
        assertThat(faults(changed(sample, from, to))).containsExactly(messages);
    }

    @Test
    void stagesStandOnTheColumnInOrderWithNamesOfTheirOwn() {
        says(
                GLASS,
                "\"top\", \"height\": \"250 mm\"",
                "\"top\", \"height\": \"30 cm\"",
                said(
                        MessageKey.RIG_STAGE_ABOVE_COLUMN,
                        "pump.json, line 21",
                        "stages[2].height",
                        "\"30 cm\"",
                        "250 mm"));
        says(
                GLASS,
                "\"175 mm\"",
                "\"100 mm\"",
                said(
                        MessageKey.RIG_STAGE_ORDER,
                        "pump.json, line 20",
                        "stages[1].height",
                        "\"100 mm\"",
                        "\"bottom\"",
                        "100 mm"));
        says(
                GLASS,
                "\"name\": \"middle\"",
                "\"name\": \"top\"",
                said(MessageKey.RIG_STAGE_NAME_DOUBLED, "pump.json, line 21", "stages[2].name", "\"top\""),
                said(
                        MessageKey.RIG_CHOICE_UNKNOWN,
                        "pump.json, line 48",
                        "cooling.elements[0].covers[1]",
                        "\"middle\"",
                        "\"bottom\", \"top\", \"top\""));
    }

    @Test
    void theThroatFitsInsideTheBody() {
        says(
                GLASS,
                "\"throatDiameter\": \"40 mm\", \"throatGap\": \"1.4 mm\"",
                "\"throatDiameter\": \"64 mm\", \"throatGap\": \"1.4 mm\"",
                said(
                        MessageKey.RIG_THROAT_WIDER_THAN_BODY,
                        "pump.json, line 21",
                        "stages[2].throatDiameter",
                        "65.4 mm",
                        "65.0 mm"));
        says(
                GLASS,
                "\"throatDiameter\": \"40 mm\", \"throatGap\": \"1.4 mm\"",
                "\"throatDiameter\": \"6 mm\", \"throatGap\": \"7 mm\"",
                said(
                        MessageKey.RIG_THROAT_GAP_CLOSED,
                        "pump.json, line 21",
                        "stages[2].throatGap",
                        "\"7 mm\"",
                        "6.00 mm"));
    }

    @Test
    void theColumnFitsInsideTheBody() {
        says(
                GLASS,
                "\"innerDiameter\": \"35 mm\"",
                "\"innerDiameter\": \"62 mm\"",
                said(
                        MessageKey.RIG_COLUMN_WIDER_THAN_BODY,
                        "pump.json, line 15",
                        "column.segments[0].innerDiameter",
                        "65.6 mm",
                        "65.0 mm"));
    }

    @Test
    void theLowestJetHasCooledWallBelowIt() {
        says(
                GLASS,
                "\"uncooledLowerHeight\": \"50 mm\"",
                "\"uncooledLowerHeight\": \"260 mm\"",
                said(
                        MessageKey.RIG_UNCOOLED_ABOVE_STAGE,
                        "pump.json, line 27",
                        "body.uncooledLowerHeight",
                        "\"260 mm\"",
                        "\"bottom\"",
                        "100 mm"));
    }

    @Test
    void elementsCoverKnownStagesOnce() {
        says(
                GLASS,
                "[\"top\", \"middle\", \"bottom\"]",
                "[\"topp\", \"middle\", \"middle\"]",
                said(
                        MessageKey.RIG_CHOICE_UNKNOWN_NEAR,
                        "pump.json, line 48",
                        "cooling.elements[0].covers[0]",
                        "\"topp\"",
                        "\"bottom\", \"middle\", \"top\"",
                        "top"),
                said(
                        MessageKey.RIG_STAGE_COVERED_TWICE,
                        "pump.json, line 48",
                        "cooling.elements[0].covers[2]",
                        "\"middle\""));
    }

    @Test
    void aCapCoilNeedsACap() {
        says(
                METAL,
                "\"topCap\": { \"area\": \"110 cm2\", \"thickness\": \"3 mm\", \"material\": \"copper\" },",
                "",
                said(MessageKey.RIG_CAP_COIL_WITHOUT_CAP, "pump.json, line 52", "cooling.elements[0].kind"));
    }

    @Test
    void nothingIsSolderedToGlass() {
        String coil = "{ \"kind\": \"soldered-coil\", \"covers\": [\"top\"], \"tubeInnerDiameter\": \"6 mm\","
                + " \"tubeLength\": \"1 m\" }";
        String text = Texts.sample(GLASS).replaceFirst("\\{ \"kind\": \"jacket\"[^}]*}", coil);
        assertThat(faults(text))
                .containsExactly(said(
                        MessageKey.RIG_COIL_ON_GLASS,
                        "pump.json, line 48",
                        "cooling.elements[0].kind",
                        "borosilicate"));
    }

    @Test
    void waterNeedsElementsToPass() {
        String text = changed(GLASS, "\"flow\": \"1 L/min\",", "\"flow\": \"1 L/min\", \"chillerCapacity\": \"1 kW\",");
        text = text.replaceFirst("\"elements\": \\[[^\\]]*][^\\]]*]", "\"elements\": []");
        String end =
                " but cooling.elements is empty, so this water cools nothing. Describe the jackets or coils, or set"
                        + " the flow to \"0 L/min\" and leave out the chiller.";
        assertThat(faults(text))
                .containsExactly(
                        "pump.json, line 46: cooling.supply.flow is \"1 L/min\"," + end,
                        "pump.json, line 46: cooling.supply.chillerCapacity is \"1 kW\"," + end);
        String still =
                changedText(text, "\"flow\": \"1 L/min\", \"chillerCapacity\": \"1 kW\",", "\"flow\": \"0 L/s\",");
        assertThat(Texts.read(still).cooling().elements()).isEmpty();
    }

    @Test
    void theChargeFitsTheBoiler() {
        says(
                GLASS,
                "\"100 mL\"",
                "\"3.5 L\"",
                said(MessageKey.RIG_CHARGE_TOO_DEEP, "pump.json, line 6", "charge", "\"3.5 L\"", "309 mm", "240 mm"));
        Rig deep = Texts.read(changed(GLASS, "\"100 mL\"", "\"3.5 L\""), "charge");
        assertThat(deep.chargeM3()).isEqualTo(0.0035);
    }

    @Test
    void areasFitTheBoiler() {
        says(
                GLASS,
                "\"125 cm2\"",
                "\"1250 cm2\"",
                said(
                        MessageKey.RIG_HEATED_AREA_TOO_LARGE,
                        "pump.json, line 11",
                        "boiler.heatedArea",
                        "\"1250 cm2\"",
                        "991 cm2"));
        says(
                GLASS,
                "\"contactArea\": \"100 cm2\"",
                "\"contactArea\": \"150 cm2\"",
                said(
                        MessageKey.RIG_CONTACT_LARGER_THAN_HEATED,
                        "pump.json, line 33",
                        "heatSource.contactArea",
                        "\"150 cm2\"",
                        "125 cm2"));
    }

    @Test
    void theSourceFitsTheMaterialOfTheBoiler() {
        says(
                GLASS,
                "\"domed-glass\"",
                "\"machined-metal\"",
                said(
                        MessageKey.RIG_CONTACT_MISFIT,
                        "pump.json, line 32",
                        "heatSource.contact",
                        "\"machined-metal\"",
                        "borosilicate"));
        says(
                METAL,
                "\"material\": \"mild-steel\"",
                "\"material\": \"borosilicate\"",
                said(
                        MessageKey.RIG_CLAMPED_ON_GLASS,
                        "pump.json, line 33",
                        "heatSource.kind",
                        "borosilicate",
                        "clamped-heater"));
    }

    @Test
    void aFerrousBaseIsOfFerrousMetal() {
        String induction = "\"kind\": \"induction\", \"ratedPower\": \"1.5 kW\", \"susceptor\": \"ferrous-base\","
                + " \"efficiency\": 0.85, \"contact\": \"domed-glass\"";
        String text = Texts.sample(GLASS)
                .replaceFirst("(?s)\"kind\": \"contact-plate\".*?\"domed-glass\"", induction)
                .replace("\"thermostat\": \"on-off\",", "");
        assertThat(faults(text))
                .containsExactly(said(
                        MessageKey.RIG_SUSCEPTOR_NOT_FERROUS,
                        "pump.json, line 30",
                        "heatSource.susceptor",
                        "borosilicate"));
        assertThat(Texts.read(changedText(text, "ferrous-base", "plate"))
                        .heatSource()
                        .ratedPowerW())
                .isEqualTo(1500);
    }

    @Test
    void theScheduleBeginsAtZeroAndGoesOn() {
        says(
                GLASS,
                "\"0 min\"",
                "\"5 min\"",
                said(MessageKey.RIG_SCHEDULE_START, "pump.json, line 40", "schedule[0].at", "\"5 min\""));
        says(
                GLASS,
                "\"10 min\"",
                "\"0 s\"",
                said(MessageKey.RIG_SCHEDULE_ORDER, "pump.json, line 41", "schedule[1].at", "\"0 s\"", "\"0 min\""));
        says(
                GLASS,
                "\"power\": \"100 %\"",
                "\"power\": \"100 %\", \"holdOil\": \"215 degC\"",
                said(MessageKey.RIG_SCHEDULE_ONE_OF, "pump.json, line 41", "schedule[1]"));
        says(
                GLASS,
                "\"power\": \"100 %\"",
                "\"holdOil\": \"300 K\"",
                said(
                        MessageKey.RIG_FIELD_SLIP,
                        "pump.json, line 41",
                        "schedule[1].holdOil",
                        "\"300 K\"",
                        "300 degC",
                        "46.85 degC",
                        "346.85 degC"));
    }

    @Test
    void oilIsHeldAboveTheRoom() {
        String text = changed(GLASS, "\"power\": \"100 %\"", "\"holdOil\": \"30 degC\"");
        text = changedText(text, "\"22 degC\"", "\"32 degC\"");
        assertThat(faults(text))
                .containsExactly(said(
                        MessageKey.RIG_HOLD_BELOW_ROOM,
                        "pump.json, line 41",
                        "schedule[1].holdOil",
                        "\"30 degC\"",
                        "32.0 degC"));
    }

    @Test
    void pressuresAndLimitsAreInOrder() {
        String text = changed(GLASS, "\"40 mTorr\"", "\"105 kPa\"");
        assertThat(faults(text, "foreline.pressure"))
                .containsExactly(said(
                        MessageKey.RIG_FORELINE_ABOVE_ROOM,
                        "pump.json, line 43",
                        "foreline.pressure",
                        "\"105 kPa\"",
                        "101 kPa"));
        says(
                GLASS,
                "\"room\": {",
                "\"limits\": { \"waterInLow\": \"30 degC\", \"waterInHigh\": \"25 degC\" }, \"room\": {",
                said(
                        MessageKey.RIG_LIMITS_CROSSED,
                        "pump.json, line 51",
                        "limits.waterInLow",
                        "\"30 degC\"",
                        "\"25 degC\""));
    }

    @Test
    void whatWasRefusedAlreadyGivesNoSecondFault() {
        says(
                GLASS,
                "\"65 mm\"",
                "\"65 kg\"",
                said(
                        MessageKey.RIG_FIELD_QUANTITY,
                        "pump.json, line 25",
                        "body.innerDiameter",
                        "\"65 kg\" is a mass; a length is wanted, in one of these units: m, cm, mm, um, in, ft."));
        says(
                GLASS,
                "\"height\": \"250 mm\", \"innerDiameter\"",
                "\"height\": \"2 mm\", \"innerDiameter\"",
                said(
                        MessageKey.RIG_FIELD_RANGE_SLIP,
                        "pump.json, line 15",
                        "column.segments[0].height",
                        "\"2 mm\"",
                        "2 cm",
                        "5 mm",
                        "5000 mm"));
    }
}
