package boilwright.dashboard.water;

import boilwright.answers.WaterAnswer;
import boilwright.dashboard.water.CircuitPlan.Block;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Rectangle2D;

/** Boxes and pipes of a circuit in pixels. */
final class CircuitGeometry {
    /** Least flow that counts as flowing, kg/s. */
    private static final double HARDLY = 1e-9;

    private static final double LEAST_EMS = 11.2;
    private static final double MOST_EMS = 15;
    private static final double SUPPLY_EMS = 11.5;
    private static final double GAP_EMS = 1.9;
    /** Most of the width that the supply takes. */
    private static final double NARROW_SHARE = 0.36;

    private final CircuitPlan plan;
    private final List<WaterAnswer.Element> elements;
    private final double boxWidth;
    private final double boxHeight;
    private final double gap;
    private final double supplyWidth;
    private final double width;
    private final List<Pipe> pipes = new ArrayList<>();
    private final Rectangle2D[] boxes;
    private final double[] middles;
    private final double bottom;
    private Rectangle2D end;
    private double x;
    private double water;

    /**
     * @param plan where the elements stand
     * @param elements their figures
     * @param inletK temperature at which the water leaves the supply, K
     * @param width room, px
     * @param boxHeight height of a box, px
     * @param em size of the type, px
     */
    CircuitGeometry(
            CircuitPlan plan,
            List<WaterAnswer.Element> elements,
            double inletK,
            double width,
            double boxHeight,
            double em) {
        this.plan = plan;
        this.elements = elements;
        water = inletK;
        this.width = width;
        this.boxHeight = boxHeight;
        gap = gap(em);
        supplyWidth = Math.min(supplyWidth(em), NARROW_SHARE * width);
        x = supplyWidth;
        boxWidth = Math.min(MOST_EMS * em, (width - supplyWidth - 2 * gap) / plan.columns() - gap);
        boxes = new Rectangle2D[elements.size()];
        middles = new double[Math.max(1, plan.lines())];
        double top = 1;
        for (int line = 0; line < middles.length; line++) {
            double height = plan.rows(line) * (boxHeight + gap / 2) - gap / 2;
            middles[line] = top + height / 2;
            top += height + gap;
        }
        boolean back = plan.lines() > 0 && !plan.endsAtSupply();
        double returnY = top + 0.1 * em;
        bottom = back ? returnY + 1.1 * em : top - gap + 2;
        draw(returnY, em);
    }

    private static double gap(double em) {
        return GAP_EMS * em;
    }

    private static double supplyWidth(double em) {
        return SUPPLY_EMS * em;
    }

    /** How many elements have room beside one another. */
    static int mostColumns(double width, double em) {
        return Math.max(1, (int) ((width - supplyWidth(em) - 2 * gap(em)) / (LEAST_EMS * em + gap(em))));
    }

    private double left(int column) {
        return supplyWidth + gap + column * (boxWidth + gap);
    }

    private double right() {
        return left(plan.columns() - 1) + boxWidth + gap / 2;
    }

    private void draw(double returnY, double em) {
        double y = middles[0];
        int line = 0;
        for (Block block : plan.blocks()) {
            if (block.line() != line) {
                double turn = CircuitPlan.runsLeft(line) ? supplyWidth + gap / 2 : right();
                double next = middles[block.line()];
                pipes.add(Pipe.of(water, idle(), x, y, turn, y, turn, next));
                x = turn;
                y = next;
                line = block.line();
            }
            block(block);
        }
        if (plan.lines() > 0) {
            home(y, returnY, em);
        }
    }

    /** Where the water enters a block: half a gap before its first box. */
    private double enter(Block block) {
        int column = plan.column(block.line(), block.first());
        return CircuitPlan.runsLeft(block.line()) ? left(column) + boxWidth + gap / 2 : left(column) - gap / 2;
    }

    private double leave(Block block) {
        int column = plan.column(block.line(), block.first() + block.width() - 1);
        return CircuitPlan.runsLeft(block.line()) ? left(column) - gap / 2 : left(column) + boxWidth + gap / 2;
    }

    /** Draws a stretch and goes on from behind it. */
    private void block(Block block) {
        int count = block.branches().size();
        double middle = middles[block.line()];
        double enter = enter(block);
        double leave = leave(block);
        boolean splits = count > 1;
        double inK = water;
        double mixed = 0;
        double flow = 0;
        if (splits && x != enter) {
            pipes.add(Pipe.of(inK, idle(), x, middle, enter, middle));
        }
        double from = splits ? enter : x;
        for (int row = 0; row < count; row++) {
            List<Integer> branch = block.branches().get(row);
            double y = middle + (row - (count - 1) / 2.0) * (boxHeight + gap / 2);
            WaterAnswer.Element last = elements.get(branch.get(branch.size() - 1));
            boolean idle = last.flowKgPerS() <= HARDLY;
            double end = branch(block, branch, from, y, idle);
            if (splits) {
                pipes.add(
                        y != middle
                                ? Pipe.of(last.outletK(), idle, end, y, leave, y, leave, middle)
                                : Pipe.of(last.outletK(), idle, end, y, leave, y));
            }
            x = splits ? leave : end;
            mixed += last.flowKgPerS() * last.outletK();
            flow += last.flowKgPerS();
        }
        water = flow > HARDLY ? mixed / flow : inK;
    }

    /** The boxes of a branch and the pipes up to each; gives where the last box ends. */
    private double branch(Block block, List<Integer> branch, double from, double y, boolean idle) {
        boolean runsLeft = CircuitPlan.runsLeft(block.line());
        double middle = middles[block.line()];
        double at = from;
        for (int i = 0; i < branch.size(); i++) {
            WaterAnswer.Element element = elements.get(branch.get(i));
            double boxLeft = left(plan.column(block.line(), block.first() + i));
            double near = runsLeft ? boxLeft + boxWidth : boxLeft;
            boxes[branch.get(i)] = new Rectangle2D(boxLeft, y - boxHeight / 2, boxWidth, boxHeight);
            pipes.add(
                    i == 0 && y != middle
                            ? Pipe.of(element.inletK(), idle, from, middle, from, y, near, y)
                            : Pipe.of(element.inletK(), idle, at, y, near, y));
            at = runsLeft ? boxLeft : boxLeft + boxWidth;
        }
        return at;
    }

    /** Back to the supply, or towards the place where the drain is named. */
    private void home(double y, double returnY, double em) {
        double middle = supplyWidth / 2;
        if (plan.endsAtSupply()) {
            pipes.add(Pipe.of(water, idle(), x, y, middle, y, middle, supply().getMaxY()));
            end = new Rectangle2D(0, y - em, supplyWidth - 0.4 * em, 2 * em);
        } else {
            double turn = right();
            pipes.add(
                    Pipe.of(water, idle(), x, y, turn, y, turn, returnY, middle, returnY, middle, supply().getMaxY()));
            end = new Rectangle2D(Math.max(supplyWidth, turn - 14 * em), returnY - em, 12 * em, 2 * em);
        }
    }

    private boolean idle() {
        return elements.stream().allMatch(element -> element.flowKgPerS() <= HARDLY);
    }

    /** Where the supply stands. */
    Rectangle2D supply() {
        return new Rectangle2D(0, middles[0] - boxHeight / 2, supplyWidth, boxHeight);
    }

    /** Where an element stands. */
    Rectangle2D box(int element) {
        return boxes[element];
    }

    /** Where the drain is named, at the end of the circuit. */
    Rectangle2D end() {
        return end;
    }

    /** The pipes in the order of the water; the last one leads home. */
    List<Pipe> pipes() {
        return pipes;
    }

    /** The last pipe cut off where the drain is named. */
    Pipe toDrain() {
        Pipe home = pipes.get(pipes.size() - 1);
        double[] xs = home.xs();
        double[] ys = home.ys();
        return plan.endsAtSupply()
                ? Pipe.of(home.temperatureK(), home.idle(), xs[0], ys[0], end.getMaxX() + gap / 2, ys[0])
                : Pipe.of(
                        home.temperatureK(),
                        home.idle(),
                        xs[0],
                        ys[0],
                        xs[1],
                        ys[1],
                        xs[2],
                        ys[2],
                        end.getMaxX() + gap / 2,
                        ys[2]);
    }

    /** Height of it all, px. */
    double height() {
        return bottom;
    }

    /**
     * A piece of pipe in the drawing, along the water.
     *
     * @param xs places, px
     * @param ys heights, px
     * @param temperatureK of the water in it, K
     * @param idle whether nothing flows in it
     */
    record Pipe(double[] xs, double[] ys, double temperatureK, boolean idle) {
        static Pipe of(double temperatureK, boolean idle, double... xy) {
            double[] xs = new double[xy.length / 2];
            double[] ys = new double[xs.length];
            for (int i = 0; i < xs.length; i++) {
                xs[i] = xy[2 * i];
                ys[i] = xy[2 * i + 1];
            }
            return new Pipe(xs, ys, temperatureK, idle);
        }
    }
}
