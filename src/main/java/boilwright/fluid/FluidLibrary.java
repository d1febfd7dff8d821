package boilwright.fluid;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.NearestSpelling;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final String packedVersion;
    private final Map<String, FluidFile> own;

    private FluidLibrary(
            Map<String, Supplier<FluidRecord>> fluids,
            List<String> working,
            List<String> validationOnly,
            String packedVersion,
            Map<String, FluidFile> own) {
        this.fluids = fluids;
        this.working = List.copyOf(working);
        this.validationOnly = List.copyOf(validationOnly);
        this.packedVersion = packedVersion;
        this.own = own;
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
                fluids, working, validation, index.get("dataVersion").stringValue(), Map.of());
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
        FluidLibrary all = this;
        Set<String> ofFolder = new HashSet<>();
        for (Path path : files(folder)) {
            try {
                FluidFile file = FluidFile.read(path);
                if (!ofFolder.add(file.fluid().id())) {
                    throw all.taken(file);
                }
                all = all.with(file);
            } catch (InputRefusedException e) {
                faults.addAll(e.faults());
            }
        }
        if (!faults.isEmpty()) {
            throw new InputRefusedException(faults);
        }
        return all;
    }

    /**
     * This library and the fluid of one file. A file takes the place of an earlier one of the user's own with the same id, so
     * that a file can be mended and read anew.
     *
     * @param file a file of the user's own
     * @throws InputRefusedException when its id is that of a fluid that comes with the program
     */
    public synchronized FluidLibrary with(FluidFile file) {
        String id = file.fluid().id();
        if (fluids.containsKey(id) && !own.containsKey(id)) {
            throw taken(file);
        }
        Map<String, Supplier<FluidRecord>> all = new LinkedHashMap<>(fluids);
        all.put(id, file::fluid);
        Map<String, FluidFile> files = new LinkedHashMap<>(own);
        files.put(id, file);
        List<String> moreWorking = new ArrayList<>(working);
        List<String> moreValidation = new ArrayList<>(validationOnly);
        List<String> place = file.fluid().isValidationOnly() ? moreValidation : moreWorking;
        if (!place.contains(id)) {
            moreWorking.remove(id);
            moreValidation.remove(id);
            place.add(id);
        }
        FluidLibrary more = new FluidLibrary(all, moreWorking, moreValidation, packedVersion, files);
        more.loaded.putAll(loaded);
        more.loaded.remove(id);
        return more;
    }

    private InputRefusedException taken(FluidFile file) {
        return new InputRefusedException(Message.of(
                MessageKey.FLUID_ID_TAKEN, file.name(), file.fluid().id(), String.join(", ", fluids.keySet())));
    }

    /** The file of the user's own that a fluid was read from; empty for one that comes with the program. */
    public Optional<String> ownFile(String id) {
        return Optional.ofNullable(own.get(id)).map(FluidFile::name);
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

    /** The version of the data, the same on every machine; files of the user's own add a hash of them. */
    public String dataVersion() {
        if (own.isEmpty()) {
            return packedVersion;
        }
        CRC32 hash = new CRC32();
        own.values().forEach(file -> file.addTo(hash));
        return packedVersion + "+" + String.format(Locale.ROOT, "%08x", hash.getValue());
    }

    /** Everything that is recorded of a fluid, for people to read, each figure with its citation. */
    public List<PropertyLine.Words> entries(String id) {
        return lines(id).stream().map(PropertyLine::entry).toList();
    }

    /** Everything that is recorded of a fluid, as {@link #entries} has it, with the figures themselves. */
    public List<PropertyLine> lines(String id) {
        Sources sources = Sources.parse(new String(resource("sources.bib"), StandardCharsets.UTF_8));
        return find(id).lines(sources::citation);
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
            throw FluidFile.unreadable(folder, e);
        }
    }
}
