package boilwright.outgassing;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The materials packed with the program, read once. */
public final class MaterialLibrary {
    private static final String FOLDER = "/boilwright/fluid-data/materials/";

    private final Map<String, MaterialRecord> materials;

    private MaterialLibrary(Map<String, MaterialRecord> materials) {
        this.materials = materials;
    }

    /** Apart, so that the files are only read when a material is asked for. */
    private static final class Packed {
        private static final MaterialLibrary LIBRARY = load();
    }

    /** The materials packed with the program. */
    public static MaterialLibrary builtIn() {
        return Packed.LIBRARY;
    }

    private static MaterialLibrary load() {
        Map<String, MaterialRecord> materials = new LinkedHashMap<>();
        MaterialFile.tree("index.json", resource("index.json")).get("materials").forEach(id -> {
            String file = id.stringValue() + ".json";
            materials.put(id.stringValue(), MaterialFile.read(file, resource(file)));
        });
        return new MaterialLibrary(Collections.unmodifiableMap(materials));
    }

    /** Ids of all materials, in the order of the index. */
    public Set<String> ids() {
        return materials.keySet();
    }

    /**
     * A material.
     *
     * @param id its id
     * @throws InputRefusedException when there is none of that id, naming those that there are
     */
    public MaterialRecord find(String id) {
        MaterialRecord found = materials.get(id);
        if (found == null) {
            throw new InputRefusedException(
                    Message.of(MessageKey.MATERIAL_UNKNOWN, id, String.join(", ", materials.keySet())));
        }
        return found;
    }

    private static byte[] resource(String name) {
        try (InputStream stream = MaterialLibrary.class.getResourceAsStream(FOLDER + name)) {
            if (stream == null) {
                throw new IllegalStateException("not packed: " + FOLDER + name);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
