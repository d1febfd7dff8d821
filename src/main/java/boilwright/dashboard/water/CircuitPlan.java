package boilwright.dashboard.water;

import boilwright.rig.Cooling;
import boilwright.water.Circuit;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the elements of a circuit stand when it is drawn: in lines one below the other, the first led to the right, the next
 * back to the left and so on, as a hose would be laid; branches stand one below the other within their line.
 *
 * @param columns places for elements in a line
 * @param blocks the stretches of the circuit in the order the water meets them
 */
record CircuitPlan(int columns, List<Block> blocks) {
    CircuitPlan {
        blocks = List.copyOf(blocks);
    }

    /**
     * A stretch that is not torn apart: one element, or branches side by side.
     *
     * @param line its line, from 0
     * @param first how many places of the line the water passes before it
     * @param width places that it takes
     * @param branches indices of its elements, a list for each branch
     */
    record Block(int line, int first, int width, List<List<Integer>> branches) {
        Block {
            branches = branches.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A plan.
     *
     * @param elements the elements in the order of the rig
     * @param most places for which a line has room; a longer branch makes the lines longer
     */
    static CircuitPlan of(List<Cooling.Element> elements, int most) {
        List<Circuit.Stretch> stretches = Circuit.of(elements).stretches();
        int columns = Math.max(
                Math.max(1, Math.min(most, elements.size())),
                stretches.stream().mapToInt(CircuitPlan::width).max().orElse(1));
        List<Block> blocks = new ArrayList<>();
        int line = 0;
        int used = 0;
        for (Circuit.Stretch stretch : stretches) {
            int width = width(stretch);
            if (used + width > columns) {
                line++;
                used = 0;
            }
            blocks.add(new Block(line, used, width, stretch.branches()));
            used += width;
        }
        return new CircuitPlan(columns, blocks);
    }

    private static int width(Circuit.Stretch stretch) {
        return stretch.branches().stream().mapToInt(List::size).max().orElse(1);
    }

    /** Number of lines; 0 without elements. */
    int lines() {
        return blocks.isEmpty() ? 0 : blocks.get(blocks.size() - 1).line() + 1;
    }

    /** How many branches stand below one another in a line, at most. */
    int rows(int line) {
        return blocks.stream()
                .filter(block -> block.line() == line)
                .mapToInt(block -> block.branches().size())
                .max()
                .orElse(1);
    }

    /** Whether the water of a line runs to the left. */
    static boolean runsLeft(int line) {
        return line % 2 == 1;
    }

    /** Whether the water ends at the side on which the supply stands. */
    boolean endsAtSupply() {
        return lines() > 0 && runsLeft(lines() - 1);
    }

    /** The column, counted from the left, of a place of a line counted along the water. */
    int column(int line, int place) {
        return runsLeft(line) ? columns - 1 - place : place;
    }
}
