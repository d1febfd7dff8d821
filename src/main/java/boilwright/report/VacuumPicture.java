package boilwright.report;

import boilwright.vacuum.VacuumTimeline;
import java.awt.BasicStroke;
import java.awt.Color;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogarithmicAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.DefaultXYDataset;

/** Pressures of the gas side against time as a picture. Drawn without a screen. */
public final class VacuumPicture {
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 800;
    private static final double MINUTE_S = 60;
    private static final float[][] DASHES = {null, {9, 6}, {2, 5}};

    private VacuumPicture() {}

    /**
     * The picture as a PNG file's content.
     *
     * @param rig name of the rig, for the title
     * @param line the pressures
     */
    public static byte[] png(String rig, VacuumTimeline line) {
        DefaultXYDataset data = new DefaultXYDataset();
        data.addSeries("gauge", points(line.timeS(), line.gaugePa()));
        data.addSeries("pump inlet", points(line.timeS(), line.inletPa()));
        data.addSeries("foreline", points(line.timeS(), line.forelinePa()));
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        // else dashes begin anew at every point
        renderer.setDrawSeriesLineAsPath(true);
        for (int i = 0; i < DASHES.length; i++) {
            renderer.setSeriesPaint(i, i == 0 ? Color.BLACK : Color.DARK_GRAY);
            renderer.setSeriesStroke(
                    i, new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, DASHES[i], 0));
        }
        LogarithmicAxis pressure = new LogarithmicAxis("Pressure, Pa");
        pressure.setLabelFont(LineStyle.TEXT);
        pressure.setTickLabelFont(LineStyle.TEXT);
        pressure.setExpTickLabelsFlag(true);
        XYPlot plot = new XYPlot(data, LineStyle.axis("Minutes after the foreline is pumped down"), pressure, renderer);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(LineStyle.GRID);
        plot.setRangeGridlinePaint(LineStyle.GRID);
        JFreeChart chart = new JFreeChart(rig + ": pressures", LineStyle.TITLE, plot, true);
        chart.setBackgroundPaint(Color.WHITE);
        chart.getLegend().setItemFont(LineStyle.TEXT);
        return Png.of(chart, WIDTH, HEIGHT);
    }

    private static double[][] points(double[] time, double[] pressure) {
        double[][] points = new double[2][time.length];
        for (int i = 0; i < time.length; i++) {
            points[0][i] = time[i] / MINUTE_S;
            points[1][i] = Math.max(pressure[i], Double.MIN_NORMAL);
        }
        return points;
    }
}
