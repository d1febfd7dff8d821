package boilwright.dashboard.session;

import boilwright.rig.file.RigFields;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Names of parallel branches among the elements of a rig's cooling, changed so that no branch is left alone. */
public final class Branches {
    private static final String ELEMENTS = "cooling.elements";

    private Branches() {}

    /**
     * A rig's fields with a branch begun at an element: a further one beside those that are its neighbours, else two with the
     * element that follows, or with the one before when none does.
     *
     * @param path path of the branch's name
     */
    public static RigFields begun(RigFields fields, String path) {
        int index = Integer.parseInt(path.substring(ELEMENTS.length() + 1, path.indexOf(']')));
        Set<String> taken = new LinkedHashSet<>(names(fields));
        String name = free(taken);
        RigFields begun = fields.with(path, name);
        boolean besideOthers = has(fields, index - 1) || has(fields, index + 1);
        if (besideOthers) {
            return begun;
        }
        taken.add(name);
        int other = index + 1 < fields.count(ELEMENTS) ? index + 1 : index - 1;
        return other < 0 ? begun : begun.with(path(other), free(taken));
    }

    /** A rig's fields without the names of branches that no other stands beside: all water passes those. */
    public static RigFields tidied(RigFields fields) {
        RigFields tidied = fields;
        List<String> names = names(fields);
        int i = 0;
        while (i < names.size()) {
            int first = i;
            while (i < names.size() && !names.get(i).isEmpty()) {
                i++;
            }
            if (Set.copyOf(names.subList(first, i)).size() == 1) {
                for (int k = first; k < i; k++) {
                    tidied = tidied.without(path(k));
                }
            }
            i = Math.max(i, first + 1);
        }
        return tidied;
    }

    private static String free(Set<String> taken) {
        char letter = 'A';
        while (taken.contains(String.valueOf(letter))) {
            letter++;
        }
        return String.valueOf(letter);
    }

    private static List<String> names(RigFields fields) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < fields.count(ELEMENTS); i++) {
            names.add(fields.text(path(i)).orElse(""));
        }
        return names;
    }

    private static boolean has(RigFields fields, int index) {
        return index >= 0 && index < fields.count(ELEMENTS) && fields.has(path(index));
    }

    private static String path(int index) {
        return ELEMENTS + "[" + index + "].branch";
    }
}
