package boilwright.dashboard.chart;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;

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

    Lettering(Font font) {
        plain = Font.font(font.getFamily(), font.getSize());
        bold = Font.font(font.getFamily(), FontWeight.BOLD, font.getSize());
        probe.setFont(plain);
        probe.setText("Xg");
        lineHeight = Math.ceil(probe.getLayoutBounds().getHeight());
    }

    Font font(boolean heavy) {
        return heavy ? bold : plain;
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
            probe.setFont(font(key.bold()));
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
        return shorter.isEmpty() ? "" : shorter.strip() + LONGER;
    }
}
