package boilwright.answers;

import boilwright.thermal.RunResult;
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
    private final double[] dissolved;
    private final double dissolvedAll;
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
        this.dissolvedAll = dissolvedAll;
        TimeSeries series = run.series();
        time = series.column("timeS").values();
        fraction = series.column("stage" + stages + "FullFlowFraction").values();
        lit = series.column("stage" + stages + "Lit").values();
        heat = series.column("heatDeliveredW").values();
        dissolved = series.column("dissolvedGasFraction").values();
        List<Double> changes = new ArrayList<>();
        for (int i = 1; i < time.length; i++) {
            boolean restarts = time[i] == time[i - 1];
            if ((lit[i] != lit[i - 1] || restarts) && time[i] > 0) {
                changes.add(time[i]);
            }
        }
        jumps = changes.stream().mapToDouble(Double::doubleValue).distinct().toArray();
        allFull = run.events().stream()
                .filter(event -> event.id().equals("full-pumping"))
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
        double given = step > 0 ? dissolvedAll * Math.max(0, dissolved[i] - dissolved[i + 1]) / step : 0;
        double flow = fraction[i] + share * (fraction[i + 1] - fraction[i]);
        return gas.at(lit[i] > 0 ? flow : 0, heat[i] + share * (heat[i + 1] - heat[i]), given);
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
