package boilwright.report;

import boilwright.sequence.PlanLimit;
import java.util.List;

/** A framed box of a sheet, as high as its words need in a column. */
abstract class PlanBox {
    private static final float LEADING = 1.24f;
    private static final float PAD = 5;
    private static final float BULLET = 7;
    private static final float BETWEEN = 1.5f;
    /** A line to write on needs this height at any size of type. */
    private static final float BLANK = 17;

    private final String title;
    private final boolean urgent;
    private final boolean empty;

    private PlanBox(String title, boolean urgent, boolean empty) {
        this.title = title;
        this.urgent = urgent;
        this.empty = empty;
    }

    /** Whether there is nothing to put into it. */
    boolean isEmpty() {
        return empty;
    }

    abstract float inner(PdfPen pen, float width, float size);

    abstract void fill(PdfPen pen, int page, float x, float y, float width, float size);

    /** How high it is in a column of a width. */
    float height(PdfPen pen, float width, float size) {
        return inner(pen, width - 2 * PAD, size) + size + 2 * PAD + 6;
    }

    /** Draws it with its top left corner there. */
    void draw(PdfPen pen, int page, float x, float y, float width, float size) {
        float h = height(pen, width, size);
        if (urgent) {
            pen.fill(page, x, y, width, h, PdfPen.LIGHT);
        }
        pen.frame(page, x, y, width, h, urgent ? 1.6f : 0.8f);
        pen.text(page, x + PAD, y + PAD + size, true, size + 0.6f, PdfPen.BLACK, title);
        fill(pen, page, x + PAD, y + PAD + size + 2, width - 2 * PAD, size);
    }

    /** Sentences, one after the other. */
    static PlanBox sentences(String title, List<String> sentences, boolean urgent) {
        return new PlanBox(title, urgent, sentences.isEmpty()) {
            @Override
            float inner(PdfPen pen, float width, float size) {
                float h = 0;
                for (String sentence : sentences) {
                    h += pen.wrap(false, size, width - BULLET, sentence).size() * size * LEADING + BETWEEN;
                }
                return h;
            }

            @Override
            void fill(PdfPen pen, int page, float x, float top, float width, float size) {
                float y = top;
                for (String sentence : sentences) {
                    pen.text(page, x, y + size * LEADING, true, size, PdfPen.BLACK, "\u2022");
                    for (String line : pen.wrap(false, size, width - BULLET, sentence)) {
                        y += size * LEADING;
                        pen.text(page, x + BULLET, y, false, size, PdfPen.BLACK, line);
                    }
                    y += BETWEEN;
                }
            }
        };
    }

    /** Names with a line to write on behind each. */
    static PlanBox blanks(String title, List<String> names) {
        return new PlanBox(title, false, names.isEmpty()) {
            @Override
            float inner(PdfPen pen, float width, float size) {
                return names.size() * BLANK;
            }

            @Override
            void fill(PdfPen pen, int page, float x, float top, float width, float size) {
                float y = top;
                for (String name : names) {
                    y += BLANK;
                    pen.text(page, x, y - 3, false, size, PdfPen.BLACK, name);
                    float from = x + pen.width(false, size, name) + 4;
                    pen.line(page, from, y - 2, x + width, y - 2, 0.6f, PdfPen.GREY);
                }
            }
        };
    }

    /** Limits with their values. */
    static PlanBox limits(String title, List<PlanLimit> limits) {
        return new PlanBox(title, false, limits.isEmpty()) {
            private List<String> lines(PdfPen pen, float width, float size, PlanLimit limit) {
                float room = width - 6 - pen.width(true, size, limit.inWords());
                return pen.wrap(false, size, room, limit.title());
            }

            @Override
            float inner(PdfPen pen, float width, float size) {
                float h = 0;
                for (PlanLimit limit : limits) {
                    h += lines(pen, width, size, limit).size() * size * LEADING;
                }
                return h;
            }

            @Override
            void fill(PdfPen pen, int page, float x, float top, float width, float size) {
                float y = top;
                for (PlanLimit limit : limits) {
                    String value = limit.inWords();
                    float at = x + width - pen.width(true, size, value);
                    pen.text(page, at, y + size * LEADING, true, size, PdfPen.BLACK, value);
                    for (String line : lines(pen, width, size, limit)) {
                        y += size * LEADING;
                        pen.text(page, x, y, false, size, PdfPen.BLACK, line);
                    }
                }
            }
        };
    }
}
