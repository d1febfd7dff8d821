package boilwright.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Marks on pages, in points from a page's top left corner, in black and greys only. Marks are collected first, so that a layout
 * that does not fit can be thrown away, and put onto paper at the end.
 */
final class PdfPen {
    static final float BLACK = 0;
    static final float GREY = 0.35f;
    static final float LIGHT = 0.88f;

    /** A mark that draws itself. */
    private interface Mark {
        void draw(PDPageContentStream page, float height) throws IOException;
    }

    private final PDFont plain;
    private final PDFont bold;
    private final List<List<Mark>> pages = new ArrayList<>();

    /** A pen whose fonts go into a document. */
    PdfPen(PDDocument document) {
        plain = font(document, "DejaVuSansCondensed.ttf");
        bold = font(document, "DejaVuSansCondensed-Bold.ttf");
    }

    private static PDFont font(PDDocument document, String file) {
        try (InputStream stream = PdfPen.class.getResourceAsStream("/boilwright/font/" + file)) {
            return PDType0Font.load(document, stream, true);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    /** Throws every mark away. */
    void clear() {
        pages.clear();
    }

    int pageCount() {
        return pages.size();
    }

    private List<Mark> page(int number) {
        while (pages.size() <= number) {
            pages.add(new ArrayList<>());
        }
        return pages.get(number);
    }

    /** Text whose base line begins there. */
    void text(int page, float x, float y, boolean heavy, float size, float grey, String words) {
        String shown = drawable(words);
        PDFont font = heavy ? bold : plain;
        page(page).add((out, height) -> {
            out.beginText();
            out.setNonStrokingColor(grey);
            out.setFont(font, size);
            out.newLineAtOffset(x, height - y);
            out.showText(shown);
            out.endText();
        });
    }

    /** A line. */
    void line(int page, float x1, float y1, float x2, float y2, float width, float grey) {
        page(page).add((out, height) -> {
            out.setStrokingColor(grey);
            out.setLineWidth(width);
            out.moveTo(x1, height - y1);
            out.lineTo(x2, height - y2);
            out.stroke();
        });
    }

    /** The outline of a rectangle. */
    void frame(int page, float x, float y, float w, float h, float width) {
        page(page).add((out, height) -> {
            out.setStrokingColor(BLACK);
            out.setLineWidth(width);
            out.addRect(x, height - y - h, w, h);
            out.stroke();
        });
    }

    /** A filled rectangle. */
    void fill(int page, float x, float y, float w, float h, float grey) {
        page(page).add((out, height) -> {
            out.setNonStrokingColor(grey);
            out.addRect(x, height - y - h, w, h);
            out.fill();
        });
    }

    /** How wide words are, points. */
    float width(boolean heavy, float size, String words) {
        try {
            return (heavy ? bold : plain).getStringWidth(drawable(words)) / 1000 * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Words in lines no wider than a width; a longer word is cut. */
    List<String> wrap(boolean heavy, float size, float width, String words) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(heavy, size, longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(heavy, size, line) > width && line.length() > 1) {
                int fits = line.length() - 1;
                while (fits > 1 && width(heavy, size, line.substring(0, fits)) > width) {
                    fits--;
                }
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        lines.add(line);
        return lines;
    }

    /** Names come from files: what the font can't draw is shown as a question mark. */
    private String drawable(String words) {
        StringBuilder out = new StringBuilder();
        words.codePoints().forEach(c -> {
            String one = Character.isISOControl(c) ? " " : new String(Character.toChars(c));
            out.append(draws(one) ? one : "?");
        });
        return out.toString();
    }

    private boolean draws(String one) {
        if (one.length() == 1 && one.charAt(0) >= ' ' && one.charAt(0) <= '~') {
            return true;
        }
        try {
            plain.encode(one);
            bold.encode(one);
            return true;
        } catch (IllegalArgumentException | IOException e) {
            return false;
        }
    }

    /** Puts the marks onto pages of a document. */
    void finish(PDDocument document, PDRectangle paper) throws IOException {
        for (List<Mark> marks : pages) {
            PDPage sheet = new PDPage(paper);
            document.addPage(sheet);
            try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
                for (Mark mark : marks) {
                    mark.draw(out, paper.getHeight());
                }
            }
        }
    }
}
