package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.rig.Rig;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** Rig files as text, changed in one place, and what the reader says about them. */
public final class Texts {
    static final List<String> FLUIDS = List.of("704-type", "705-type", "mercury");

    static final String CHILLER = "\"kind\": \"chiller\", \"setPoint\": \"18 degC\", \"capacity\": \"1.8 kW\","
            + " \"ratedWaterTemperature\": \"20 degC\", \"ratedRoomTemperature\": \"25 degC\","
            + " \"control\": \"modulating\", \"tankVolume\": \"4 L\", \"pumpCurve\": ["
            + "\n{ \"flow\": \"0 L/min\", \"head\": \"11 m\" },\n{ \"flow\": \"3 L/min\", \"head\": \"9 m\" },"
            + "\n{ \"flow\": \"9 L/min\", \"head\": \"0 m\" }]";
    static final String TABLE = "\"capacityTable\": [\n" + entry(15, 20, 1700) + ",\n" + entry(20, 20, 1900) + ",\n"
            + entry(25, 20, 2100) + ",\n" + entry(15, 32, 1500) + ",\n" + entry(20, 32, 1700) + ",\n"
            + entry(25, 32, 1900)
            + "]";
    static final String TABLE_CHILLER = CHILLER.replaceFirst("\"capacity\".*?25 degC\"", TABLE);
    static final String TAP = "\"kind\": \"tap\", \"inletTemperature\": \"12 degC\", \"staticPressure\": \"3 bar\","
            + " \"lineFlowAtOneBar\": \"12 L/min\"";
    static final String TANK = "\"kind\": \"tank\", \"startTemperature\": \"21 degC\", \"volume\": \"12 L\","
            + " \"pumpCurve\": [{ \"flow\": \"0 L/min\", \"head\": \"2 m\" },"
            + " { \"flow\": \"10 L/min\", \"head\": \"0 m\" }]";
    static final String FAN = "\"kind\": \"fins-and-fan\", \"airSpeed\": \"4 m/s\", \"finPitch\": \"4 mm\","
            + " \"finHeight\": \"20 mm\", \"finThickness\": \"1 mm\", \"finMaterial\": \"aluminium\"";
    static final String CAP_COIL =
            "{ \"kind\": \"cap-coil\", \"tubeInnerDiameter\": \"6 mm\", \"tubeLength\": \"0.5 m\" }";
    static final String BODY_COIL = "{ \"kind\": \"soldered-coil\", \"covers\": [\"top\", \"middle\", \"bottom\"],"
            + " \"tubeInnerDiameter\": \"8 mm\", \"tubeLength\": \"5 m\" }";
    static final String HOSE = "{ \"kind\": \"hose\", \"tubeInnerDiameter\": \"9 mm\", \"tubeLength\": \"2 m\" }";
    static final String BOTH_COILS = CAP_COIL + ",\n" + BODY_COIL;
    /** A hose, then the cap's branch of two elements beside the body's branch of one, then a hose. */
    static final String IN_BRANCHES = HOSE + ",\n" + placed(HOSE, "feed", "cap") + ",\n" + placed(CAP_COIL, "", "cap")
            + ",\n" + placed(BODY_COIL, "", "body") + ",\n" + HOSE;
    /** Every kind of element that a metal pump has. */
    static final String EVERY_PART = BOTH_COILS + ", " + HOSE
            + ", { \"kind\": \"baffle-coil\", \"tubeInnerDiameter\": \"6 mm\", \"tubeLength\": \"1 m\" }"
            + ", { \"kind\": \"foreline-trap\", \"tubeInnerDiameter\": \"6 mm\", \"tubeLength\": \"1 m\" }"
            + ", { \"kind\": \"valve\", \"flowAtOneBar\": \"1.8 m3/h\" }"
            + ", { \"kind\": \"rise\", \"height\": \"-0.4 m\" }";

    private Texts() {}

    private static String entry(int water, int room, int capacity) {
        return "{ \"water\": \"" + water + " degC\", \"room\": \"" + room + " degC\", \"capacity\": \"" + capacity
                + " W\" }";
    }

    /** An element with a name and a branch, each of which may be empty for none. */
    static String placed(String element, String name, String branch) {
        String place = (name.isEmpty() ? "" : " \"name\": \"" + name + "\",")
                + (branch.isEmpty() ? "" : " \"branch\": \"" + branch + "\",");
        return element.replaceFirst("\\{", "{" + place);
    }

    /** The metal sample in version 2 with another cooling: the fields of its supply, and its elements. */
    static String cooled(String supply, String elements) {
        String text = sample("version-3/metal-clamped");
        int begin = text.indexOf("  \"cooling\": {");
        int end = text.indexOf("  \"room\": {");
        return text.substring(0, begin) + "  \"cooling\": {\n\"supply\": { " + supply + " },\n\"elements\": ["
                + elements + "]\n},\n" + text.substring(end);
    }

    /** A demo rig, whose numbers may change. */
    static String demo(String name) {
        return resource("/boilwright/demo/" + name + ".json");
    }

    /** A rig kept for the tests, whose lines and numbers stay. */
    static String sample(String name) {
        return resource("/boilwright/rig/file/" + name + ".json");
    }

    private static String resource(String path) {
        try (InputStream stream = Texts.class.getResourceAsStream(path)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new IllegalStateException(fault);
        }
    }

    /** A sample with one text in it replaced, which must be there. */
    static String changed(String name, String from, String to) {
        return changedText(sample(name), from, to);
    }

    static String changedText(String text, String from, String to) {
        assertThat(text).contains(from);
        return text.replace(from, to);
    }

    /** A rig from the text of a file. */
    public static Rig rig(String text, Collection<String> fluidIds) {
        return RigReader.parse("text", text, fluidIds, Set.of(), Migrations.CURRENT);
    }

    static Rig read(String text, String... accepted) {
        return RigReader.parse("pump.json", text, FLUIDS, Set.of(accepted), Migrations.CURRENT);
    }

    /** Read with everything that a program checks before it looks at the file. */
    static Rig checked(String text, String... accepted) {
        RigReader.checkAccepted(Set.of(accepted));
        return read(text, accepted);
    }

    static List<String> faults(String text, String... accepted) {
        InputRefusedException refusal = catchThrowableOfType(InputRefusedException.class, () -> read(text, accepted));
        assertThat(refusal).as("the text is refused").isNotNull();
        return refusal.faults().stream().map(Message::text).toList();
    }
}
