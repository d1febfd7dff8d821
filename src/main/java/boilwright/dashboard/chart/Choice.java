package boilwright.dashboard.chart;

import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;

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
        double x = 0;
        double y = 0;
        for (Series one : data.series()) {
            x = Math.max(x, greatest(one.x()));
            y = Math.max(y, greatest(one.y()));
        }
        return new Choice(
                UnitTable.usual(x, data.x().dimension()),
                UnitTable.usual(y, data.y().dimension()),
                data.x().logarithmic(),
                data.y().logarithmic());
    }

    private static double greatest(double[] values) {
        double greatest = 0;
        for (double value : values) {
            if (Double.isFinite(value)) {
                greatest = Math.max(greatest, Math.abs(value));
            }
        }
        return greatest;
    }

    Scale xScale() {
        return Scale.of(xUnit, xLog);
    }

    Scale yScale() {
        return Scale.of(yUnit, yLog);
    }
}
