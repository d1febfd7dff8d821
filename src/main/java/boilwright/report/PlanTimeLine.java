package boilwright.report;

import boilwright.sequence.Clock;
import boilwright.sequence.PlanStep;
import boilwright.sequence.SwitchSpans;
import boilwright.sequence.SwitchSpans.Switch;
import boilwright.sequence.Variant;
import java.util.ArrayList;
import java.util.List;

/** The time line over a sheet: for each clock the steps' numbers along it, and bars for what is on. */
final class PlanTimeLine {
    private static final float LABEL = 48;
    private static final float ROW = 9;
    private static final float BAR = 5;
    private static final float GAP = 14;
    /** Numbers nearer to each other than this share one label, points. */
    private static final float NEAR = 9;

    private final PdfPen pen;
    private final Variant variant;
    private final List<PlanStep> steps;
    private final float left;
    private final float right;
    private final float size;
    private final List<Switch> rows;

    PlanTimeLine(PdfPen pen, Variant variant, List<PlanStep> steps, float left, float right, float size) {
        this.pen = pen;
        this.variant = variant;
        this.steps = steps;
        this.left = left;
        this.right = right;
        this.size = Math.min(size, 7.4f);
        rows = SwitchSpans.switches(steps);
    }

    /** Draws from a height on the first page and gives the height below it. */
    float draw(float top) {
        List<Clock> clocks = SwitchSpans.clocks(steps);
        float width = (right - left - LABEL - GAP * (clocks.size() - 1)) / clocks.size();
        float axis = top + 2 * size + 4;
        for (int i = 0; i < rows.size(); i++) {
            pen.text(
                    0,
                    left,
                    axis + 4 + i * ROW + BAR,
                    false,
                    size,
                    PdfPen.BLACK,
                    rows.get(i).title());
        }
        for (int c = 0; c < clocks.size(); c++) {
            float x = left + LABEL + c * (width + GAP);
            panel(clocks.get(c), x, width, top, axis);
        }
        return axis + 4 + rows.size() * ROW + size + 12;
    }

    private void panel(Clock clock, float x, float width, float top, float axis) {
        List<Integer> own = new ArrayList<>();
        double last = 60;
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).moment().clock() == clock) {
                own.add(i);
                last = Math.max(last, steps.get(i).moment().atS());
            }
        }
        double end = last * 1.04;
        pen.text(
                0,
                x,
                top + size - 2,
                true,
                size,
                PdfPen.BLACK,
                clock == Clock.FROM_COLD ? "start" : variant == Variant.STANDBY ? "pause" : "stop");
        pen.line(0, x, axis, x + width, axis, 0.8f, PdfPen.BLACK);
        numbers(own, x, width, end, axis);
        for (int r = 0; r < rows.size(); r++) {
            for (SwitchSpans.Span span : SwitchSpans.of(variant, steps)) {
                if (span.what() == rows.get(r) && span.clock() == clock) {
                    bar(x, width, span.fromS(), Math.min(end, span.toS()), end, axis + 4 + r * ROW);
                }
            }
        }
        ticks(x, width, end, axis + 4 + rows.size() * ROW);
    }

    private void numbers(List<Integer> own, float x, float width, double end, float axis) {
        int i = 0;
        while (i < own.size()) {
            float at = x + (float) (steps.get(own.get(i)).moment().atS() / end * width);
            int j = i;
            while (j + 1 < own.size()
                    && x + steps.get(own.get(j + 1)).moment().atS() / end * width - at
                            < NEAR + 2 * size * (j - i > 0 ? 1 : 0.3)) {
                j++;
            }
            String label = i == j ? Integer.toString(own.get(i) + 1) : (own.get(i) + 1) + "-" + (own.get(j) + 1);
            pen.line(0, at, axis - 3, at, axis + 2, 0.8f, PdfPen.BLACK);
            float within = Math.min(at - 1, x + width - pen.width(false, size, label));
            pen.text(0, within, axis - 5, false, size, PdfPen.BLACK, label);
            for (int k = i + 1; k <= j; k++) {
                float tick = x + (float) (steps.get(own.get(k)).moment().atS() / end * width);
                pen.line(0, tick, axis - 3, tick, axis + 2, 0.8f, PdfPen.BLACK);
            }
            i = j + 1;
        }
    }

    private void bar(float x, float width, double from, double to, double end, float y) {
        pen.fill(0, x + (float) (from / end * width), y, Math.max(1, (float) ((to - from) / end * width)), BAR, 0.45f);
    }

    private void ticks(float x, float width, double end, float y) {
        double[] steps = {60, 120, 300, 600, 1200, 1800, 3600, 7200, 14400, 28800, 86400};
        double step = steps[steps.length - 1];
        for (double s : steps) {
            if (end / s <= 6) {
                step = s;
                break;
            }
        }
        for (double t = 0; t <= end; t += step) {
            float at = x + (float) (t / end * width);
            pen.line(0, at, y, at, y + 3, 0.6f, PdfPen.GREY);
            long minutes = Math.round(t / 60);
            String label = String.format(java.util.Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
            float shift = t == 0 ? 0 : pen.width(false, size, label) / 2;
            pen.text(0, at - shift, y + 4 + size, false, size, PdfPen.GREY, label);
        }
    }
}
