package boilwright.dashboard.chart;

import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.List;

/**
 * How a person chose to read a chart.
 *
 * @param xUnit unit to the right
 * @param yUnit unit upwards
 * @param xLog whether the axis to the right is logarithmic
 * @param yLog whether the axis upwards is logarithmic
 */
record Choice(UnitSpelling xUnit, UnitSpelling yUnit, boolean xLog, boolean yLog) {
    /** What suits the data: units in which people read values of that size. */
    static Choice suiting(ChartData data) {
        return new Choice(
                unit(data.x(), data.series().stream().map(Series::x).toList()),
                unit(data.y(), data.series().stream().map(Series::y).toList()),
                data.x().logarithmic(),
                data.y().logarithmic());
    }

    private static UnitSpelling unit(Axis axis, List<double[]> values) {
        return axis.unit().orElseGet(() -> UnitTable.usual(size(axis, values), axis.dimension()));
    }

    /** The size by which a unit is chosen: the largest value, on a logarithmic axis the middle one. */
    private static double size(Axis axis, List<double[]> values) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = 0;
        for (double[] some : values) {
            for (double value : some) {
                double size = Math.abs(value);
                if (size > 0 && Double.isFinite(size)) {
                    least = Math.min(least, size);
                    greatest = Math.max(greatest, size);
                }
            }
        }
        return axis.logarithmic() && greatest > 0 ? Math.sqrt(least) * Math.sqrt(greatest) : greatest;
    }

    Scale xScale() {
        return Scale.of(xUnit, xLog);
    }

    Scale yScale() {
        return Scale.of(yUnit, yLog);
    }
}
