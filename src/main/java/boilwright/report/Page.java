package boilwright.report;

import java.util.ArrayList;
import java.util.List;

/** A page of plain text, at most {@value #WIDTH} characters wide, that is filled from the top. */
final class Page {
    /** Characters in a line. */
    static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();

    /** A line as it is, without blanks at its end. */
    Page line(String line) {
        text.append(clean(line).stripTrailing()).append('\n');
        return this;
    }

    /** An empty line, unless the page is empty or already ends with one. */
    Page gap() {
        if (text.length() > 0 && !text.toString().endsWith("\n\n")) {
            text.append('\n');
        }
        return this;
    }

    /** A heading with a rule under it, apart from what stands before. */
    Page heading(String heading) {
        gap();
        line(heading);
        return line("-".repeat(Math.min(WIDTH, heading.length())));
    }

    /**
     * A paragraph, broken between words.
     *
     * @param first what its first line begins with
     * @param indent blanks before the other lines
     */
    Page paragraph(String first, int indent, String words) {
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : clean(words).strip().split("\\s+")) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                line(line.toString());
                line = new StringBuilder(" ".repeat(indent));
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        return line(line.toString());
    }

    /** Rows in columns as wide as their widest cell; the first column is set left, the others right. */
    Page table(List<List<String>> rows) {
        List<Integer> widths = new ArrayList<>();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                int width = clean(row.get(i)).length();
                if (i == widths.size()) {
                    widths.add(width);
                } else {
                    widths.set(i, Math.max(widths.get(i), width));
                }
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder("  ");
            for (int i = 0; i < row.size(); i++) {
                String cell = clean(row.get(i));
                String pad = " ".repeat(widths.get(i) - cell.length());
                line.append(i == 0 ? cell + pad : "  " + pad + cell);
            }
            line(line.toString());
        }
        return this;
    }

    /** Left-set text of at least this width. */
    static String left(String text, int width) {
        return text.length() >= width ? text : text + " ".repeat(width - text.length());
    }

    /** Right-set text of at least this width. */
    static String right(String text, int width) {
        return text.length() >= width ? text : " ".repeat(width - text.length()) + text;
    }

    /** Names come from files: nothing in them may move the cursor or change colours. */
    private static String clean(String text) {
        return text.replaceAll("\\p{Cntrl}", " ");
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
