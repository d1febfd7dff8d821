package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.fluid.Sources;
import boilwright.rig.OfferedSource;
import boilwright.rig.file.Json.JsonArray;
import boilwright.rig.file.Json.JsonObject;
import boilwright.rig.file.Json.JsonText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The heat sources that can be compared: those packed with the program and, if the user gives a file, the user's own. */
public final class SourceLibrary {
    private static final String FOLDER = "/boilwright/fluid-data/heat-sources/";
    private static final String INDEX = "index.json";

    private final List<OfferedSource> sources;

    private SourceLibrary(List<OfferedSource> sources) {
        this.sources = List.copyOf(sources);
    }

    /** The sources packed with the program. */
    public static SourceLibrary builtIn() {
        Sources bibliography = Sources.parse(packed("sources.bib"));
        List<OfferedSource> all = new ArrayList<>();
        for (String file : files()) {
            String name = file + ".json";
            all.addAll(SourceFileReader.read(
                    packed(name), new Findings(name, Set.of()), bibliography::citation, ids(all)));
        }
        return new SourceLibrary(all);
    }

    /**
     * This library and the sources of a file, the user's first.
     *
     * @param file the file
     * @param acceptedFields paths of fields whose unusual values are meant, such as {@code sources[0].heatSource.ratedPower}
     * @throws InputRefusedException with every fault found
     */
    public SourceLibrary withFile(Path file, Set<String> acceptedFields) {
        String name = Shown.printable(file.toString());
        if (Files.isDirectory(file)) {
            throw new InputRefusedException(SourceFileReader.isFolder(name));
        }
        List<OfferedSource> all = new ArrayList<>(SourceFileReader.read(
                FileText.of(file), new Findings(file.toString(), acceptedFields), words -> words, ids(sources)));
        all.addAll(sources);
        return new SourceLibrary(all);
    }

    /** All sources, the user's own first. */
    public List<OfferedSource> sources() {
        return sources;
    }

    /** Names of the packed files, in the order in which they are listed. */
    static List<String> files() {
        Json index = JsonReader.read(packed(INDEX), new Findings(INDEX, Set.of()));
        JsonArray files = (JsonArray) ((JsonObject) index).members().get("files");
        return files.items().stream().map(item -> ((JsonText) item).value()).toList();
    }

    private static Set<String> ids(List<OfferedSource> sources) {
        return sources.stream().map(OfferedSource::id).collect(Collectors.toSet());
    }

    private static String packed(String name) {
        return FileText.read(name, () -> open(name));
    }

    private static InputStream open(String name) throws IOException {
        InputStream stream = SourceLibrary.class.getResourceAsStream(FOLDER + name);
        if (stream == null) {
            throw new IOException("it is missing from the program");
        }
        return stream;
    }
}
