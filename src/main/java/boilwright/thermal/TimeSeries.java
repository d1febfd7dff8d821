package boilwright.thermal;

import java.util.List;

/**
 * Columns against time.
 *
 * @param columns the columns; the first is the time in s
 */
public record TimeSeries(List<Column> columns) {
    public TimeSeries {
        columns = List.copyOf(columns);
    }

    /**
     * One quantity.
     *
     * @param key name with the unit at its end, for files ("liquidTemperatureK", "stage1FlowKgPerS")
     * @param title name that people read
     * @param kind what it measures, for grouping in pictures
     * @param stage number of the stage it belongs to from 1, or 0
     * @param values SI values, one per time; do not change
     */
    public record Column(String key, String title, Kind kind, int stage, double[] values) {}

    /** What a column measures. */
    public enum Kind {
        TIME,
        TEMPERATURE,
        FLOW,
        PRESSURE,
        HEAT,
        SHARE,
        GAS,
        MASS
    }

    /** The column with this key. */
    public Column column(String key) {
        return columns.stream()
                .filter(c -> c.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no column " + key));
    }
}
