package boilwright.report;

import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanLimit;
import boilwright.sequence.PlanStep;
import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** One try at laying a plan out: steps in a wide column on the left, boxes in a narrow one on the right. */
final class PlanSheet {
    private static final float MARGIN = 34;
    private static final float GUTTER = 12;
    private static final float SIDE = 168;
    private static final float LEADING = 1.24f;
    private static final float PAD = 5;
    /** A line to write on needs this height at any size of type. */
    private static final float BLANK = 17;

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
        boxes();
        Clock before = null;
        for (int i = 0; i < steps.size(); i++) {
            PlanStep step = steps.get(i);
            if (step.moment().clock() != before) {
                before = step.moment().clock();
                clock(PlanTexts.clock(before, answer.variant()), height(step));
            }
            step(i + 1, step);
        }
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

    private void boxes() {
        box("If something fails", answer.emergency(), 1.6f, true);
        blanks();
        limits();
        box("Not promised", answer.unproven(), 0.8f, false);
        box("Cautions", answer.cautions(), 0.8f, false);
        box("Proof", List.of(PlanTexts.kept(answer)), 0.8f, false);
    }

    private void boxRoom(float h) {
        if (boxY + h > bottom) {
            boxPage++;
            boxY = MARGIN;
        }
    }

    private float heading(String title, float h, float frame, boolean shaded) {
        boxRoom(h);
        if (shaded) {
            pen.fill(boxPage, boxX(), boxY, SIDE, h, PdfPen.LIGHT);
        }
        pen.frame(boxPage, boxX(), boxY, SIDE, h, frame);
        float y = boxY + PAD + size;
        pen.text(boxPage, boxX() + PAD, y, true, size + 0.6f, PdfPen.BLACK, title);
        return y + 2;
    }

    private void box(String title, List<String> sentences, float frame, boolean shaded) {
        if (sentences.isEmpty()) {
            return;
        }
        float inner = SIDE - 2 * PAD - 7;
        float lines = 0;
        for (String sentence : sentences) {
            lines += pen.wrap(false, size, inner, sentence).size();
        }
        float h = lines * size * LEADING + sentences.size() * 1.5f + size + 2 * PAD + 4;
        float y = heading(title, h, frame, shaded);
        for (String sentence : sentences) {
            boolean start = true;
            for (String line : pen.wrap(false, size, inner, sentence)) {
                y += size * LEADING;
                if (start) {
                    pen.text(boxPage, boxX() + PAD, y, true, size, PdfPen.BLACK, "\u2022");
                }
                pen.text(boxPage, boxX() + PAD + 7, y, false, size, PdfPen.BLACK, line);
                start = false;
            }
            y += 1.5f;
        }
        boxY += h + 7;
    }

    private void blanks() {
        float h = PlanTexts.blanks(answer.variant()).size() * BLANK + size + 2 * PAD + 4;
        float y = heading("Write down", h, 0.8f, false);
        for (String blank : PlanTexts.blanks(answer.variant())) {
            y += BLANK;
            pen.text(boxPage, boxX() + PAD, y - 3, false, size, PdfPen.BLACK, blank);
            float from = boxX() + PAD + pen.width(false, size, blank) + 4;
            pen.line(boxPage, from, y - 2, boxX() + SIDE - PAD, y - 2, 0.6f, PdfPen.GREY);
        }
        boxY += h + 7;
    }

    private void limits() {
        float row = size * LEADING;
        float lines = 0;
        for (PlanLimit limit : answer.limits()) {
            lines += titleLines(limit).size();
        }
        float h = lines * row + size + 2 * PAD + 6;
        float y = heading("Limits", h, 0.8f, false);
        for (PlanLimit limit : answer.limits()) {
            String value = limit.inWords();
            float x = boxX() + SIDE - PAD - pen.width(true, size, value);
            pen.text(boxPage, x, y + row, true, size, PdfPen.BLACK, value);
            for (String line : titleLines(limit)) {
                y += row;
                pen.text(boxPage, boxX() + PAD, y, false, size, PdfPen.BLACK, line);
            }
        }
        boxY += h + 7;
    }

    private List<String> titleLines(PlanLimit limit) {
        return pen.wrap(false, size, SIDE - 2 * PAD - 6 - pen.width(true, size, limit.inWords()), limit.title());
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
            List<Part> parts = new java.util.ArrayList<>();
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
