package boilwright.fluid;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.files.IoReason;
import boilwright.units.NearestSpelling;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import tools.jackson.databind.JsonNode;

/**
 * The fluids that a rig may name: those packed with the program and, if the user gives a folder, the user's own. A file
 * is read when its fluid is asked for, and only once.
 */
public final class FluidLibrary {
    private static final String FOLDER = "/boilwright/fluid-data/";
    private static final String SUFFIX = ".json";

    private final Map<String, Supplier<FluidRecord>> fluids;
    private final Map<String, FluidRecord> loaded = new LinkedHashMap<>();
    private final List<String> working;
    private final List<String> validationOnly;
    private final String dataVersion;

    private FluidLibrary(
            Map<String, Supplier<FluidRecord>> fluids,
            List<String> working,
            List<String> validationOnly,
            String dataVersion) {
        this.fluids = fluids;
        this.working = List.copyOf(working);
        this.validationOnly = List.copyOf(validationOnly);
        this.dataVersion = dataVersion;
    }

    /** The fluids packed with the program. Reads only their index. */
    public static FluidLibrary builtIn() {
        JsonNode index = FluidFileReader.tree("index.json", resource("index.json"));
        List<String> working = texts(index.get("workingFluids"));
        List<String> validation = texts(index.get("validationOnly"));
        Map<String, Supplier<FluidRecord>> fluids = new LinkedHashMap<>();
        Stream.concat(working.stream(), validation.stream())
                .forEach(id -> fluids.put(id, () -> FluidFileReader.read(id + SUFFIX, resource(id + SUFFIX))));
        return new FluidLibrary(
                fluids, working, validation, index.get("dataVersion").stringValue());
    }

    /**
     * This library and the fluids of a folder. Every file of the folder whose name ends in .json is read at once and
     * checked as the program's own are.
     *
     * @param folder folder with one file per fluid
     * @throws InputRefusedException naming every fault of every file: unreadable, not a fluid, an id that is taken
     */
    public FluidLibrary withFolder(Path folder) {
        List<Message> faults = new ArrayList<>();
        Map<String, Supplier<FluidRecord>> all = new LinkedHashMap<>(fluids);
        List<String> moreWorking = new ArrayList<>(working);
        List<String> moreValidation = new ArrayList<>(validationOnly);
        CRC32 hash = new CRC32();
        for (Path file : files(folder)) {
            String name = file.toString();
            try {
                byte[] content = content(file);
                FluidRecord fluid = FluidFileReader.read(name, content);
                if (all.putIfAbsent(fluid.id(), () -> fluid) != null) {
                    faults.add(
                            Message.of(MessageKey.FLUID_ID_TAKEN, name, fluid.id(), String.join(", ", all.keySet())));
                    continue;
                }
                (fluid.isValidationOnly() ? moreValidation : moreWorking).add(fluid.id());
                hash.update(content);
            } catch (InputRefusedException e) {
                faults.addAll(e.faults());
            }
        }
        if (!faults.isEmpty()) {
            throw new InputRefusedException(faults);
        }
        return new FluidLibrary(
                all,
                moreWorking,
                moreValidation,
                dataVersion + "+" + String.format(Locale.ROOT, "%08x", hash.getValue()));
    }

    /**
     * The fluid of an id.
     *
     * @throws InputRefusedException when there is no such fluid, with the nearest and all ids there are
     */
    public synchronized FluidRecord find(String id) {
        Supplier<FluidRecord> reader = fluids.get(id);
        if (reader == null) {
            throw new InputRefusedException(unknown(id));
        }
        FluidRecord fluid = loaded.get(id);
        if (fluid == null) {
            fluid = reader.get();
            loaded.put(id, fluid);
        }
        return fluid;
    }

    private Message unknown(String id) {
        String known = String.join(", ", fluids.keySet());
        return NearestSpelling.of(id, fluids.keySet())
                .map(nearest -> Message.of(MessageKey.FLUID_UNKNOWN_NEAREST, id, nearest, known))
                .orElseGet(() -> Message.of(MessageKey.FLUID_UNKNOWN, id, known));
    }

    /** Every id, fluids for pumps first. */
    public List<String> ids() {
        return List.copyOf(fluids.keySet());
    }

    /** Ids of the fluids for pumps. */
    public List<String> workingFluids() {
        return working;
    }

    /** Ids of the fluids that only serve to check the program against published values. */
    public List<String> validationOnly() {
        return validationOnly;
    }

    /** The version of the data, the same on every machine; a folder of the user's own adds a hash of its files. */
    public String dataVersion() {
        return dataVersion;
    }

    /** Everything that is recorded of a fluid, for people to read, each figure with its citation. */
    public List<PropertyEntry> entries(String id) {
        Sources sources = Sources.parse(new String(resource("sources.bib"), StandardCharsets.UTF_8));
        return find(id).entries(sources::citation);
    }

    static byte[] resource(String name) {
        try (InputStream stream = FluidLibrary.class.getResourceAsStream(FOLDER + name)) {
            if (stream == null) {
                throw new IllegalStateException("the program is packed without " + FOLDER + name);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own " + name + " cannot be read", e);
        }
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::stringValue).toList();
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            List<Path> files = entries.filter(
                            file -> file.getFileName().toString().endsWith(SUFFIX))
                    .sorted()
                    .toList();
            if (files.isEmpty()) {
                throw new InputRefusedException(Message.of(MessageKey.FLUID_FOLDER_EMPTY, folder.toString()));
            }
            return files;
        } catch (IOException e) {
            throw unreadable(folder, e);
        }
    }

    private static byte[] content(Path file) {
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] content = stream.readNBytes(FluidFileReader.LONGEST_FILE + 1);
            if (content.length > FluidFileReader.LONGEST_FILE) {
                throw new InputRefusedException(Message.of(
                        MessageKey.FLUID_FILE_TOO_LONG,
                        file.toString(),
                        Integer.toString(FluidFileReader.LONGEST_FILE)));
            }
            return content;
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    private static InputRefusedException unreadable(Path path, IOException e) {
        return new InputRefusedException(Message.of(MessageKey.FLUID_FILE_UNREADABLE, path.toString(), IoReason.of(e)));
    }
}
