package boilwright.dashboard.drawing;

import boilwright.dashboard.text.Lettering;
import boilwright.units.PhysicalConstants;
import javafx.scene.text.TextAlignment;

/** The foot of the sheet: the scale of lengths and the scale of temperatures. */
final class SheetEdge {
    private static final double[] STEPS_M = {0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10};

    private SheetEdge() {}

    /** The longest round length that is drawn no longer than this, m. */
    static double roundLength(double mostM) {
        double best = STEPS_M[0];
        for (double step : STEPS_M) {
            if (step <= mostM) {
                best = step;
            }
        }
        return best;
    }

    /** "50 mm", or "10 cm" from a decimetre up. */
    static String words(double metres) {
        return metres < 0.0995 ? Math.round(metres * 1000) + " mm" : Math.round(metres * 100) + " cm";
    }

    /** Bar of a round length with its left end at x. */
    static void scaleBar(Sheet s, double x, double y, double mostWidth) {
        double length = roundLength(s.metres(mostWidth));
        double w = s.px(length);
        double h = 4 * s.line;
        s.stroke(s.palette.ink(), s.line);
        s.g.setFill(s.palette.ink());
        s.g.fillRect(x, y - h / 2, w / 2, h);
        s.g.strokeRect(x, y - h / 2, w, h);
        s.lettering.write(
                s.g, words(length), x + w + 0.5 * s.lettering.size(), y, false, s.palette.muted(), TextAlignment.LEFT);
    }

    /** The temperature scale between two places, with round figures under it. */
    static void legend(Sheet s, double x, double y, double width) {
        legend(s.g, s.palette, s.scale, s.lettering, x, y, width);
    }

    static void legend(
            javafx.scene.canvas.GraphicsContext g,
            Palette palette,
            boilwright.dashboard.model.TemperatureScale scale,
            Lettering lettering,
            double x,
            double y,
            double width) {
        double h = 0.7 * lettering.size();
        double line = Math.max(1, lettering.size() / 13);
        int strips = (int) Math.max(24, Math.min(160, width / 2));
        double span = scale.highK() - scale.lowK();
        for (int i = 0; i < strips; i++) {
            g.setFill(scale.at(scale.lowK() + span * (i + 0.5) / strips));
            g.fillRect(x + width * i / strips, y, width / strips + 0.6, h);
        }
        g.setStroke(palette.ink());
        g.setLineWidth(line);
        g.strokeRect(x, y, width, h);
        double low = scale.lowK() - PhysicalConstants.ZERO_CELSIUS_K;
        double high = scale.highK() - PhysicalConstants.ZERO_CELSIUS_K;
        lettering.write(g, "degC", x - 0.4 * lettering.size(), y + h / 2, false, palette.muted(), TextAlignment.RIGHT);
        double labelWidth = lettering.width("888", false);
        double step = 50;
        while (width * step / span < 1.8 * labelWidth) {
            step *= 2;
        }
        double textY = y + h + 0.75 * lettering.lineHeight();
        double endWidth = lettering.width(Math.round(high) + "+", false);
        for (double c = Math.ceil(low / step) * step; c < high - 1e-6; c += step) {
            double at = x + width * (c - low) / (high - low);
            if (at + 0.8 * labelWidth < x + width - endWidth) {
                g.strokeLine(at, y + h, at, y + h + 3 * line);
                lettering.write(
                        g, Long.toString(Math.round(c)), at, textY, false, palette.muted(), TextAlignment.CENTER);
            }
        }
        g.strokeLine(x + width, y + h, x + width, y + h + 3 * line);
        lettering.write(g, Math.round(high) + "+", x + width, textY, false, palette.muted(), TextAlignment.RIGHT);
    }
}
