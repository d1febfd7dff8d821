package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import java.util.Locale;
import javafx.scene.paint.Color;

/**
 * A drawing as SVG 1.1, written as text with nothing but lines, filled shapes and words in it. The words stay words, so that they
 * can be searched and read aloud.
 */
final class SvgSurface implements Surface {
    /** From the middle of a line of text down to its foot, in sizes of the type. */
    private static final double MIDDLE_TO_FOOT = 0.36;

    private final StringBuilder out = new StringBuilder();
    private final Lettering lettering;

    /**
     * @param title what the drawing shows
     * @param description the same in whole sentences
     */
    SvgSurface(String title, String description, double width, double height, Lettering lettering) {
        this.lettering = lettering;
        out.append(
                "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\"");
        attribute("width", number(width));
        attribute("height", number(height));
        attribute("viewBox", "0 0 " + number(width) + " " + number(height));
        attribute("font-family", escaped(lettering.font(false).getFamily()) + ", sans-serif");
        attribute("font-size", number(lettering.size()));
        attribute("role", "img");
        out.append(">\n<title>").append(escaped(title)).append("</title>\n<desc>");
        out.append(escaped(description)).append("</desc>\n");
    }

    /** The whole file. */
    String finished() {
        return out + "</svg>\n";
    }

    @Override
    public Lettering lettering() {
        return lettering;
    }

    @Override
    public void begin(String title) {
        out.append("<g><title>").append(escaped(title)).append("</title>\n");
    }

    @Override
    public void end() {
        out.append("</g>\n");
    }

    @Override
    public void text(String text, double x, double middleY, Align align, boolean bold, Color color) {
        if (text.isEmpty()) {
            return;
        }
        out.append("<text");
        attribute("x", number(x));
        attribute("y", number(middleY + MIDDLE_TO_FOOT * lettering.size()));
        if (align != Align.LEFT) {
            attribute("text-anchor", align == Align.CENTER ? "middle" : "end");
        }
        if (bold) {
            attribute("font-weight", "bold");
        }
        paint("fill", color);
        out.append('>').append(escaped(text)).append("</text>\n");
    }

    @Override
    public void line(double[] xs, double[] ys, int count, Surface.Pen pen) {
        out.append("<polyline fill=\"none\" stroke-linejoin=\"round\"");
        paint("stroke", pen.color());
        attribute("stroke-width", number(pen.width()));
        if (pen.dash().length > 0) {
            StringBuilder dash = new StringBuilder();
            for (double length : pen.dash()) {
                dash.append(dash.isEmpty() ? "" : " ").append(number(length));
            }
            attribute("stroke-dasharray", dash.toString());
        }
        points(xs, ys, count);
    }

    @Override
    public void fill(double[] xs, double[] ys, int count, Color color) {
        out.append("<polygon");
        paint("fill", color);
        points(xs, ys, count);
    }

    private void points(double[] xs, double[] ys, int count) {
        out.append(" points=\"");
        for (int i = 0; i < count; i++) {
            out.append(i == 0 ? "" : " ").append(number(xs[i])).append(',').append(number(ys[i]));
        }
        out.append("\"/>\n");
    }

    private void paint(String name, Color color) {
        attribute(
                name,
                String.format(
                        Locale.ROOT,
                        "#%02x%02x%02x",
                        Math.round(255 * color.getRed()),
                        Math.round(255 * color.getGreen()),
                        Math.round(255 * color.getBlue())));
        if (color.getOpacity() < 1) {
            attribute(name + "-opacity", number(color.getOpacity()));
        }
    }

    private void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"").append(value).append('"');
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceFirst("\\.?0+$", "");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
