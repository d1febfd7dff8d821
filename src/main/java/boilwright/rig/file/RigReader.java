package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.file.Json.JsonObject;
import boilwright.units.NearestSpelling;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads rig files. Either the whole file is in order, or it is refused with every fault that it has. */
public final class RigReader {
    private static final List<String> DEMOS = List.of("neon-workshop", "mirror-club", "teaching-lab");

    private RigReader() {}

    /** The names of the demo rigs that come with the program. */
    public static List<String> demoNames() {
        return DEMOS;
    }

    /**
     * Reads a rig from a file.
     *
     * @param file the file
     * @param fluidIds ids of the fluids that are known
     * @param acceptedFields paths of the fields whose unusual values are meant as they are written, with or without the
     *     numbers of list entries
     * @throws InputRefusedException with every fault found, in the order of the file; nothing was changed anywhere
     */
    public static Rig read(Path file, Collection<String> fluidIds, Set<String> acceptedFields) {
        checkAccepted(acceptedFields);
        return parse(file.toString(), FileText.of(file), fluidIds, acceptedFields, Migrations.CURRENT);
    }

    /**
     * Reads a demo rig.
     *
     * @param name one of {@link #demoNames()}
     * @param fluidIds ids of the fluids that are known
     * @param acceptedFields as for a file
     * @throws InputRefusedException when there is no such demo, or as for a file
     */
    public static Rig readDemo(String name, Collection<String> fluidIds, Set<String> acceptedFields) {
        checkAccepted(acceptedFields);
        if (!DEMOS.contains(name)) {
            String known = Shown.list(DEMOS);
            String shown = Shown.plain(name);
            throw new InputRefusedException(NearestSpelling.of(name, DEMOS)
                    .map(near -> Message.of(MessageKey.RIG_DEMO_UNKNOWN_NEAR, shown, known, near))
                    .orElseGet(() -> Message.of(MessageKey.RIG_DEMO_UNKNOWN, shown, known)));
        }
        String text = FileText.read("demo:" + name, () -> demo(name));
        return parse("demo:" + name, text, fluidIds, acceptedFields, Migrations.CURRENT);
    }

    /** Reads a rig from the text of a file, with given steps from older versions of the format. */
    static Rig parse(
            String file, String text, Collection<String> fluidIds, Set<String> acceptedFields, Migrations migrations) {
        return parse(text, fluidIds, migrations, new Findings(file, acceptedFields));
    }

    /** Reads a rig from text into findings of its own. */
    static Rig parse(String text, Collection<String> fluidIds, Migrations migrations, Findings findings) {
        Json json = JsonReader.read(text, findings);
        if (!(json instanceof JsonObject object)) {
            findings.reportAt(json.at(), MessageKey.RIG_NOT_AN_OBJECT, json.shown());
            throw findings.refusal();
        }
        Optional<JsonObject> current = migrations.toNewest(object, findings);
        if (current.isEmpty()) {
            throw findings.refusal();
        }
        Rig rig = RigAssembler.assemble(current.get(), fluidIds, findings);
        CrossChecks.run(rig, findings);
        if (!findings.isClean()) {
            throw findings.refusal();
        }
        return rig;
    }

    /**
     * Whether the parts of a rig that stands in no file yet are as a file would have to have them.
     *
     * @param rig the rig
     * @param what what messages call it
     * @param acceptedFields as for a file
     * @throws InputRefusedException with every fault found
     */
    public static void check(Rig rig, String what, Set<String> acceptedFields) {
        checkAccepted(acceptedFields);
        parse(RigWriter.write(rig), what, rig.fluidId(), acceptedFields);
    }

    /** Reads the text of a file that was not written yet. */
    static Rig parse(String text, String what, String fluidId, Set<String> acceptedFields) {
        return parse(text, List.of(fluidId), Migrations.CURRENT, Findings.ofNoFile(what, acceptedFields));
    }

    private static InputStream demo(String name) throws IOException {
        InputStream stream = RigReader.class.getResourceAsStream("/boilwright/demo/" + name + ".json");
        if (stream == null) {
            throw new IOException("it is missing from the program");
        }
        return stream;
    }

    static void checkAccepted(Set<String> acceptedFields) {
        List<Message> faults = new ArrayList<>();
        List<String> known = FieldCatalogue.fields().stream().map(Field::path).toList();
        acceptedFields.stream()
                .sorted()
                .filter(path -> FieldCatalogue.find(path).isEmpty())
                .forEach(path -> faults.add(Migrations.pathNow(path)
                        .or(() -> NearestSpelling.of(FieldCatalogue.general(path), known))
                        .map(near -> Message.of(MessageKey.RIG_ACCEPT_UNKNOWN_NEAR, Shown.plain(path), near))
                        .orElseGet(() -> Message.of(MessageKey.RIG_ACCEPT_UNKNOWN, Shown.plain(path)))));
        if (!faults.isEmpty()) {
            throw new InputRefusedException(faults);
        }
    }
}
