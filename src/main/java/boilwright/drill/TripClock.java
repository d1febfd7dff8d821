package boilwright.drill;

import boilwright.rig.Protection.TripKind;
import boilwright.thermal.DrillRun;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When a trip would act in a drill. Between records a value lies on a straight line. A trip stays tripped, so that only the
 * first time counts, and until then a run with it is the run without it.
 */
final class TripClock {
    private final double failedS;
    private final double flowM3PerS;
    private final OptionalDouble waterStopsS;

    /**
     * Sets it up for a drill.
     *
     * @param failedS when the fault comes on the run's time, s
     * @param flowM3PerS water flow until it stops, m3/s
     * @param waterStopsS when it stops, s after the failure; empty when it goes on
     */
    TripClock(double failedS, double flowM3PerS, OptionalDouble waterStopsS) {
        this.failedS = failedS;
        this.flowM3PerS = flowM3PerS;
        this.waterStopsS = waterStopsS;
    }

    /** Whether the value of a kind is known in a run. */
    static boolean isRead(TripKind kind, DrillRun run) {
        return kind == TripKind.WATER_FLOW || values(kind, run.run().series()).isPresent();
    }

    /**
     * When a value has stood beyond a set point for the delay, s after the failure, if it was not before it; empty for never.
     */
    OptionalDouble actsS(TripKind kind, double setPoint, double delayS, DrillRun run) {
        if (kind == TripKind.WATER_FLOW) {
            if (flowM3PerS < setPoint) {
                return OptionalDouble.of(delayS);
            }
            return waterStopsS.isPresent() ? OptionalDouble.of(waterStopsS.getAsDouble() + delayS) : waterStopsS;
        }
        TimeSeries series = run.run().series();
        Optional<double[]> read = values(kind, series);
        if (read.isEmpty()) {
            return OptionalDouble.empty();
        }
        double[] time = series.column(SeriesQuantity.TIME).values();
        double[] value = read.get();
        double since = Double.NaN;
        for (int i = 0; i < time.length; i++) {
            double t = time[i] - failedS;
            if (t < 0) {
                continue;
            }
            if (value[i] < setPoint) {
                since = Double.NaN;
                continue;
            }
            if (Double.isNaN(since)) {
                since = i == 0 || time[i - 1] - failedS < 0 ? 0 : crossing(time, value, i, setPoint) - failedS;
            }
            if (t - since >= delayS) {
                return OptionalDouble.of(since + delayS);
            }
        }
        return OptionalDouble.empty();
    }

    private static double crossing(double[] time, double[] value, int i, double setPoint) {
        double rise = value[i] - value[i - 1];
        return rise <= 0 ? time[i] : time[i - 1] + (time[i] - time[i - 1]) * (setPoint - value[i - 1]) / rise;
    }

    /** Readings of what a trip watches; empty when the rig has no such thing. */
    static Optional<double[]> values(TripKind kind, TimeSeries series) {
        return switch (kind) {
            case BOILER_TEMPERATURE -> series.find(SeriesQuantity.BOILER_WALL).map(TimeSeries.Column::values);
            case BODY_TEMPERATURE -> hottestWall(series);
            case WATER_TEMPERATURE -> series.find(SeriesQuantity.WATER_OUT).map(TimeSeries.Column::values);
            case FORELINE_PRESSURE -> series.find(SeriesQuantity.FORELINE).map(TimeSeries.Column::values);
            case WATER_FLOW -> Optional.empty();
        };
    }

    private static Optional<double[]> hottestWall(TimeSeries series) {
        double[] hottest = null;
        for (int stage = 1; ; stage++) {
            Optional<double[]> wall =
                    series.find(SeriesQuantity.STAGE_WALL, stage).map(TimeSeries.Column::values);
            if (wall.isEmpty()) {
                return Optional.ofNullable(hottest);
            }
            double[] values = wall.get();
            if (hottest == null) {
                hottest = values.clone();
            }
            for (int i = 0; i < hottest.length; i++) {
                hottest[i] = Math.max(hottest[i], values[i]);
            }
        }
    }
}
