package boilwright.rig.file;

import static boilwright.errors.Said.said;
import static boilwright.rig.file.Texts.changed;
import static boilwright.rig.file.Texts.changedText;
import static boilwright.rig.file.Texts.faults;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
import boilwright.errors.MessageKey;
import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.rig.SourceKind;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the reader says about single fields: message by message, word by word. */
class RigReaderFieldFaultsTest {
    private static final String GLASS = "glass-on-plate";

    private static void says(String from, String to, String... messages) {
        assertThat(faults(changed(GLASS, from, to))).containsExactly(messages);
    }

    @Test
    void anUnknownFieldIsNamedWithTheNearest() {
        says(
                "\"throatGap\": \"1.2 mm\"",
                "\"throatGap\": \"1.2 mm\", \"throatGapp\": \"2 mm\"",
                said(
                        MessageKey.RIG_FIELD_UNKNOWN_NEAR,
                        "pump.json, line 20",
                        "stages[1].throatGapp",
                        "name, height, throatDiameter, throatGap",
                        "throatGap"));
        says(
                "\"foreline\": {",
                "\"foreline\": { \"xyzzy\": 1,",
                said(MessageKey.RIG_FIELD_UNKNOWN, "pump.json, line 43", "foreline.xyzzy", "kind, pressure"));
    }

    @Test
    void aMisspeltFieldIsNotReportedAsMissingToo() {
        says(
                "\"charge\"",
                "\"chrage\"",
                said(
                        MessageKey.RIG_FIELD_UNKNOWN_NEAR,
                        "pump.json, line 6",
                        "chrage",
                        "format, name, note, fluid, charge, boiler, column, stages, body, topCap, heatSource, schedule, session, foreline, cooling, room, vacuum, protection, limits, parameters, guesses",
                        "charge"));
    }

    @Test
    void aMissingFieldIsNamedWithItsMeaning() {
        says(
                ",\n    \"heatedArea\": \"125 cm2\"",
                "",
                said(
                        MessageKey.RIG_FIELD_MISSING,
                        "pump.json, line 7",
                        "boiler.heatedArea",
                        "Outside area of the boiler that the source reaches.",
                        "a text with a unit, 1 cm2 to 100000 cm2"));
    }

    @Test
    void doubledFieldsAreAllNamedWithTheirPath() {
        says(
                "\"gap\": \"6 mm\"",
                "\"gap\": \"6 mm\",\n\"gap\": \"7 mm\",\n\"gap\": \"8 mm\"",
                said(MessageKey.RIG_FIELD_DOUBLED, "pump.json, line 49", "cooling.elements[0].gap", "48"),
                said(MessageKey.RIG_FIELD_DOUBLED, "pump.json, line 50", "cooling.elements[0].gap", "48"));
    }

    @Test
    void wrongUnitsAreNamedWithTheAcceptedOnes() {
        says(
                "\"120 mm\"",
                "\"120 kg\"",
                said(
                        MessageKey.RIG_FIELD_QUANTITY,
                        "pump.json, line 9",
                        "boiler.innerDiameter",
                        "\"120 kg\" is a mass; a length is wanted, in one of these units: m, cm, mm, um, in, ft."));
        says(
                "\"40 mTorr\"",
                "\"40 mtorr\"",
                said(
                        MessageKey.RIG_FIELD_QUANTITY,
                        "pump.json, line 43",
                        "foreline.pressure",
                        "\"mtorr\" is not a known unit. The nearest accepted spelling is \"mTorr\"; a pressure is wanted, in one of these units: Pa, hPa, kPa, MPa, N/mm2, bar, mbar, ubar, Torr, mTorr, micron, mmHg, atm, psi."));
        says(
                "\"120 mm\"",
                "120",
                said(
                        MessageKey.RIG_FIELD_NEEDS_UNIT,
                        "pump.json, line 9",
                        "boiler.innerDiameter",
                        "120",
                        "\"120 mm\"",
                        "m, cm, mm, um, in, ft"));
    }

    @Test
    void negativeAndAbsurdSizesAreRefusedWithTheRange() {
        says(
                "\"120 mm\"",
                "\"-120 mm\"",
                said(
                        MessageKey.RIG_FIELD_RANGE,
                        "pump.json, line 9",
                        "boiler.innerDiameter",
                        "\"-120 mm\"",
                        "5 mm",
                        "3000 mm"));
        says(
                "\"120 mm\"",
                "\"40 m\"",
                said(
                        MessageKey.RIG_FIELD_RANGE_SLIP,
                        "pump.json, line 9",
                        "boiler.innerDiameter",
                        "\"40 m\"",
                        "40 mm",
                        "5 mm",
                        "3000 mm"));
        says(
                "\"120 mm\"",
                "\"1e6 m\"",
                said(
                        MessageKey.RIG_FIELD_RANGE,
                        "pump.json, line 9",
                        "boiler.innerDiameter",
                        "\"1e6 m\"",
                        "5 mm",
                        "3000 mm"));
        says(
                "\"18 degC\"",
                "\"-400 degC\"",
                said(
                        MessageKey.RIG_FIELD_QUANTITY,
                        "pump.json, line 45",
                        "cooling.supply.inletTemperature",
                        "\"-400 degC\" is below absolute zero, which is -273.15 degC."));
    }

    @Test
    void wrongSortsOfValueAreNamed() {
        says(
                "\"120 mm\"",
                "null",
                said(
                        MessageKey.RIG_FIELD_TYPE,
                        "pump.json, line 9",
                        "boiler.innerDiameter",
                        "null",
                        "a text with a unit, 5 mm to 3000 mm"));
        says(
                "{ \"temperature\": \"22 degC\" }",
                "[]",
                said(MessageKey.RIG_FIELD_TYPE, "pump.json, line 51", "room", "[]", "an object in braces"));
        says(
                "[\"top\", \"middle\", \"bottom\"]",
                "\"top\"",
                said(
                        MessageKey.RIG_FIELD_TYPE,
                        "pump.json, line 48",
                        "cooling.elements[0].covers",
                        "\"top\"",
                        "a list of texts in brackets"));
        says(
                "\"Glass pump\"",
                "true",
                said(MessageKey.RIG_FIELD_TYPE, "pump.json, line 3", "name", "true", "a text in quotation marks"));
        says(
                "\"contact\": \"domed-glass\"",
                "\"contact\": 3",
                said(
                        MessageKey.RIG_FIELD_TYPE,
                        "pump.json, line 32",
                        "heatSource.contact",
                        "3",
                        "\"machined-metal\", \"flat-glass\", \"domed-glass\""));
    }

    @Test
    void textsMustBePresentPrintableAndOfAReasonableLength() {
        says("\"Glass pump\"", "\" \"", said(MessageKey.RIG_TEXT_LENGTH, "pump.json, line 3", "name", "0", "1", "80"));
        says(
                "\"Glass pump\"",
                "\"" + "n".repeat(81) + "\"",
                said(MessageKey.RIG_TEXT_LENGTH, "pump.json, line 3", "name", "81", "1", "80"));
        says(
                "\"Glass pump\"",
                "\"red \\u001b[31m\"",
                said(MessageKey.RIG_TEXT_CONTROL, "pump.json, line 3", "name", "\"red ?[31m\""));
    }

    @Test
    void unknownChoicesAndFluidsAreNamedWithTheNearest() {
        says(
                "\"704-type\"",
                "\"704type\"",
                said(
                        MessageKey.RIG_CHOICE_UNKNOWN_NEAR,
                        "pump.json, line 5",
                        "fluid",
                        "\"704type\"",
                        "\"704-type\", \"705-type\", \"mercury\"",
                        "704-type"));
        says(
                "\"fluid\": \"704-type\"",
                "\"fluid\": \"castor oil\"",
                said(
                        MessageKey.RIG_CHOICE_UNKNOWN,
                        "pump.json, line 5",
                        "fluid",
                        "\"castor oil\"",
                        "\"704-type\", \"705-type\", \"mercury\""));
        says(
                "\"contact-plate\"",
                "\"contact-plat\"",
                "pump.json, line 30: heatSource.kind is \"contact-plat\": did you mean \"contact-plate\"? Accepted: "
                        + Arrays.stream(SourceKind.values())
                                .map(kind -> "\"" + kind.id() + "\"")
                                .collect(Collectors.joining(", "))
                        + ".");
    }

    @Test
    void aFieldOfAnotherKindOfHeatSourceIsNamed() {
        says(
                "\"lossArea\": \"420 cm2\"",
                "\"lossArea\": \"420 cm2\", \"surfaceArea\": \"90 cm2\"",
                said(
                        MessageKey.RIG_FIELD_OF_ANOTHER_KIND,
                        "pump.json, line 37",
                        "heatSource.surfaceArea",
                        "contact-plate",
                        "immersed-element"));
    }

    @Test
    void emptyAndEndlessListsAreRefused() {
        String noStages = "\"stages\": [],\n \"ignored\": [";
        assertThat(faults(changed(GLASS, "\"stages\": [", noStages)))
                .contains(said(MessageKey.RIG_LIST_LENGTH, "pump.json, line 18", "stages", "0", "1", "12"));
    }

    @Test
    void likelySlipsAreRefusedNamingTheMeaning() {
        says(
                "\"1.5 kW\"",
                "\"2400 kW\"",
                said(
                        MessageKey.RIG_FIELD_SLIP,
                        "pump.json, line 31",
                        "heatSource.ratedPower",
                        "\"2400 kW\"",
                        "2400 W",
                        "50 W",
                        "20000 W"));
        says(
                "\"100 mL\"",
                "\"35 L\"",
                said(
                        MessageKey.RIG_FIELD_SLIP,
                        "pump.json, line 6",
                        "charge",
                        "\"35 L\"",
                        "35 mL",
                        "10 mL",
                        "4000 mL"));
        says(
                "\"40 mTorr\"",
                "\"50 Torr\"",
                said(
                        MessageKey.RIG_FIELD_SLIP,
                        "pump.json, line 43",
                        "foreline.pressure",
                        "\"50 Torr\"",
                        "50 mTorr (50 micron)",
                        "0.750 mTorr",
                        "1500 mTorr"));
        says(
                "\"40 mTorr\"",
                "\"10e-2 Torr\"",
                said(
                        MessageKey.RIG_FIELD_QUANTITY_SLIP,
                        "pump.json, line 43",
                        "foreline.pressure",
                        "\"10e-2 Torr\" means 1e-1 as it is written, but was probably meant as 1e-2; write the one you mean."));
    }

    @Test
    void anAcceptedFieldGoesOnWithWhatIsWritten() {
        String strong = changed(GLASS, "\"1.5 kW\"", "\"2400 kW\"");
        assertThat(Texts.read(strong, "heatSource.ratedPower").heatSource().ratedPowerW())
                .isEqualTo(2.4e6);
        String deep = changed(GLASS, "\"100 mL\"", "\"35 L\"");
        assertThat(Texts.read(deep, "charge").chargeM3()).isEqualTo(0.035);
        String ten = changed(GLASS, "\"40 mTorr\"", "\"10e-2 Torr\"");
        assertThat(((boilwright.rig.Foreline.GivenPressure)
                                Texts.read(ten, "foreline.pressure").foreline())
                        .pressurePa())
                .isEqualTo(101325 / 7600.0);
        String narrow = changed(GLASS, "\"throatGap\": \"1.2 mm\"", "\"throatGap\": \"0.04 mm\"");
        assertThat(Texts.read(narrow, "stages[1].throatGap").stages().get(1).throatGapM())
                .isEqualTo(4e-5);
        assertThat(Texts.read(narrow, "stages[].throatGap")).isEqualTo(Texts.read(narrow, "stages[1].throatGap"));
        assertThat(faults(narrow, "stages[0].throatGap")).hasSize(1);
    }

    @Test
    void whatIsNotAllowedIsNotAcceptedEither() {
        String huge = changed(GLASS, "\"120 mm\"", "\"40 m\"");
        assertThat(faults(huge, "boiler.innerDiameter")).hasSize(1);
    }

    @Test
    void anAcceptedFieldMustExist() {
        assertThatThrownBy(() -> RigReader.readDemo("mirror-club", Texts.FLUIDS, Set.of("heatsource.ratedPower")))
                .isInstanceOf(InputRefusedException.class)
                .hasMessage(said(MessageKey.RIG_ACCEPT_UNKNOWN_NEAR, "heatsource.ratedPower", "heatSource.ratedPower"));
        assertThatThrownBy(() -> RigReader.readDemo("mirror-club", Texts.FLUIDS, Set.of("?")))
                .hasMessage(said(MessageKey.RIG_ACCEPT_UNKNOWN, "?"));
    }

    @Test
    void parametersAreCheckedAgainstTheRegistry() {
        String room = "\"room\": {";
        says(
                room,
                "\"parameters\": { \"discharge-coefficient\": 0.2, \"evaporation-coeficient\": 0.7 },\n" + room,
                "pump.json, line 51: parameters.evaporation-coeficient is not a known field. Did you mean"
                        + " evaporation-coefficient? Accepted here: "
                        + String.join(", ", parameterIds()) + ".",
                said(
                        MessageKey.RIG_FIELD_RANGE,
                        "pump.json, line 51",
                        "parameters.discharge-coefficient",
                        "0.2",
                        "0.6",
                        "0.95"));
        Rig rig = Texts.read(changed(
                GLASS,
                room,
                "\"parameters\": { \"flame-temperature\": \"1250 degC\", \"contact-mantle\": \"30 W/m2K\" }," + room));
        assertThat(rig.parameters())
                .containsEntry("flame-temperature", 1523.15)
                .containsEntry("contact-mantle", 30.0)
                .hasSize(2);
    }

    private static List<String> parameterIds() {
        return Arrays.stream(Parameter.values()).map(Parameter::id).toList();
    }

    @Test
    void allFaultsOfAFileAreNamedInTheOrderOfItsLines() {
        String text = changed(GLASS, "\"120 mm\"", "\"120 mn\"");
        text = changedText(text, "\"704-type\"", "\"water\"");
        text = changedText(text, "\"40 mTorr\"", "\"50 Torr\"");
        text = changedText(text, "\"22 degC\" }", "\"22 degC\", \"wind\": \"none\" }");
        assertThat(faults(text))
                .hasSize(4)
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("pump.json, line 5: fluid is"),
                        second -> assertThat(second).startsWith("pump.json, line 9: boiler.innerDiameter:"),
                        third -> assertThat(third).startsWith("pump.json, line 43: foreline.pressure is"),
                        fourth -> assertThat(fourth).startsWith("pump.json, line 51: room.wind is not a known field."));
    }

    @Test
    void aPowerOfTheScheduleMayBeAnAmount() {
        Rig rig = Texts.read(changed(GLASS, "\"100 %\"", "\"1.2 kW\""));
        assertThat(((Schedule.Power) rig.schedule().steps().get(1)).fraction()).isEqualTo(0.8);
        says(
                "\"100 %\"",
                "\"1600 W\"",
                said(
                        MessageKey.RIG_POWER_ABOVE_RATED,
                        "pump.json, line 41",
                        "schedule[1].power",
                        "\"1600 W\"",
                        "\"1.5 kW\""));
        says(
                "\"100 %\"",
                "\"900 kW\"",
                said(
                        MessageKey.RIG_FIELD_SLIP,
                        "pump.json, line 41",
                        "schedule[1].power",
                        "\"900 kW\"",
                        "900 W",
                        "30 W",
                        "1500 W"));
        says(
                "\"100 %\"",
                "\"100\"",
                said(
                        MessageKey.RIG_FIELD_RANGE_SLIP,
                        "pump.json, line 41",
                        "schedule[1].power",
                        "\"100\"",
                        "100 %",
                        "0 %",
                        "100 %"));
    }

    @Test
    void aBurnerMayHaveACartridge() {
        String burner = "\"kind\": \"gas-burner\", \"ratedPower\": \"2 kW\", \"cartridge\": { \"fuelMass\": \"230 g\","
                + " \"metalMass\": \"120 g\", \"airConductance\": \"0.3 W/K\" }";
        Rig rig = Texts.read(Texts.sample(GLASS).replaceFirst("(?s)\"kind\": \"contact-plate\".*?\"420 cm2\"", burner));
        assertThat(rig.heatSource().cartridge()).contains(new HeatSource.Cartridge(0.23, 0.12, 0.3, 0));
    }
}
