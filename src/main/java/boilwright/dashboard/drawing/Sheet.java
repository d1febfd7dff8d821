package boilwright.dashboard.drawing;

import boilwright.dashboard.model.TemperatureScale;
import boilwright.dashboard.text.Lettering;
import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/** The paper: where metres become pixels, and the few ways in which a line is drawn. */
final class Sheet {
    /** A wall is never drawn thinner, or its colour would not be seen, px. */
    private static final double LEAST_WALL = 4;

    final GraphicsContext g;
    final Palette palette;
    final TemperatureScale scale;
    final Lettering lettering;
    /** Width of a thin line, px. */
    final double line;

    private final double axisX;
    private final double footY;
    private final double pxPerM;

    Sheet(
            GraphicsContext g,
            Palette palette,
            TemperatureScale scale,
            Lettering lettering,
            double axisX,
            double footY,
            double pxPerM) {
        this.g = g;
        this.palette = palette;
        this.scale = scale;
        this.lettering = lettering;
        this.axisX = axisX;
        this.footY = footY;
        this.pxPerM = pxPerM;
        line = Math.max(1, lettering.size() / 13);
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.setLineCap(StrokeLineCap.BUTT);
    }

    /** Where a radius lies to the right of the axis (negative: to the left), px. */
    double x(double radiusM) {
        return axisX + radiusM * pxPerM;
    }

    /** Where a height over the column's foot lies, px. */
    double y(double heightM) {
        return footY - heightM * pxPerM;
    }

    /** A length, px. */
    double px(double metres) {
        return metres * pxPerM;
    }

    /** A number of pixels, m. */
    double metres(double px) {
        return px / pxPerM;
    }

    /** How thick a wall is drawn, m. */
    double wall(double thicknessM) {
        return Math.max(thicknessM, metres(LEAST_WALL * line));
    }

    Color heat(double temperatureK) {
        return scale.at(temperatureK);
    }

    void stroke(Paint paint, double width) {
        g.setStroke(paint);
        g.setLineWidth(width);
        g.setLineDashes();
    }

    /** A box around the axis between two radii of one side; side is 1 or -1. */
    void box(int side, double innerM, double outerM, double topM, double bottomM) {
        double left = x(side > 0 ? innerM : -outerM);
        g.fillRect(left, y(topM), px(outerM - innerM), px(topM - bottomM));
    }

    /** A box across the axis. */
    void across(double radiusM, double topM, double bottomM) {
        g.fillRect(x(-radiusM), y(topM), px(2 * radiusM), px(topM - bottomM));
    }

    /** An upright line at a radius of one side. */
    void upright(int side, double radiusM, double topM, double bottomM) {
        g.strokeLine(x(side * radiusM), y(topM), x(side * radiusM), y(bottomM));
    }

    /** A level line on one side. */
    void level(int side, double fromM, double toM, double heightM) {
        g.strokeLine(x(side * fromM), y(heightM), x(side * toM), y(heightM));
    }

    /** Begins a path along points (radius, height) of the right side and back along the left. */
    void mirrored(List<double[]> points) {
        g.beginPath();
        for (int i = 0; i < points.size(); i++) {
            step(i == 0, points.get(i)[0], points.get(i)[1]);
        }
        for (int i = points.size() - 1; i >= 0; i--) {
            step(false, -points.get(i)[0], points.get(i)[1]);
        }
    }

    /** Begins a path along points of one side. */
    void path(int side, List<double[]> points) {
        g.beginPath();
        for (int i = 0; i < points.size(); i++) {
            step(i == 0, side * points.get(i)[0], points.get(i)[1]);
        }
    }

    private void step(boolean first, double radius, double height) {
        if (first) {
            g.moveTo(x(radius), y(height));
        } else {
            g.lineTo(x(radius), y(height));
        }
    }

    /**
     * Strokes the path begun as sheet metal or glass of its own temperature: a coloured line between two thin ones.
     *
     * @param width of it with its edges, px
     */
    void shell(Color color, double width, boolean glass) {
        g.setLineCap(StrokeLineCap.ROUND);
        stroke(glass ? Palette.thin(palette.ink(), 0.75) : palette.ink(), width + 1.2 * line);
        g.stroke();
        stroke(color, Math.max(line, width - 0.6 * line));
        g.stroke();
        g.setLineCap(StrokeLineCap.BUTT);
    }
}
