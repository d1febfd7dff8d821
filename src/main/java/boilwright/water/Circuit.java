package boilwright.water;

import boilwright.rig.Cooling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The order in which the water meets the elements of a rig's cooling: stretches in series, each of one or more branches. */
public final class Circuit {
    /**
     * A stretch of the circuit.
     *
     * @param branches indices into the cooling's elements, one list a branch, in the order the water meets them; one branch
     *     when nothing stands beside it
     */
    public record Stretch(List<List<Integer>> branches) {
        public Stretch {
            branches = branches.stream().map(List::copyOf).toList();
        }
    }

    private final List<Stretch> stretches;

    private Circuit(List<Stretch> stretches) {
        this.stretches = List.copyOf(stretches);
    }

    /** The circuit of these elements; that no branch is left and met again was checked when the rig was read. */
    public static Circuit of(List<Cooling.Element> elements) {
        List<Stretch> stretches = new ArrayList<>();
        Map<String, List<Integer>> parallel = new LinkedHashMap<>();
        for (int i = 0; i < elements.size(); i++) {
            String branch = elements.get(i).place().branch();
            if (branch.isEmpty()) {
                close(parallel, stretches);
                stretches.add(new Stretch(List.of(List.of(i))));
            } else {
                parallel.computeIfAbsent(branch, b -> new ArrayList<>()).add(i);
            }
        }
        close(parallel, stretches);
        return new Circuit(stretches);
    }

    private static void close(Map<String, List<Integer>> parallel, List<Stretch> stretches) {
        if (!parallel.isEmpty()) {
            stretches.add(new Stretch(new ArrayList<>(parallel.values())));
            parallel.clear();
        }
    }

    /** The stretches in the order the water meets them. */
    public List<Stretch> stretches() {
        return stretches;
    }
}
