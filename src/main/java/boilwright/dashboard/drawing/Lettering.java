package boilwright.dashboard.drawing;

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
final class Lettering {
    private static final int MOST_KEPT = 4000;
    private static final String LONGER = "...";

    private record Key(String text, boolean bold) {}

    private final Font plain;
    private final Font bold;
    private final double lineHeight;
    private final Map<Key, Double> widths = new HashMap<>();
    private final Text probe = new Text();

    Lettering(String family, double size) {
        plain = Font.font(family, size);
        bold = Font.font(family, FontWeight.BOLD, size);
        probe.setText("Xg");
        probe.setFont(plain);
        lineHeight = Math.ceil(probe.getLayoutBounds().getHeight());
    }

    double size() {
        return plain.getSize();
    }

    double lineHeight() {
        return lineHeight;
    }

    double width(String text, boolean heavy) {
        if (widths.size() > MOST_KEPT) {
            widths.clear();
        }
        return widths.computeIfAbsent(new Key(text, heavy), key -> {
            probe.setFont(key.bold() ? bold : plain);
            probe.setText(key.text());
            return probe.getLayoutBounds().getWidth();
        });
    }

    /** The text, with its end left out where it would be wider. */
    String fitted(String text, boolean heavy, double most) {
        if (width(text, heavy) <= most) {
            return text;
        }
        String shorter = text;
        while (!shorter.isEmpty() && width(shorter.strip() + LONGER, heavy) > most) {
            shorter = shorter.substring(0, shorter.length() - 1);
        }
        return shorter.strip() + LONGER;
    }

    /** Writes one line with its middle at a height. */
    void write(GraphicsContext g, String text, double x, double middleY, boolean heavy, Color color, TextAlignment to) {
        g.setFont(heavy ? bold : plain);
        g.setFill(color);
        g.setTextAlign(to);
        g.setTextBaseline(VPos.CENTER);
        g.fillText(text, x, middleY);
    }
}
