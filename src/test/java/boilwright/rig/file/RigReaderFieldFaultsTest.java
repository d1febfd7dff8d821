package boilwright.rig.file;

import static boilwright.rig.file.Texts.changed;
import static boilwright.rig.file.Texts.changedText;
import static boilwright.rig.file.Texts.faults;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.errors.InputRefusedException;
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
                "pump.json, line 20: stages[1].throatGapp is not a known field. Did you mean throatGap?"
                        + " Accepted here: name, height, throatDiameter, throatGap.");
        says(
                "\"foreline\": {",
                "\"foreline\": { \"xyzzy\": 1,",
                "pump.json, line 43: foreline.xyzzy is not a known field. Accepted here: kind, pressure.");
    }

    @Test
    void aMisspeltFieldIsNotReportedAsMissingToo() {
        says(
                "\"charge\"",
                "\"chrage\"",
                "pump.json, line 6: chrage is not a known field. Did you mean charge? Accepted here: format, name,"
                        + " note, fluid, charge, boiler, column, stages, body, topCap, heatSource, schedule, foreline,"
                        + " cooling, room, vacuum, protection, limits, parameters, guesses.");
    }

    @Test
    void aMissingFieldIsNamedWithItsMeaning() {
        says(
                ",\n    \"heatedArea\": \"125 cm2\"",
                "",
                "pump.json, line 7: boiler.heatedArea is missing. Outside area of the boiler that the source reaches."
                        + " Accepted: a text with a unit, 1 cm2 to 100000 cm2.");
    }

    @Test
    void doubledFieldsAreAllNamedWithTheirPath() {
        says(
                "\"gap\": \"6 mm\"",
                "\"gap\": \"6 mm\",\n\"gap\": \"7 mm\",\n\"gap\": \"8 mm\"",
                "pump.json, line 49: cooling.elements[0].gap is there twice; the first is at line 48. Keep one of them.",
                "pump.json, line 50: cooling.elements[0].gap is there twice; the first is at line 48. Keep one of them.");
    }

    @Test
    void wrongUnitsAreNamedWithTheAcceptedOnes() {
        says(
                "\"120 mm\"",
                "\"120 kg\"",
                "pump.json, line 9: boiler.innerDiameter: \"120 kg\" is a mass; a length is wanted, in one of these"
                        + " units: m, cm, mm, um, in, ft.");
        says(
                "\"40 mTorr\"",
                "\"40 mtorr\"",
                "pump.json, line 43: foreline.pressure: \"mtorr\" is not a known unit. The nearest accepted spelling is"
                        + " \"mTorr\"; a pressure is wanted, in one of these units: Pa, hPa, kPa, MPa, N/mm2, bar,"
                        + " mbar, ubar, Torr, mTorr, micron, mmHg, atm, psi.");
        says(
                "\"120 mm\"",
                "120",
                "pump.json, line 9: boiler.innerDiameter is 120, without a unit. Write it as text with a unit, such as"
                        + " \"120 mm\". Accepted units: m, cm, mm, um, in, ft.");
    }

    @Test
    void negativeAndAbsurdSizesAreRefusedWithTheRange() {
        says(
                "\"120 mm\"",
                "\"-120 mm\"",
                "pump.json, line 9: boiler.innerDiameter is \"-120 mm\"; accepted is 5 mm to 3000 mm.");
        says(
                "\"120 mm\"",
                "\"40 m\"",
                "pump.json, line 9: boiler.innerDiameter is \"40 m\": did you mean 40 mm? Accepted is 5 mm to 3000 mm.");
        says(
                "\"120 mm\"",
                "\"1e6 m\"",
                "pump.json, line 9: boiler.innerDiameter is \"1e6 m\"; accepted is 5 mm to 3000 mm.");
        says(
                "\"18 degC\"",
                "\"-400 degC\"",
                "pump.json, line 45: cooling.supply.inletTemperature: \"-400 degC\" is below absolute zero, which is"
                        + " -273.15 degC.");
    }

    @Test
    void wrongSortsOfValueAreNamed() {
        says(
                "\"120 mm\"",
                "null",
                "pump.json, line 9: boiler.innerDiameter is null; accepted: a text with a unit, 5 mm to 3000 mm.");
        says(
                "{ \"temperature\": \"22 degC\" }",
                "[]",
                "pump.json, line 51: room is []; accepted: an object in braces.");
        says(
                "[\"top\", \"middle\", \"bottom\"]",
                "\"top\"",
                "pump.json, line 48: cooling.elements[0].covers is \"top\"; accepted: a list of texts in brackets.");
        says("\"Glass pump\"", "true", "pump.json, line 3: name is true; accepted: a text in quotation marks.");
        says(
                "\"contact\": \"domed-glass\"",
                "\"contact\": 3",
                "pump.json, line 32: heatSource.contact is 3; accepted: \"machined-metal\", \"flat-glass\","
                        + " \"domed-glass\".");
    }

    @Test
    void textsMustBePresentPrintableAndOfAReasonableLength() {
        says("\"Glass pump\"", "\" \"", "pump.json, line 3: name has 0 characters; accepted are 1 to 80.");
        says(
                "\"Glass pump\"",
                "\"" + "n".repeat(81) + "\"",
                "pump.json, line 3: name has 81 characters; accepted are 1 to 80.");
        says(
                "\"Glass pump\"",
                "\"red \\u001b[31m\"",
                "pump.json, line 3: name is \"red ?[31m\", with characters that cannot be printed. Accepted is plain"
                        + " text.");
    }

    @Test
    void unknownChoicesAndFluidsAreNamedWithTheNearest() {
        says(
                "\"704-type\"",
                "\"704type\"",
                "pump.json, line 5: fluid is \"704type\": did you mean \"704-type\"? Accepted: \"704-type\","
                        + " \"705-type\", \"mercury\".");
        says(
                "\"fluid\": \"704-type\"",
                "\"fluid\": \"castor oil\"",
                "pump.json, line 5: fluid is \"castor oil\"; accepted: \"704-type\", \"705-type\", \"mercury\".");
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
                "pump.json, line 37: heatSource.surfaceArea does not belong to the kind contact-plate. It belongs to:"
                        + " immersed-element.");
    }

    @Test
    void emptyAndEndlessListsAreRefused() {
        String noStages = "\"stages\": [],\n \"ignored\": [";
        assertThat(faults(changed(GLASS, "\"stages\": [", noStages)))
                .contains("pump.json, line 18: stages has 0 entries; accepted are 1 to 12.");
    }

    @Test
    void likelySlipsAreRefusedNamingTheMeaning() {
        says(
                "\"1.5 kW\"",
                "\"2400 kW\"",
                "pump.json, line 31: heatSource.ratedPower is \"2400 kW\": did you mean 2400 W? Usual is 50 W to"
                        + " 20000 W. If it really is \"2400 kW\", go on with --accept heatSource.ratedPower.");
        says(
                "\"100 mL\"",
                "\"35 L\"",
                "pump.json, line 6: charge is \"35 L\": did you mean 35 mL? Usual is 10 mL to 4000 mL. If it really is"
                        + " \"35 L\", go on with --accept charge.");
        says(
                "\"40 mTorr\"",
                "\"50 Torr\"",
                "pump.json, line 43: foreline.pressure is \"50 Torr\": did you mean 50 mTorr (50 micron)? Usual is"
                        + " 0.750 mTorr to 1500 mTorr. If it really is \"50 Torr\", go on with --accept"
                        + " foreline.pressure.");
        says(
                "\"40 mTorr\"",
                "\"10e-2 Torr\"",
                "pump.json, line 43: foreline.pressure: \"10e-2 Torr\" means 1e-1 as it is written, but was probably"
                        + " meant as 1e-2; write the one you mean. If it is meant as it is written, go on with"
                        + " --accept foreline.pressure.");
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
                .hasMessage("--accept heatsource.ratedPower: there is no such field. Did you mean"
                        + " heatSource.ratedPower?");
        assertThatThrownBy(() -> RigReader.readDemo("mirror-club", Texts.FLUIDS, Set.of("?")))
                .hasMessage("--accept ?: there is no such field. Name it as the refusal names it, such as"
                        + " heatSource.ratedPower.");
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
                "pump.json, line 51: parameters.discharge-coefficient is 0.2; accepted is 0.6 to 0.95.");
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
                "pump.json, line 41: schedule[1].power is \"1600 W\", more than the rated power of \"1.5 kW\"."
                        + " Accepted is at most that power.");
        says(
                "\"100 %\"",
                "\"900 kW\"",
                "pump.json, line 41: schedule[1].power is \"900 kW\": did you mean 900 W? Usual is 30 W to 1500 W. If"
                        + " it really is \"900 kW\", go on with --accept schedule[1].power.");
        says(
                "\"100 %\"",
                "\"100\"",
                "pump.json, line 41: schedule[1].power is \"100\": did you mean 100 %? Accepted is 0 % to 100 %.");
    }

    @Test
    void aBurnerMayHaveACartridge() {
        String burner = "\"kind\": \"gas-burner\", \"ratedPower\": \"2 kW\", \"cartridge\": { \"fuelMass\": \"230 g\","
                + " \"metalMass\": \"120 g\", \"airConductance\": \"0.3 W/K\" }";
        Rig rig = Texts.read(Texts.sample(GLASS).replaceFirst("(?s)\"kind\": \"contact-plate\".*?\"420 cm2\"", burner));
        assertThat(rig.heatSource().cartridge()).contains(new HeatSource.Cartridge(0.23, 0.12, 0.3, 0));
    }
}
