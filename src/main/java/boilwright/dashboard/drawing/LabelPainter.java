package boilwright.dashboard.drawing;

import boilwright.dashboard.model.MomentState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.shape.ArcType;
import javafx.scene.text.TextAlignment;

/** Writes the labels of one side of the pump, none over another, each with its leader. */
final class LabelPainter {
    private static final double GAP_LINES = 0.45;
    private static final double ELBOW = 8;
    private static final double MARK = 0.42;
    /** Between name and figure in one line, in widths of the type. */
    private static final double VALUE_GAP = 0.5;

    private final Sheet s;
    private final double topY;
    private final double bottomY;
    private final List<Bounds> written = new ArrayList<>();

    LabelPainter(Sheet sheet, double topY, double bottomY) {
        s = sheet;
        this.topY = topY;
        this.bottomY = bottomY;
    }

    /**
     * Writes one side.
     *
     * @param edgeX where the labels begin, towards the pump
     * @param width the widest they may be
     * @param oneLine whether name and first figure share a line and the others are left out
     */
    void write(List<Callout> callouts, boolean right, double edgeX, double width, boolean oneLine) {
        List<Callout> side = new ArrayList<>(callouts.stream()
                .filter(c -> right == c.right() || oneLine)
                .map(c -> oneLine ? first(c) : c)
                .sorted(Comparator.comparingDouble(Callout::y))
                .toList());
        shorten(side, oneLine);
        if (oneLine) {
            brief(side, width);
        }
        double[] wanted = side.stream().mapToDouble(Callout::y).toArray();
        double[] heights = side.stream().mapToDouble(c -> height(c, oneLine)).toArray();
        double[] middles = place(wanted, heights, topY, bottomY);
        for (int i = 0; i < side.size(); i++) {
            leader(side.get(i), edgeX, middles[i], right);
        }
        for (int i = 0; i < side.size(); i++) {
            double tall = heights[i] - GAP_LINES * s.lettering.lineHeight();
            written.add(new BoundingBox(right ? edgeX : edgeX - width, middles[i] - tall / 2, width, tall));
            label(side.get(i), edgeX, middles[i], width, right, oneLine);
        }
    }

    /** The boxes within which the labels written so far stand, px. */
    List<Bounds> written() {
        return written;
    }

    /** On a sheet too narrow for labels: the numbers of the jets with the marks of their states. */
    void jetsOnly(PumpShape shape, MomentState moment) {
        for (int k = 0; k < shape.jets.size(); k++) {
            double y = s.y(shape.jets.get(k).throatM());
            mark(Callouts.mark(moment.jets().get(k)), s.x(0) - 0.5 * s.lettering.size(), y);
            s.lettering.write(
                    s.g,
                    Integer.toString(k + 1),
                    s.x(0) + 0.2 * s.lettering.size(),
                    y,
                    true,
                    s.palette.ink(),
                    TextAlignment.LEFT);
        }
    }

    /** Takes the shorter names where the long ones do not fit; of the jets all or none. */
    private void brief(List<Callout> side, double width) {
        Set<Part.Kind> tooLong = side.stream()
                .filter(c -> s.lettering.width(c.name(), false)
                                + VALUE_GAP * s.lettering.size()
                                + s.lettering.width(c.values().get(0), true)
                        > width - indent(c))
                .map(c -> c.part().kind())
                .collect(Collectors.toSet());
        side.replaceAll(c -> !tooLong.contains(c.part().kind())
                ? c
                : new Callout(
                        c.part(), c.right(), c.x(), c.y(), c.mark(), c.brief(), c.brief(), c.values(), c.weight()));
    }

    private double indent(Callout c) {
        return c.mark() == Callout.Mark.NONE ? 0 : 1.15 * s.lettering.size();
    }

    private static Callout first(Callout c) {
        return new Callout(
                c.part(),
                c.right(),
                c.x(),
                c.y(),
                c.mark(),
                c.name(),
                c.brief(),
                c.values().subList(0, 1),
                c.weight());
    }

    /** Leaves out second figures, then whole labels, until the rest stands. */
    private void shorten(List<Callout> side, boolean oneLine) {
        while (total(side, oneLine) > bottomY - topY) {
            Callout longest = side.stream()
                    .filter(c -> c.values().size() > 1)
                    .min(Comparator.comparingInt(Callout::weight))
                    .orElse(null);
            if (longest != null) {
                side.set(side.indexOf(longest), first(longest));
            } else {
                side.remove(side.stream()
                        .min(Comparator.comparingInt(Callout::weight))
                        .orElseThrow());
            }
        }
    }

    private double total(List<Callout> side, boolean oneLine) {
        return side.stream().mapToDouble(c -> height(c, oneLine)).sum();
    }

    private double height(Callout c, boolean oneLine) {
        int lines = oneLine ? 1 : 1 + c.values().size();
        return (lines + GAP_LINES) * s.lettering.lineHeight();
    }

    private void leader(Callout c, double edgeX, double y, boolean right) {
        if (Double.isNaN(c.x())) {
            return;
        }
        double out = right ? 1 : -1;
        double from = edgeX - out * 3 * s.line;
        double elbow = edgeX - out * ELBOW * s.line;
        s.stroke(Palette.thin(s.palette.muted(), 0.6), 0.8 * s.line);
        s.g.strokePolyline(new double[] {from, elbow, c.x()}, new double[] {y, y, c.y()}, 3);
        double dot = 1.7 * s.line;
        s.g.setFill(s.palette.muted());
        s.g.fillOval(c.x() - dot, c.y() - dot, 2 * dot, 2 * dot);
    }

    private void label(Callout c, double edgeX, double middle, double width, boolean right, boolean oneLine) {
        TextAlignment to = right ? TextAlignment.LEFT : TextAlignment.RIGHT;
        double em = s.lettering.size();
        double indent = indent(c);
        double x = edgeX + (right ? indent : -indent);
        double room = width - indent;
        double line = s.lettering.lineHeight();
        if (oneLine) {
            String value = c.values().get(0);
            double valueWidth = s.lettering.width(value, true);
            double forName = Math.max(0, room - valueWidth - VALUE_GAP * em);
            String name = s.lettering.fitted(c.name(), false, forName);
            s.lettering.write(s.g, name, x, middle, false, s.palette.muted(), to);
            double after = name.isEmpty() ? 0 : s.lettering.width(name, false) + VALUE_GAP * em;
            s.lettering.write(
                    s.g, s.lettering.fitted(value, true, room - after), x + after, middle, true, s.palette.ink(), to);
            mark(c.mark(), edgeX + em * MARK, middle);
            return;
        }
        double y = middle - line * c.values().size() / 2.0;
        String most = s.lettering.width(c.name(), false) <= room ? c.name() : c.brief();
        s.lettering.write(s.g, s.lettering.fitted(most, false, room), x, y, false, s.palette.muted(), to);
        mark(c.mark(), edgeX + (right ? 1 : -1) * em * MARK, y);
        for (int i = 0; i < c.values().size(); i++) {
            y += line;
            boolean heavy = i == 0;
            s.lettering.write(
                    s.g,
                    s.lettering.fitted(c.values().get(i), heavy, room),
                    x,
                    y,
                    heavy,
                    heavy ? s.palette.ink() : s.palette.muted(),
                    to);
        }
    }

    /** An empty, half or full disc. */
    private void mark(Callout.Mark mark, double x, double y) {
        if (mark == Callout.Mark.NONE) {
            return;
        }
        double r = 0.36 * s.lettering.size();
        s.g.setFill(s.palette.ink());
        if (mark == Callout.Mark.FULL) {
            s.g.fillOval(x - r, y - r, 2 * r, 2 * r);
        } else if (mark == Callout.Mark.LIT) {
            s.g.fillArc(x - r, y - r, 2 * r, 2 * r, 180, 180, ArcType.CHORD);
        }
        s.stroke(s.palette.ink(), 1.1 * s.line);
        s.g.strokeOval(x - r, y - r, 2 * r, 2 * r);
    }

    private record Block(int first, int count, double height, double wantedSum) {
        /** Upper edge that suits its labels best. */
        double top() {
            return wantedSum / count;
        }
    }

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
