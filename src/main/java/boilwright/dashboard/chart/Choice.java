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
        double x =
                data.series().stream().mapToDouble(s -> greatest(s.x())).max().orElse(0);
        double y =
                data.series().stream().mapToDouble(s -> greatest(s.y())).max().orElse(0);
        return new Choice(
                data.x().unit().orElseGet(() -> UnitTable.usual(x, data.x().dimension())),
                data.y().unit().orElseGet(() -> UnitTable.usual(y, data.y().dimension())),
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
