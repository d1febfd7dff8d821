package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;

/** A canvas of the window. */
final class CanvasSurface implements Surface {
    private final GraphicsContext g;
    private final Lettering lettering;

    CanvasSurface(GraphicsContext g, Lettering lettering) {
        this.g = g;
        this.lettering = lettering;
        g.setLineCap(StrokeLineCap.BUTT);
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.setTextBaseline(VPos.CENTER);
    }

    @Override
    public Lettering lettering() {
        return lettering;
    }

    @Override
    public void begin(String title) {
        g.save();
    }

    @Override
    public void end() {
        g.restore();
    }

    @Override
    public void text(String text, double x, double middleY, Align align, boolean bold, Color color) {
        g.setFont(lettering.font(bold));
        g.setFill(color);
        g.setTextAlign(
                switch (align) {
                    case LEFT -> TextAlignment.LEFT;
                    case CENTER -> TextAlignment.CENTER;
                    case RIGHT -> TextAlignment.RIGHT;
                });
        g.fillText(text, x, middleY);
    }

    @Override
    public void line(double[] xs, double[] ys, int count, Surface.Pen pen) {
        g.setStroke(pen.color());
        g.setLineWidth(pen.width());
        g.setLineDashes(pen.dash());
        g.strokePolyline(xs, ys, count);
    }

    @Override
    public void fill(double[] xs, double[] ys, int count, Color color) {
        g.setFill(color);
        g.fillPolygon(xs, ys, count);
    }
}
