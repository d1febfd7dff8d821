package boilwright.thermal;

import java.util.List;
import java.util.Optional;

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
     * @param quantity which
     * @param stage number of the stage it belongs to from 1, or 0
     * @param title name that people read
     * @param values SI values, one per time; do not change
     */
    public record Column(SeriesQuantity quantity, int stage, String title, double[] values) {
        /** Name with the unit at its end, for files. */
        public String key() {
            return quantity.key(stage);
        }

        /** What it measures, for grouping in pictures. */
        public Kind kind() {
            return quantity.kind();
        }
    }

    /** What a column measures. */
    public enum Kind {
        TIME,
        TEMPERATURE,
        FLOW,
        PRESSURE,
        HEAT,
        SHARE,
        GAS,
        MASS,
        /** What is held against a limit and drawn nowhere. */
        JUDGED
    }

    /** The column of a quantity of the whole pump. */
    public Column column(SeriesQuantity quantity) {
        return column(quantity, 0);
    }

    /** The column of a quantity of a stage, counted from 1. */
    public Column column(SeriesQuantity quantity, int stage) {
        return find(quantity, stage)
                .orElseThrow(() -> new IllegalArgumentException("no column " + quantity.key(stage)));
    }

    /** The column of a quantity of the whole pump; empty when the rig has no such thing. */
    public Optional<Column> find(SeriesQuantity quantity) {
        return find(quantity, 0);
    }

    /** The column of a quantity of a stage, counted from 1; empty when the rig has no such thing. */
    public Optional<Column> find(SeriesQuantity quantity, int stage) {
        return columns.stream()
                .filter(c -> c.quantity() == quantity && c.stage() == stage)
                .findFirst();
    }
}
