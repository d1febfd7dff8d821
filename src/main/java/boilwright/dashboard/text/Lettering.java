package boilwright.dashboard.text;

import java.util.HashMap;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Two weights of one type, measured. Measuring is slow, so widths are kept. */
public final class Lettering {
    private static final int MOST_KEPT = 4000;
    private static final String LONGER = "...";

    private record Key(String text, boolean bold) {}

    private final Font plain;
    private final Font bold;
    private final double lineHeight;
    private final Map<Key, Double> widths = new HashMap<>();
    private final Text probe = new Text();

    /** Letters of this font, whatever its own weight. */
    public Lettering(Font font) {
        this(font.getFamily(), font.getSize());
    }

    /**
     * Letters of a family.
     *
     * @param family name of the family
     * @param size size, px
     */
    public Lettering(String family, double size) {
        plain = Font.font(family, size);
        bold = Font.font(family, FontWeight.BOLD, size);
        probe.setFont(plain);
        probe.setText("Xg");
        lineHeight = Math.ceil(probe.getLayoutBounds().getHeight());
    }

    /** The font of a weight. */
    public Font font(boolean heavy) {
        return heavy ? bold : plain;
    }

    /** Size, px. */
    public double size() {
        return plain.getSize();
    }

    /** Height of a line, px. */
    public double lineHeight() {
        return lineHeight;
    }

    /** Width of a text, px. */
    public double width(String text, boolean heavy) {
        if (widths.size() > MOST_KEPT) {
            widths.clear();
        }
        return widths.computeIfAbsent(new Key(text, heavy), key -> {
            probe.setFont(font(key.bold()));
            probe.setText(key.text());
            return probe.getLayoutBounds().getWidth();
        });
    }

    /** The text, with its end left out where it would be wider. */
    public String fitted(String text, boolean heavy, double most) {
        if (width(text, heavy) <= most) {
            return text;
        }
        String shorter = text;
        while (!shorter.isEmpty() && width(shorter.strip() + LONGER, heavy) > most) {
            shorter = shorter.substring(0, shorter.length() - 1);
        }
        return shorter.isEmpty() ? "" : shorter.strip() + LONGER;
    }

    /** Writes one line with its middle at a height. */
    public void write(
            GraphicsContext g, String text, double x, double middleY, boolean heavy, Color color, TextAlignment to) {
        g.setFont(heavy ? bold : plain);
        g.setFill(color);
        g.setTextAlign(to);
        g.setTextBaseline(VPos.CENTER);
        g.fillText(text, x, middleY);
    }
}
