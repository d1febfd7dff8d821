package boilwright.dashboard.chart;

import java.util.Arrays;
import java.util.Comparator;

/** Labels in one column moved apart just as far as it takes. */
final class LabelSpread {
    private LabelSpread() {}

    private static final class Group {
        private double sum;
        private int size;
        private double middle;
    }

    /**
     * Places near the wanted ones, none closer than a pitch to the next, all within two ends. When there is not room for all,
     * they stand evenly, closer than the pitch.
     *
     * @param wanted middles that would be best
     * @return the middles, in the order of the wanted ones
     */
    static double[] apart(double[] wanted, double pitch, double low, double high) {
        int n = wanted.length;
        double room = high - low;
        double step = n > 1 ? Math.min(pitch, room / n) : pitch;
        Integer[] order = new Integer[n];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> wanted[i]));
        Group[] groups = new Group[n];
        int count = 0;
        for (int i : order) {
            Group group = new Group();
            group.sum = wanted[i];
            group.size = 1;
            settle(group, step, low, high);
            while (count > 0 && reach(groups[count - 1], step, 1) > reach(group, step, -1) - 1e-9) {
                Group before = groups[--count];
                group.sum += before.sum;
                group.size += before.size;
                settle(group, step, low, high);
            }
            groups[count++] = group;
        }
        double[] places = new double[n];
        int next = 0;
        for (int k = 0; k < count; k++) {
            double first = groups[k].middle - (groups[k].size - 1) * step / 2;
            for (int j = 0; j < groups[k].size; j++) {
                places[order[next++]] = first + j * step;
            }
        }
        return places;
    }

    private static void settle(Group group, double step, double low, double high) {
        double half = group.size * step / 2;
        group.middle = Math.max(low + half, Math.min(high - half, group.sum / group.size));
    }

    private static double reach(Group group, double step, int side) {
        return group.middle + side * group.size * step / 2;
    }
}
