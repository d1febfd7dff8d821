package boilwright.report;

import boilwright.rise.RiseAnswer;
import boilwright.rise.RiseCurve;
import boilwright.rise.RiseRecord;
import boilwright.rise.Verdict;
import boilwright.units.UnitSpelling;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * A record of a rising pressure with the curve through it, in the units in which it was written, as a picture; of a mixture the
 * two parts as well. Drawn without a screen.
 */
public final class RisePicture {
    /** Width of the picture, pixels. */
    public static final int WIDTH = 1200;
    /** Height of the picture, pixels. */
    public static final int HEIGHT = 800;

    private static final int POINTS = 300;
    private static final double DOT = 7;
    private static final double SAMPLE_PX = 50;
    private static final float[] LONG_DASHES = {14, 6};
    private static final float[] DOTS = {3, 5};

    private RisePicture() {}

    /**
     * The picture as a PNG file's content.
     *
     * @param name name of the record, for the title
     */
    public static byte[] png(String name, RiseAnswer answer) {
        UnitSpelling time = answer.record().timeUnit();
        UnitSpelling pressure = answer.record().pressureUnit();
        RiseAnswer.Line line = answer.line();
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(new Line2D.Double(-SAMPLE_PX / 2, 0, SAMPLE_PX / 2, 0));
        data.addSeries("readings", readings(answer));
        renderer.setSeriesPaint(0, Color.BLACK);
        renderer.setSeriesLinesVisible(0, false);
        renderer.setSeriesShapesVisible(0, true);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT));
        renderer.setSeriesShapesFilled(0, false);
        data.addSeries(title(answer), points(answer, line::pressureAt));
        style(renderer, 1, new Color(0x0072B2), null);
        if (line.curve() == RiseCurve.MIXED) {
            data.addSeries("the leak alone", points(answer, line::straightAt));
            style(renderer, 2, new Color(0xD55E00), LONG_DASHES);
            data.addSeries("the surfaces alone", points(answer, line::bentAt));
            style(renderer, 3, new Color(0x009E73), DOTS);
        }
        XYPlot plot = new XYPlot(
                data, LineStyle.axis("Time, " + time.text()), LineStyle.axis("Pressure, " + pressure.text()), renderer);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(LineStyle.GRID);
        plot.setRangeGridlinePaint(LineStyle.GRID);
        JFreeChart chart = new JFreeChart(name, LineStyle.TITLE, plot, true);
        TextTitle sentence = new TextTitle(answer.sentence(), LineStyle.TEXT);
        sentence.setPadding(4, 40, 8, 40);
        chart.addSubtitle(0, sentence);
        chart.setBackgroundPaint(Color.WHITE);
        chart.setPadding(new RectangleInsets(8, 8, 8, 24));
        chart.getLegend().setItemFont(LineStyle.TEXT);
        return png(chart);
    }

    private static void style(XYLineAndShapeRenderer renderer, int series, Paint paint, float[] dashes) {
        renderer.setSeriesPaint(series, paint);
        renderer.setSeriesStroke(
                series, new BasicStroke(2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0));
    }

    private static double[][] readings(RiseAnswer answer) {
        List<RiseRecord.Reading> readings = answer.record().readings();
        double[][] points = new double[2][readings.size()];
        for (int i = 0; i < readings.size(); i++) {
            points[0][i] = answer.record().timeUnit().fromSi(readings.get(i).timeS());
            points[1][i] = answer.record().pressureUnit().fromSi(readings.get(i).pressurePa());
        }
        return points;
    }

    private static double[][] points(RiseAnswer answer, DoubleUnaryOperator pressurePa) {
        double[][] points = new double[2][POINTS];
        for (int i = 0; i < POINTS; i++) {
            double t = answer.record().startS() + answer.record().spanS() * i / (POINTS - 1);
            points[0][i] = answer.record().timeUnit().fromSi(t);
            points[1][i] = answer.record().pressureUnit().fromSi(pressurePa.applyAsDouble(t));
        }
        return points;
    }

    private static String title(RiseAnswer answer) {
        if (answer.verdict() == Verdict.UNDECIDED) {
            return "the closest curve";
        }
        return switch (answer.line().curve()) {
            case LEVEL -> "no rise";
            case LEAK -> "a leak";
            case SURFACE_GAS, POWER_LAW -> "gas from the surfaces";
            case MIXED -> "a leak and gas from the surfaces";
        };
    }

    private static byte[] png(JFreeChart chart) {
        return Png.of(chart, WIDTH, HEIGHT);
    }
}
