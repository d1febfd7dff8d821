package boilwright.report;

import boilwright.choice.CompareAnswer;
import boilwright.choice.HeatCurves;
import boilwright.choice.SizeAnswer;
import boilwright.choice.SourceRow;
import boilwright.choice.WallPoint;
import boilwright.rig.HeatSource;
import boilwright.rig.SourceKind;
import boilwright.units.PhysicalConstants;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.DefaultXYDataset;

/** What sources deliver and what a pump takes against the temperature of the boiler's wall. Drawn without a screen. */
public final class HeatPicture {
    private static final int WIDTH = 1400;
    private static final int HEIGHT = 900;
    /** The need lies between 0 and about twice that of full jets; sources that go far beyond are cut off above. */
    private static final double MOST_OVER_NEED = 2.2;

    private static final double DOT = 11;
    private static final int SAMPLE_PX = 44;
    private static final float WIDE = 3.2f;
    private static final float NARROW = 2.0f;

    private static final Color[] NEEDS = {Color.BLACK, new Color(0x7A7A7A), new Color(0xB8B8B8)};
    private static final Color FULL_JETS = new Color(0xB00020);

    private final HeatCurves first;
    private final DefaultXYDataset data = new DefaultXYDataset();
    private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    private final List<WallPoint> crossings = new ArrayList<>();
    private int needs;
    private int sources;

    /** @param first the curves whose point of full jets is marked, and by which the heat's axis is cut off */
    private HeatPicture(HeatCurves first) {
        this.first = first;
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(new Line2D.Double(-SAMPLE_PX / 2.0, 0, SAMPLE_PX / 2.0, 0));
    }

    /** One sizing: its source, its pump, where they meet and where every jet is full. */
    public static byte[] png(String rig, SizeAnswer answer) {
        HeatPicture picture = new HeatPicture(answer.curves());
        picture.need("the pump takes", answer.curves().need());
        picture.source("the source delivers at full power", answer.curves());
        return picture.draw(rig + ": source and pump");
    }

    /**
     * The rig's own source, the one recommended, and of each kind of source and contact the one that delivers most: more
     * curves than these could not be told apart.
     */
    public static byte[] png(String rig, CompareAnswer answer) {
        Map<String, SourceRow> chosen = new LinkedHashMap<>();
        SourceRow present = answer.rows().get(0);
        chosen.put(group(present) + " " + present.id(), present);
        answer.recommendedId()
                .flatMap(answer::row)
                .filter(row -> row != present)
                .ifPresent(row -> chosen.put(group(row), row));
        String recommended = answer.recommendedId().orElse("");
        for (SourceRow row : answer.rows()) {
            if (row != present) {
                chosen.merge(group(row), row, (a, b) -> a.id().equals(recommended) || a.ratio() >= b.ratio() ? a : b);
            }
        }
        HeatPicture picture = new HeatPicture(present.curves());
        Set<SourceRow.Way> ways = new LinkedHashSet<>();
        for (SourceRow row : chosen.values()) {
            if (ways.add(row.way())) {
                picture.need("the pump takes" + words(row.way()), row.curves().need());
            }
        }
        for (SourceRow row : chosen.values()) {
            picture.source(row.title() + (row.id().equals(recommended) ? " (recommended)" : ""), row.curves());
        }
        return picture.draw(rig + ": sources and pump");
    }

    private static String words(SourceRow.Way way) {
        return switch (way) {
            case FLAME -> ", over a flame";
            case IN_THE_OIL -> ", heated in the oil";
            case THROUGH_THE_WALL -> ", heated from outside";
        };
    }

    private static String group(SourceRow row) {
        HeatSource source = row.rig().heatSource();
        String kind = SourceKind.of(source).id();
        if (source instanceof HeatSource.ContactPlate plate) {
            return kind + plate.contact();
        }
        return source instanceof HeatSource.Induction i ? kind + i.susceptor() + i.contact() : kind;
    }

    private void need(String name, List<WallPoint> points) {
        line(name, points, NEEDS[needs % NEEDS.length], new BasicStroke(WIDE));
        needs++;
    }

    private void source(String name, HeatCurves curves) {
        line(name, curves.delivered(), LineStyle.colour(sources), LineStyle.stroke(sources + 1, NARROW));
        sources++;
        curves.crossing().ifPresent(crossings::add);
    }

    private void line(String name, List<WallPoint> points, Color colour, BasicStroke stroke) {
        int index = data.getSeriesCount();
        data.addSeries(name, points(points));
        renderer.setSeriesPaint(index, colour);
        renderer.setSeriesStroke(index, stroke);
    }

    private byte[] draw(String title) {
        dots("at rest at full power", crossings, Color.BLACK);
        dots("every jet just full", List.of(first.fullJets()), FULL_JETS);
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
        legend.setPosition(RectangleEdge.BOTTOM);
        chart.addSubtitle(legend);
        return bytes(chart);
    }

    private static byte[] bytes(JFreeChart chart) {
        return Png.of(chart, WIDTH, HEIGHT);
    }

    private void dots(String name, List<WallPoint> points, Color colour) {
        int index = data.getSeriesCount();
        data.addSeries(name, points(points));
        renderer.setSeriesPaint(index, colour);
        renderer.setSeriesLinesVisible(index, false);
        renderer.setSeriesShapesVisible(index, true);
        renderer.setSeriesShape(index, new Ellipse2D.Double(-DOT / 2, -DOT / 2, DOT, DOT));
    }

    private static double[][] points(List<WallPoint> curve) {
        double[][] points = new double[2][curve.size()];
        for (int i = 0; i < curve.size(); i++) {
            points[0][i] = curve.get(i).wallK() - PhysicalConstants.ZERO_CELSIUS_K;
            points[1][i] = curve.get(i).watts();
        }
        return points;
    }
}
