package boilwright.report;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.water.CurvePair;
import boilwright.water.OperatingPoint;
import java.awt.BasicStroke;
import java.awt.Color;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/** What supply and circuit do against flow, and where they agree, as a picture. Drawn without a screen. */
public final class CurvesPicture {
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 800;
    private static final double L_PER_MIN = 60e3;
    private static final double KPA = 1e-3;
    private static final float[] DASHES = {9, 6};

    private CurvesPicture() {}

    /**
     * The picture as a PNG file's content.
     *
     * @param rig name of the rig, for the title
     * @param curves both curves
     * @param point where they agree
     */
    public static byte[] png(String rig, CurvePair curves, OperatingPoint point) {
        DefaultXYDataset data = new DefaultXYDataset();
        double[] flow = curves.flowM3PerS();
        data.addSeries("the supply gives", scaled(flow, curves.supplyHeadPa()));
        data.addSeries("the circuit takes", scaled(flow, curves.circuitDropPa()));
        data.addSeries("operating point", new double[][] {
            {point.volumeFlowM3PerS() * L_PER_MIN}, {point.circuitDropPa() * KPA}
        });
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setSeriesPaint(0, Color.BLACK);
        renderer.setSeriesStroke(0, new BasicStroke(2.5f));
        renderer.setSeriesPaint(1, Color.DARK_GRAY);
        renderer.setSeriesStroke(1, new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, DASHES, 0));
        renderer.setSeriesPaint(2, Color.BLACK);
        renderer.setSeriesLinesVisible(2, false);
        renderer.setSeriesShapesVisible(2, true);
        XYPlot plot = new XYPlot(data, LineStyle.axis("Flow, L/min"), LineStyle.axis("Pressure, kPa"), renderer);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(LineStyle.GRID);
        plot.setRangeGridlinePaint(LineStyle.GRID);
        XYTextAnnotation words = new XYTextAnnotation(
                "  " + QuantityWriter.writeAuto(point.volumeFlowM3PerS(), Dimension.VOLUME_FLOW) + " at "
                        + QuantityWriter.writeAuto(point.circuitDropPa(), Dimension.PRESSURE),
                point.volumeFlowM3PerS() * L_PER_MIN,
                point.circuitDropPa() * KPA);
        words.setFont(LineStyle.TEXT);
        words.setTextAnchor(TextAnchor.BOTTOM_LEFT);
        plot.addAnnotation(words);
        JFreeChart chart = new JFreeChart(rig + ": supply and circuit", LineStyle.TITLE, plot, true);
        chart.setBackgroundPaint(Color.WHITE);
        chart.getLegend().setItemFont(LineStyle.TEXT);
        return Png.of(chart, WIDTH, HEIGHT);
    }

    private static double[][] scaled(double[] flow, double[] pressure) {
        double[][] points = new double[2][flow.length];
        for (int i = 0; i < flow.length; i++) {
            points[0][i] = flow[i] * L_PER_MIN;
            points[1][i] = pressure[i] * KPA;
        }
        return points;
    }
}
