package boilwright.rig.file;

import static boilwright.rig.file.Texts.changed;
import static boilwright.rig.file.Texts.changedText;
import static boilwright.rig.file.Texts.faults;
import static org.assertj.core.api.Assertions.assertThat;

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
                "pump.json, line 21: stages[2].height is \"30 cm\", above the column, which is 250 mm high. Accepted is"
                        + " at most the height of the column.");
        says(
                GLASS,
                "\"175 mm\"",
                "\"100 mm\"",
                "pump.json, line 20: stages[1].height is \"100 mm\", not above the stage before it, \"bottom\" at 100 mm."
                        + " Stages are listed from the bottom to the top, each higher than the last.");
        says(
                GLASS,
                "\"name\": \"middle\"",
                "\"name\": \"top\"",
                "pump.json, line 21: stages[2].name is \"top\", the name of another stage too. Every stage has a name of"
                        + " its own.",
                "pump.json, line 48: cooling.elements[0].covers[1] is \"middle\"; accepted: \"bottom\", \"top\","
                        + " \"top\".");
    }

    @Test
    void theThroatFitsInsideTheBody() {
        says(
                GLASS,
                "\"throatDiameter\": \"40 mm\", \"throatGap\": \"1.4 mm\"",
                "\"throatDiameter\": \"64 mm\", \"throatGap\": \"1.4 mm\"",
                "pump.json, line 21: stages[2].throatDiameter: the throat reaches out to a diameter of 65.4 mm, but the"
                        + " body is 65.0 mm wide inside. Throat diameter plus gap must be less than that.");
        says(
                GLASS,
                "\"throatDiameter\": \"40 mm\", \"throatGap\": \"1.4 mm\"",
                "\"throatDiameter\": \"6 mm\", \"throatGap\": \"7 mm\"",
                "pump.json, line 21: stages[2].throatGap is \"7 mm\", but the throat has a mean diameter of 6.00 mm. The"
                        + " gap must be less than that.");
    }

    @Test
    void theColumnFitsInsideTheBody() {
        says(
                GLASS,
                "\"innerDiameter\": \"35 mm\"",
                "\"innerDiameter\": \"62 mm\"",
                "pump.json, line 15: column.segments[0].innerDiameter: the column has an outer diameter of 65.6 mm, but"
                        + " the body is 65.0 mm wide inside. The column must be narrower than the body.");
    }

    @Test
    void theLowestJetHasCooledWallBelowIt() {
        says(
                GLASS,
                "\"uncooledLowerHeight\": \"50 mm\"",
                "\"uncooledLowerHeight\": \"260 mm\"",
                "pump.json, line 27: body.uncooledLowerHeight is \"260 mm\", but the lowest stage, \"bottom\", is at"
                        + " 100 mm. Its jet needs cooled wall below it: accepted is less than that height.");
    }

    @Test
    void elementsCoverKnownStagesOnce() {
        says(
                GLASS,
                "[\"top\", \"middle\", \"bottom\"]",
                "[\"topp\", \"middle\", \"middle\"]",
                "pump.json, line 48: cooling.elements[0].covers[0] is \"topp\": did you mean \"top\"? Accepted:"
                        + " \"bottom\", \"middle\", \"top\".",
                "pump.json, line 48: cooling.elements[0].covers[2]: the stage \"middle\" is covered twice. One element"
                        + " covers it.");
    }

    @Test
    void aCapCoilNeedsACap() {
        says(
                METAL,
                "\"topCap\": { \"area\": \"110 cm2\", \"thickness\": \"3 mm\", \"material\": \"copper\" },",
                "",
                "pump.json, line 52: cooling.elements[0].kind is \"cap-coil\", but the rig has no topCap for it to cool."
                        + " Describe topCap or take the element out.");
    }

    @Test
    void nothingIsSolderedToGlass() {
        String coil = "{ \"kind\": \"soldered-coil\", \"covers\": [\"top\"], \"tubeInnerDiameter\": \"6 mm\","
                + " \"tubeLength\": \"1 m\" }";
        String text = Texts.sample(GLASS).replaceFirst("\\{ \"kind\": \"jacket\"[^}]*}", coil);
        assertThat(faults(text))
                .containsExactly("pump.json, line 48: cooling.elements[0].kind is soldered, but it stands on"
                        + " borosilicate. A tube can be soldered to metal only; for a glass body take a jacket.");
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
                "pump.json, line 6: charge is \"3.5 L\", which would stand 309 mm deep in the boiler; accepted is at most"
                        + " twice the boiler's inner diameter, 240 mm. If it really is \"3.5 L\", go on with --accept"
                        + " charge.");
        Rig deep = Texts.read(changed(GLASS, "\"100 mL\"", "\"3.5 L\""), "charge");
        assertThat(deep.chargeM3()).isEqualTo(0.0035);
    }

    @Test
    void areasFitTheBoiler() {
        says(
                GLASS,
                "\"125 cm2\"",
                "\"1250 cm2\"",
                "pump.json, line 11: boiler.heatedArea is \"1250 cm2\", more than a boiler of this width has; accepted is"
                        + " at most eight times its cross-section, 991 cm2.");
        says(
                GLASS,
                "\"contactArea\": \"100 cm2\"",
                "\"contactArea\": \"150 cm2\"",
                "pump.json, line 33: heatSource.contactArea is \"150 cm2\", more than boiler.heatedArea, 125 cm2."
                        + " Accepted is at most that area.");
    }

    @Test
    void theSourceFitsTheMaterialOfTheBoiler() {
        says(
                GLASS,
                "\"domed-glass\"",
                "\"machined-metal\"",
                "pump.json, line 32: heatSource.contact is \"machined-metal\", but the boiler is of borosilicate."
                        + " Accepted: \"machined-metal\" for metal, \"flat-glass\" or \"domed-glass\" for glass.");
        says(
                METAL,
                "\"material\": \"mild-steel\"",
                "\"material\": \"borosilicate\"",
                "pump.json, line 33: heatSource.kind is \"clamped-heater\", but the boiler is of borosilicate. A heater"
                        + " can be clamped to a metal boiler only; for glass take a heating-mantle or a contact-plate.");
    }

    @Test
    void aFerrousBaseIsOfFerrousMetal() {
        String induction = "\"kind\": \"induction\", \"ratedPower\": \"1.5 kW\", \"susceptor\": \"ferrous-base\","
                + " \"efficiency\": 0.85, \"contact\": \"domed-glass\"";
        String text = Texts.sample(GLASS)
                .replaceFirst("(?s)\"kind\": \"contact-plate\".*?\"domed-glass\"", induction)
                .replace("\"thermostat\": \"on-off\",", "");
        assertThat(faults(text))
                .containsExactly("pump.json, line 30: heatSource.susceptor is \"ferrous-base\", but the boiler is of"
                        + " borosilicate, which an induction field does not heat. Accepted: \"plate\" or \"none\", or"
                        + " a boiler of mild-steel.");
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
                "pump.json, line 40: schedule[0].at is \"5 min\"; the first step of the schedule begins at \"0 min\".");
        says(
                GLASS,
                "\"10 min\"",
                "\"0 s\"",
                "pump.json, line 41: schedule[1].at is \"0 s\", not after the step before it at \"0 min\". Steps are"
                        + " listed in the order of time.");
        says(
                GLASS,
                "\"power\": \"100 %\"",
                "\"power\": \"100 %\", \"holdOil\": \"215 degC\"",
                "pump.json, line 41: schedule[1] needs either \"power\" or \"holdOil\", and only one of them.");
        says(
                GLASS,
                "\"power\": \"100 %\"",
                "\"holdOil\": \"300 K\"",
                "pump.json, line 41: schedule[1].holdOil is \"300 K\": did you mean 300 degC? Usual is 46.85 degC to"
                        + " 346.85 degC. If it really is \"300 K\", go on with --accept schedule[1].holdOil.");
    }

    @Test
    void oilIsHeldAboveTheRoom() {
        String text = changed(GLASS, "\"power\": \"100 %\"", "\"holdOil\": \"30 degC\"");
        text = changedText(text, "\"22 degC\"", "\"32 degC\"");
        assertThat(faults(text))
                .containsExactly(
                        "pump.json, line 41: schedule[1].holdOil is \"30 degC\", not above the room at 32.0 degC."
                                + " Heating cannot hold the oil there.");
    }

    @Test
    void pressuresAndLimitsAreInOrder() {
        String text = changed(GLASS, "\"40 mTorr\"", "\"105 kPa\"");
        assertThat(faults(text, "foreline.pressure"))
                .containsExactly("pump.json, line 43: foreline.pressure is \"105 kPa\", not below the air pressure of"
                        + " 101 kPa. A backing pump holds far less.");
        says(
                GLASS,
                "\"room\": {",
                "\"limits\": { \"waterInLow\": \"30 degC\", \"waterInHigh\": \"25 degC\" }, \"room\": {",
                "pump.json, line 51: limits.waterInLow is \"30 degC\", not below limits.waterInHigh, \"25 degC\".");
    }

    @Test
    void whatWasRefusedAlreadyGivesNoSecondFault() {
        says(
                GLASS,
                "\"65 mm\"",
                "\"65 kg\"",
                "pump.json, line 25: body.innerDiameter: \"65 kg\" is a mass; a length is wanted, in one of these units:"
                        + " m, cm, mm, um, in, ft.");
        says(
                GLASS,
                "\"height\": \"250 mm\", \"innerDiameter\"",
                "\"height\": \"2 mm\", \"innerDiameter\"",
                "pump.json, line 15: column.segments[0].height is \"2 mm\": did you mean 2 cm? Accepted is 5 mm to"
                        + " 5000 mm.");
    }
}
