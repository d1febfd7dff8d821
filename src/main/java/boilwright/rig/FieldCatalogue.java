package boilwright.rig;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Every field of a rig, once. The file reader's checks, the published schema, the ranges of parameters and the texts shown
 * beside a field all come from here.
 */
public final class FieldCatalogue {
    private static final Pattern INDEX = Pattern.compile("\\[\\d+]");
    private static final Map<String, Field> BY_PATH = collect();
    private static final Map<String, List<Field>> BY_PARENT = group();

    private FieldCatalogue() {}

    /** All fields, in the order in which a file lists them. */
    public static List<Field> fields() {
        return List.copyOf(BY_PATH.values());
    }

    /**
     * The field at a path. Entries of a list may be written with or without their number: {@code stages[1].throatGap} and
     * {@code stages[].throatGap} find the same field, and so does the name of a list without brackets.
     */
    public static Optional<Field> find(String path) {
        String general = general(path);
        return Optional.ofNullable(BY_PATH.getOrDefault(general, BY_PATH.get(general + "[]")));
    }

    /** The fields directly inside the object at a path, in the order of the file; the empty path is the rig itself. */
    public static List<Field> children(String path) {
        return BY_PARENT.getOrDefault(general(path), List.of());
    }

    /** A path with the numbers of list entries taken out: {@code stages[1].name} becomes {@code stages[].name}. */
    public static String general(String path) {
        return INDEX.matcher(path).replaceAll("[]");
    }

    /** How files spell the constants of a choice: the name in lower case with hyphens. */
    public static String id(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String[] ids(Enum<?>[] constants) {
        return Arrays.stream(constants).map(FieldCatalogue::id).toArray(String[]::new);
    }

    private static Map<String, Field> collect() {
        List<Field> all = new ArrayList<>(VesselFields.all());
        all.addAll(OperationFields.all());
        all.addAll(LimitFields.limits());
        all.addAll(LimitFields.parameters());
        Map<String, Field> byPath = new LinkedHashMap<>();
        all.forEach(field -> byPath.put(field.path(), field));
        return Collections.unmodifiableMap(byPath);
    }

    private static Map<String, List<Field>> group() {
        Map<String, List<Field>> byParent = new LinkedHashMap<>();
        BY_PATH.values()
                .forEach(field -> byParent.computeIfAbsent(field.parent(), p -> new ArrayList<>())
                        .add(field));
        byParent.replaceAll((parent, children) -> List.copyOf(children));
        return byParent;
    }
}
