package boilwright.dashboard.heat;

import boilwright.choice.PowerWindow;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;

/** The powers between full jets and the first limit as a strip, with the power that is set now as a mark. */
final class PowerStrip extends Region {
    private static final double HEIGHT_EM = 5.4;
    /** Room at the right beyond the highest power shown. */
    private static final double BEYOND = 1.12;

    private final Canvas canvas = new Canvas();
    private final Label lettering = new Label("m");
    private PowerWindow window;

    PowerStrip() {
        setId("power-strip");
        lettering.setVisible(false);
        lettering.setManaged(false);
        lettering.textFillProperty().addListener((property, before, now) -> requestLayout());
        setFocusTraversable(true);
        getStyleClass().add("power-strip");
        getChildren().addAll(canvas, lettering);
    }

    void show(PowerWindow now) {
        window = now;
        setAccessibleText(now.sentence() + " " + WindowText.say("heat.strip.present", watts(now.presentW())));
        requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        return HEIGHT_EM * lettering.getFont().getSize();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(snapSizeX(getWidth()));
        canvas.setHeight(snapSizeY(getHeight()));
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        if (window == null || getWidth() < 50) {
            return;
        }
        Color ink = (Color) lettering.getTextFill();
        double em = lettering.getFont().getSize();
        double top = 1.7 * em;
        double deep = 1.1 * em;
        double most = BEYOND
                * Math.max(
                        window.presentW(),
                        Math.max(window.lowW().orElse(0), window.highW().orElse(0)));
        double scale = getWidth() / most;
        g.setFont(lettering.getFont());
        g.setStroke(ink);
        g.setFill(ink.deriveColor(0, 1, 1, 0.06));
        g.fillRect(0, top, getWidth(), deep);
        if (window.isOpen()) {
            double low = scale * window.lowW().getAsDouble();
            double high = scale * window.highW().orElse(most);
            g.setFill(ink.deriveColor(0, 1, 1, 0.35));
            g.fillRect(low, top, high - low, deep);
            below(
                    g,
                    ink,
                    low,
                    top + deep,
                    WindowText.say("heat.strip.low", watts(window.lowW().getAsDouble())));
            if (window.highW().isPresent()) {
                String text =
                        WindowText.say("heat.strip.high", watts(window.highW().getAsDouble()));
                below(g, ink, high, top + 2.1 * em, text);
            }
        }
        g.strokeRect(0.5, top, getWidth() - 1, deep);
        double now = scale * window.presentW();
        g.setFill(ink);
        g.fillPolygon(new double[] {now, now - 6, now + 6}, new double[] {top + deep, top, top}, 3);
        g.setTextBaseline(VPos.BOTTOM);
        g.setTextAlign(side(now));
        g.fillText(WindowText.say("heat.strip.present", watts(window.presentW())), now, top - 2);
    }

    private void below(GraphicsContext g, Color ink, double x, double y, String text) {
        g.setFill(ink);
        g.setTextBaseline(VPos.TOP);
        g.setTextAlign(side(x));
        g.fillText(text, x, y + 2);
    }

    private TextAlignment side(double x) {
        if (x < getWidth() * 0.3) {
            return TextAlignment.LEFT;
        }
        return x > getWidth() * 0.7 ? TextAlignment.RIGHT : TextAlignment.CENTER;
    }

    private static String watts(double watts) {
        return QuantityWriter.writeAuto(watts, Dimension.POWER);
    }
}
