package boilwright.sequence;

import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;

/** A time line read between its records, along straight lines; held before its first and after its last. */
final class Readings {
    /** What reading between records may be off, K. */
    static final double ROUNDING_K = 0.05;

    private final TimeSeries series;
    private final double[] time;

    Readings(TimeSeries series) {
        this.series = series;
        time = series.column(SeriesQuantity.TIME).values();
    }

    /**
     * An extreme value.
     *
     * @param timeS when, s
     * @param value SI
     */
    record Extreme(double timeS, double value) {}

    boolean has(SeriesQuantity quantity) {
        return series.find(quantity).isPresent();
    }

    double endS() {
        return time[time.length - 1];
    }

    double at(SeriesQuantity quantity, double t) {
        return at(time, series.column(quantity).values(), t);
    }

    /** Of a stage, counted from 1. */
    double atStage(SeriesQuantity quantity, int stage, double t) {
        return at(time, series.column(quantity, stage).values(), t);
    }

    /** A value at a time; the later one where two stand at one time. */
    static double at(double[] time, double[] values, double t) {
        int last = time.length - 1;
        if (t <= time[0]) {
            return values[0];
        }
        if (t >= time[last]) {
            return values[last];
        }
        int low = 0;
        int high = last;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (time[middle] <= t) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double step = time[high] - time[low];
        return step > 0 ? values[low] + (values[high] - values[low]) * (t - time[low]) / step : values[high];
    }

    /** The highest value between two times. */
    Extreme highest(SeriesQuantity quantity, double from, double to) {
        double[] values = series.column(quantity).values();
        Extreme highest = new Extreme(from, at(time, values, from));
        for (int i = 0; i < time.length; i++) {
            if (time[i] > from && time[i] <= to && values[i] > highest.value()) {
                highest = new Extreme(time[i], values[i]);
            }
        }
        double end = at(time, values, Math.min(to, endS()));
        return end > highest.value() ? new Extreme(Math.min(to, endS()), end) : highest;
    }
}
