package boilwright.dashboard.drawing;

import java.util.ArrayList;
import java.util.List;

/** Puts labels of one column as near to where they want to be as they can stand without touching each other. */
final class LabelColumn {
    private record Block(int first, int count, double height, double wantedSum) {
        /** Upper edge that suits its labels best. */
        double top() {
            return wantedSum / count;
        }
    }

    private LabelColumn() {}

    /**
     * Middles of labels, in the order of those they want.
     *
     * @param wanted middles wanted, ascending
     * @param heights heights with the gap to the next
     * @param top upper end of the column
     * @param bottom its lower end; what does not fit hangs over it
     */
    static double[] place(double[] wanted, double[] heights, double top, double bottom) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < wanted.length; i++) {
            blocks.add(new Block(i, 1, heights[i], wanted[i] - heights[i] / 2));
            while (blocks.size() > 1 && overlaps(blocks, top, bottom)) {
                Block lower = blocks.remove(blocks.size() - 1);
                Block upper = blocks.remove(blocks.size() - 1);
                // each label of the lower block wants the block's edge higher by what stands above it
                double sum = upper.wantedSum() + lower.wantedSum() - lower.count() * upper.height();
                blocks.add(
                        new Block(upper.first(), upper.count() + lower.count(), upper.height() + lower.height(), sum));
            }
        }
        double[] middles = new double[wanted.length];
        for (Block block : blocks) {
            double at = within(block, top, bottom);
            for (int i = block.first(); i < block.first() + block.count(); i++) {
                middles[i] = at + heights[i] / 2;
                at += heights[i];
            }
        }
        return middles;
    }

    private static boolean overlaps(List<Block> blocks, double top, double bottom) {
        Block lower = blocks.get(blocks.size() - 1);
        Block upper = blocks.get(blocks.size() - 2);
        return within(upper, top, bottom) + upper.height() > within(lower, top, bottom) + 1e-9;
    }

    private static double within(Block block, double top, double bottom) {
        return Math.max(top, Math.min(block.top(), bottom - block.height()));
    }
}
