package boilwright.report;

import boilwright.choice.HeatCurves;
import boilwright.choice.SizeAnswer;
import boilwright.choice.WallPoint;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.data.xy.DefaultXYDataset;

/** What sources deliver and what a pump takes against the temperature of the boiler's wall. Drawn without a screen. */
public final class HeatPicture {
    private static final int WIDTH = 1400;
    private static final int HEIGHT = 900;
    private static final double ZERO_CELSIUS = 273.15;
    /** The need lies between 0 and about twice that of full jets; sources that go far beyond are cut off above. */
    private static final double MOST_OVER_NEED = 2.2;

    private static final double DOT = 11;
    private static final float WIDE = 3.2f;
    private static final float NARROW = 2.0f;

    private HeatPicture() {}

    /** One sizing: its source, its pump, where they meet and where every jet is full. */
    public static byte[] png(String rig, SizeAnswer answer) {
        Map<String, HeatCurves> one = new LinkedHashMap<>();
        one.put("the source delivers at full power", answer.curves());
        return png(rig + ": source and pump", one);
    }

    /**
     * Several sources on one pump, as a PNG file's content.
     *
     * @param title the title
     * @param sources curves by the name of the source, the pump's need being that of the first
     */
    static byte[] png(String title, Map<String, HeatCurves> sources) {
        HeatCurves first = sources.values().iterator().next();
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        data.addSeries("the pump takes", points(first.need()));
        look(renderer, 0, Color.BLACK, new BasicStroke(WIDE));
        int index = 1;
        List<WallPoint> crossings = new ArrayList<>();
        for (Map.Entry<String, HeatCurves> source : sources.entrySet()) {
            data.addSeries(source.getKey(), points(source.getValue().delivered()));
            look(renderer, index, LineStyle.colour(index), LineStyle.stroke(index, NARROW));
            source.getValue().crossing().ifPresent(crossings::add);
            index++;
        }
        dots(data, renderer, index++, "at rest at full power", crossings, Color.BLACK);
        dots(data, renderer, index, "every jet just full", List.of(first.fullJets()), new Color(0xB00020));
        NumberAxis wall = LineStyle.axis("Outer face of the boiler's heated wall, degC");
        NumberAxis heat = LineStyle.axis("Heat into the boiler, W");
        heat.setRange(0, MOST_OVER_NEED * first.fullJets().watts());
        XYPlot plot = new XYPlot(data, wall, heat, renderer);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(LineStyle.GRID);
        plot.setRangeGridlinePaint(LineStyle.GRID);
        JFreeChart chart = new JFreeChart(title, LineStyle.TITLE, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        LegendTitle legend = LineStyle.legend(plot);
        chart.addSubtitle(legend);
        return bytes(chart);
    }

    private static byte[] bytes(JFreeChart chart) {
        BufferedImage image = chart.createBufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB, null);
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void look(XYLineAndShapeRenderer renderer, int index, Color colour, BasicStroke stroke) {
        renderer.setSeriesPaint(index, colour);
        renderer.setSeriesStroke(index, stroke);
    }

    private static void dots(
            DefaultXYDataset data,
            XYLineAndShapeRenderer renderer,
            int index,
            String name,
            List<WallPoint> points,
            Color colour) {
        data.addSeries(name, points(points));
        renderer.setSeriesPaint(index, colour);
        renderer.setSeriesLinesVisible(index, false);
        renderer.setSeriesShapesVisible(index, true);
        renderer.setSeriesShape(index, new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT));
    }

    private static double[][] points(List<WallPoint> curve) {
        double[][] points = new double[2][curve.size()];
        for (int i = 0; i < curve.size(); i++) {
            points[0][i] = curve.get(i).wallK() - ZERO_CELSIUS;
            points[1][i] = curve.get(i).watts();
        }
        return points;
    }
}
