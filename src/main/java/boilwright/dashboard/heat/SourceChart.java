package boilwright.dashboard.heat;

import boilwright.choice.CompareAnswer;
import boilwright.choice.CompareQuestion;
import boilwright.choice.SourceRow;
import boilwright.choice.WallPoint;
import boilwright.dashboard.chart.Axis;
import boilwright.dashboard.chart.Band;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.chart.Spot;
import boilwright.dashboard.text.WindowText;
import boilwright.spread.Bands.MarginBand;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What sources deliver against the temperature of the boiler's face, and what the pump takes there. */
final class SourceChart {
    private SourceChart() {}

    /**
     * The chart.
     *
     * @param answer all sources
     * @param chosen the source that is looked at
     * @param band how far its heat margin spreads, when that is known
     */
    static ChartData of(CompareAnswer answer, SourceRow chosen, Optional<MarginBand> band) {
        Map<String, SourceRow> shown = new LinkedHashMap<>();
        answer.row(CompareQuestion.PRESENT).ifPresent(row -> shown.put(row.id(), row));
        answer.recommendedId().flatMap(answer::row).ifPresent(row -> shown.put(row.id(), row));
        shown.put(chosen.id(), chosen);
        List<Series> series = new ArrayList<>();
        List<Spot> spots = new ArrayList<>();
        series.add(curve(WindowText.say("heat.chart.need"), chosen.curves().need()));
        for (SourceRow row : shown.values()) {
            series.add(curve(row.title(), row.curves().delivered()));
            row.curves()
                    .crossing()
                    .ifPresent(point -> spots.add(new Spot(
                            WindowText.say("heat.chart.crossing", row.title()), point.wallK(), point.watts())));
        }
        WallPoint full = chosen.curves().fullJets();
        spots.add(new Spot(WindowText.say("heat.chart.full"), full.wallK(), full.watts()));
        ChartData data = ChartData.of(
                        WindowText.say("heat.chart.title"),
                        Axis.of(WindowText.say("heat.chart.wall"), Dimension.TEMPERATURE),
                        Axis.of(WindowText.say("heat.chart.heat"), Dimension.POWER)
                                .withZero(),
                        series)
                .withSpots(spots);
        return band.filter(b -> !b.ratio().isEmpty() && chosen.ratio() > 0)
                .map(b -> data.withBands(List.of(band(chosen, b))))
                .orElse(data);
    }

    /** What is delivered, scaled as the heat margin spreads. */
    private static Band band(SourceRow row, MarginBand spread) {
        double low = spread.ratio().low().orElseThrow() / row.ratio();
        double high = spread.ratio().high().orElse(row.ratio()) / row.ratio();
        Series nominal = curve("", row.curves().delivered());
        return new Band(
                WindowText.say("heat.chart.band", row.title()),
                nominal.x(),
                scaled(nominal.y(), low),
                scaled(nominal.y(), high));
    }

    private static double[] scaled(double[] values, double by) {
        double[] scaled = values.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= by;
        }
        return scaled;
    }

    private static Series curve(String title, List<WallPoint> points) {
        return new Series(
                title,
                points.stream().mapToDouble(WallPoint::wallK).toArray(),
                points.stream().mapToDouble(WallPoint::watts).toArray());
    }
}
