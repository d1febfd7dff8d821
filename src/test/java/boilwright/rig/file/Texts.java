package boilwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.rig.Rig;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;

/** Rig files as text, changed in one place, and what the reader says about them. */
final class Texts {
    static final List<String> FLUIDS = List.of("704-type", "705-type", "mercury");

    private Texts() {}

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

    static Rig read(String text, String... accepted) {
        return RigReader.parse("pump.json", text, FLUIDS, Set.of(accepted), Migrations.CURRENT);
    }

    /** Read with everything that a program checks before it looks at the file. */
    static Rig checked(String text, String... accepted) {
        return RigReader.readText("pump.json", text, FLUIDS, Set.of(accepted));
    }

    static List<String> faults(String text, String... accepted) {
        InputRefusedException refusal = catchThrowableOfType(InputRefusedException.class, () -> read(text, accepted));
        assertThat(refusal).as("the text is refused").isNotNull();
        return refusal.faults().stream().map(Message::text).toList();
    }
}
