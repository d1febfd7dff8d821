package boilwright.answers;

import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;
import boilwright.vacuum.JetAction;
import boilwright.vacuum.JetTimeline;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the jets do with gas in the course of a warm-up, read from its time line. */
final class RunJets implements JetTimeline {
    private final JetGas gas;
    private final double[] time;
    private final double[] fraction;
    private final double[] lit;
    private final double[] heat;
    /** Gas that the oil gives off at each record, Pa m3/s. */
    private final double[] given;

    private final double[] jumps;
    private final OptionalDouble allFull;

    /**
     * @param run the warm-up
     * @param stages how many jets there are
     * @param gas what they do at a moment
     * @param dissolvedAll all gas that the cold oil holds, Pa m3
     */
    RunJets(RunResult run, int stages, JetGas gas, double dissolvedAll) {
        this.gas = gas;
        TimeSeries series = run.series();
        time = series.column(SeriesQuantity.TIME).values();
        fraction =
                series.column(SeriesQuantity.STAGE_FULL_FLOW_FRACTION, stages).values();
        lit = series.column(SeriesQuantity.STAGE_LIT, stages).values();
        heat = series.column(SeriesQuantity.HEAT_DELIVERED).values();
        given = rates(time, series.column(SeriesQuantity.DISSOLVED_GAS).values(), dissolvedAll);
        List<Double> changes = new ArrayList<>();
        for (int i = 1; i < time.length; i++) {
            // what a thermostat does to the heat changes the throughput only, which few gases reach
            if (lit[i] != lit[i - 1] && time[i] > 0) {
                changes.add(time[i]);
            }
        }
        jumps = changes.stream().mapToDouble(Double::doubleValue).distinct().toArray();
        allFull = run.events().stream()
                .filter(event -> event.kind() == EventKind.FULL_PUMPING)
                .findFirst()
                .orElseThrow()
                .timeS();
    }

    @Override
    public JetAction at(double timeS) {
        int last = time.length - 1;
        if (timeS >= time[last]) {
            return gas.at(lit[last] > 0 ? fraction[last] : 0, heat[last], 0);
        }
        int i = before(timeS);
        double step = time[i + 1] - time[i];
        double share = step > 0 ? Math.max(0, (timeS - time[i]) / step) : 0;
        double flow = fraction[i] + share * (fraction[i + 1] - fraction[i]);
        return gas.at(
                lit[i] > 0 ? flow : 0,
                heat[i] + share * (heat[i + 1] - heat[i]),
                given[i] + share * (given[i + 1] - given[i]));
    }

    private static double[] rates(double[] time, double[] content, double all) {
        double[] rates = new double[time.length];
        for (int i = 0; i < time.length; i++) {
            int below = Math.max(0, i - 1);
            int above = Math.min(time.length - 1, i + 1);
            double step = time[above] - time[below];
            rates[i] = step > 0 ? all * Math.max(0, content[below] - content[above]) / step : 0;
        }
        return rates;
    }

    /** Last record at or before a time, the later one where two stand at one time. */
    private int before(double timeS) {
        int low = 0;
        int high = time.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (time[middle] <= timeS) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    @Override
    public double[] jumpsS() {
        return jumps.clone();
    }

    @Override
    public OptionalDouble allFullS() {
        return allFull;
    }
}
