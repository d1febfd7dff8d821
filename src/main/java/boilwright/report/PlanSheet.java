package boilwright.report;

import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanStep;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** One try at laying a plan out: steps in a wide column on the left, boxes in a narrow one on the right. */
final class PlanSheet {
    private static final float MARGIN = 34;
    private static final float GUTTER = 12;
    private static final float SIDE = 168;
    private static final float LEADING = 1.24f;
    private static final float PAD = 5;
    private final PdfPen pen;
    private final PlanAnswer answer;
    private final float width;
    private final float bottom;
    private final float size;
    private final boolean reasons;

    /** Where each column goes on: page and height. */
    private int stepPage;

    private float stepY;
    private int boxPage;
    private float boxY;

    PlanSheet(PdfPen pen, PlanAnswer answer, PDRectangle paper, float size, boolean reasons) {
        this.pen = pen;
        this.answer = answer;
        this.size = size;
        this.reasons = reasons;
        width = paper.getWidth();
        bottom = paper.getHeight() - MARGIN - 12;
    }

    private float stepsWidth() {
        return width - 2 * MARGIN - SIDE - GUTTER;
    }

    private float boxX() {
        return width - MARGIN - SIDE;
    }

    void draw() {
        float below = head();
        List<PlanStep> steps = answer.plan().orElseThrow().steps();
        below = new PlanTimeLine(pen, answer.variant(), steps, MARGIN, width - MARGIN, size).draw(below);
        stepY = below;
        boxY = below;
        List<PlanBox> later = besideSteps();
        Clock before = null;
        for (int i = 0; i < steps.size(); i++) {
            PlanStep step = steps.get(i);
            if (step.moment().clock() != before) {
                before = step.moment().clock();
                clock(PlanTexts.clock(before, answer.variant()), height(step));
            }
            step(i + 1, step);
        }
        afterSteps(later);
        feet();
    }

    private float head() {
        float y = MARGIN + 13;
        pen.text(0, MARGIN, y, true, 14, PdfPen.BLACK, PlanTexts.title(answer.variant()));
        y += 4;
        for (String line : pen.wrap(false, size, width - 2 * MARGIN, PlanTexts.subject(answer))) {
            y += size * LEADING;
            pen.text(0, MARGIN, y, false, size, PdfPen.BLACK, line);
        }
        for (String line : pen.wrap(false, size, width - 2 * MARGIN, answer.verdict())) {
            y += size * LEADING;
            pen.text(0, MARGIN, y, false, size, PdfPen.GREY, line);
        }
        y += 6;
        List<String> codes = pen.wrap(true, size, width - 2 * MARGIN - 2 * PAD, PlanTexts.CODES);
        float h = codes.size() * size * LEADING + 2 * PAD - 2;
        pen.fill(0, MARGIN, y, width - 2 * MARGIN, h, PdfPen.LIGHT);
        pen.frame(0, MARGIN, y, width - 2 * MARGIN, h, 0.8f);
        float line = y + PAD - 2;
        for (String words : codes) {
            line += size * LEADING;
            pen.text(0, MARGIN + PAD, line, true, size, PdfPen.BLACK, words);
        }
        return y + h + 8;
    }

    /** What a clock counts from, kept together with the step under it. */
    private void clock(String title, float stepHeight) {
        float h = size * LEADING + 6;
        stepRoom(h + stepHeight);
        stepY += size * LEADING;
        pen.text(stepPage, MARGIN, stepY, true, size, PdfPen.BLACK, title);
        pen.line(stepPage, MARGIN, stepY + 2.5f, MARGIN + stepsWidth(), stepY + 2.5f, 0.8f, PdfPen.BLACK);
        stepY += 6;
    }

    private float indent() {
        return 7f * size;
    }

    private List<Part> parts(PlanStep step) {
        return Part.of(step, reasons);
    }

    private float height(PlanStep step) {
        float lines = 0;
        for (Part part : parts(step)) {
            lines += wrapped(part).size();
        }
        return lines * size * LEADING + 4;
    }

    private List<String> wrapped(Part part) {
        return pen.wrap(part.heavy(), size, stepsWidth() - indent(), part.words());
    }

    private void step(int number, PlanStep step) {
        stepRoom(height(step));
        float box = size * 0.95f;
        float first = stepY + size * LEADING;
        pen.frame(stepPage, MARGIN, first - box + 1, box, box, 0.8f);
        String label = Integer.toString(number);
        float right = MARGIN + box + 4 + pen.width(true, size, "00");
        pen.text(stepPage, right - pen.width(true, size, label), first, true, size, PdfPen.BLACK, label);
        String time = EventWords.clock(step.moment().atS());
        float end = MARGIN + indent() - 4;
        pen.text(stepPage, end - pen.width(false, size, time), first, false, size, PdfPen.BLACK, time);
        for (Part part : parts(step)) {
            for (String line : wrapped(part)) {
                stepY += size * LEADING;
                pen.text(stepPage, MARGIN + indent(), stepY, part.heavy(), size, part.grey(), line);
            }
        }
        stepY += 4;
    }

    private void stepRoom(float h) {
        if (stepY + h > bottom) {
            stepPage++;
            stepY = MARGIN;
        }
    }

    private List<PlanBox> boxes() {
        return List.of(
                PlanBox.sentences("If something fails", answer.emergency(), true),
                PlanBox.blanks("Write down", PlanTexts.blanks(answer.variant())),
                PlanBox.limits("Limits", answer.limits()),
                PlanBox.sentences("Not promised", answer.unproven(), false),
                PlanBox.sentences("Cautions", answer.cautions(), false),
                PlanBox.sentences("Proof", List.of(PlanTexts.kept(answer)), false));
    }

    /** Puts boxes into the right column of the first page as far as they fit, and gives the others. */
    private List<PlanBox> besideSteps() {
        List<PlanBox> later = new ArrayList<>();
        for (PlanBox box : boxes()) {
            if (!box.isEmpty()) {
                if (later.isEmpty() && fitsRight(box)) {
                    right(box);
                } else {
                    later.add(box);
                }
            }
        }
        return later;
    }

    /** Puts what is left beside further steps or, on the last page, under them. */
    private void afterSteps(List<PlanBox> later) {
        for (PlanBox box : later) {
            while (!fitsRight(box) && boxPage < stepPage) {
                boxPage++;
                boxY = MARGIN;
            }
            float h = box.height(pen, stepsWidth(), size);
            if (!fitsRight(box) && stepY + h + 4 <= bottom) {
                box.draw(pen, stepPage, MARGIN, stepY + 4, stepsWidth(), size);
                stepY += h + 11;
                continue;
            }
            if (!fitsRight(box)) {
                boxPage++;
                boxY = MARGIN;
            }
            right(box);
        }
    }

    private boolean fitsRight(PlanBox box) {
        return boxY + box.height(pen, SIDE, size) <= bottom;
    }

    private void right(PlanBox box) {
        box.draw(pen, boxPage, boxX(), boxY, SIDE, size);
        boxY += box.height(pen, SIDE, size) + 7;
    }

    private void feet() {
        int pages = pen.pageCount();
        for (int page = 0; page < pages; page++) {
            String foot = PlanTexts.subject(answer) + " \u00b7 " + PlanTexts.title(answer.variant()) + " \u00b7 page "
                    + (page + 1) + " of " + pages;
            String shown = pen.wrap(false, 6.5f, width - 2 * MARGIN, foot).get(0);
            pen.text(page, MARGIN, bottom + 14, false, 6.5f, PdfPen.GREY, shown);
        }
    }

    /**
     * One paragraph of a step.
     *
     * @param words its words
     * @param heavy whether they are set bold
     * @param grey how light
     */
    private record Part(String words, boolean heavy, float grey) {
        static List<Part> of(PlanStep step, boolean reasons) {
            List<Part> parts = new ArrayList<>();
            parts.add(new Part(PlanTexts.what(step), true, PdfPen.BLACK));
            add(parts, "See: ", step.words().hold(), PdfPen.BLACK);
            add(parts, PlanTexts.overdue(step), step.words().otherwise(), PdfPen.BLACK);
            if (reasons) {
                add(parts, "Why: ", step.words().why(), PdfPen.GREY);
            }
            return parts;
        }

        private static void add(List<Part> parts, String first, String words, float grey) {
            if (!words.isEmpty()) {
                parts.add(new Part(first + words, false, grey));
            }
        }
    }
}
