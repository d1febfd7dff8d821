package boilwright.dashboard.model;

import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Warm-up, steady running and cool-down of one rig on one axis of time. Steady running lasts as long as one likes; it takes a
 * tenth of the axis. Never changed after it is made.
 */
public final class RunTimeline {
    /** The plateau over warm-up and cool-down together: a tenth of the whole axis. */
    private static final double REST_OVER_RUNS = 1.0 / 9;
    /** The front stands where the column's rise is this share of its foot's. */
    private static final double FRONT_SHARE = 0.85;

    private final RunTrack warmup;
    private final RunTrack cooldown;
    private final SteadyState steady;
    private final double warmS;
    private final double restS;
    private final double endS;
    private final double[] coldK;
    private final double heldAtRest;
    private final double waterInK;
    private final List<TimeEvent> marks;
    private final List<RunPhase> phases;

    private RunTimeline(RunResult warm, SteadyState steady, RunResult cool) {
        warmup = new RunTrack(warm);
        cooldown = cool == null ? null : new RunTrack(cool);
        this.steady = steady;
        warmS = warmup.endS();
        double coolS = cooldown == null ? 0 : cooldown.endS();
        restS = REST_OVER_RUNS * (warmS + coolS);
        endS = warmS + restS + coolS;
        coldK = warmup.cellsK(warmup.place(0));
        heldAtRest =
                warmup.last(SeriesQuantity.OIL_MASS) / warmup.first(SeriesQuantity.OIL_MASS) - steady.liquidFraction();
        waterInK = warmup.has(SeriesQuantity.WATER_OUT) ? warmup.first(SeriesQuantity.WATER_OUT) : Double.NaN;
        marks = marks(warm, cool);
        phases = RunPhases.of(warm, steady, cool, warmS, restS, endS);
    }

    /**
     * The axis of a rig.
     *
     * @param warmup its warm-up from cold
     * @param steady the rig at rest
     * @param cooldown its cool-down from rest; null while it is not computed yet
     */
    public static RunTimeline of(RunResult warmup, SteadyState steady, RunResult cooldown) {
        return new RunTimeline(warmup, steady, cooldown);
    }

    /** Length of the axis, s. */
    public double endS() {
        return endS;
    }

    /** Where the plateau starts, s. */
    public double restStartS() {
        return warmS;
    }

    /** Where the cool-down starts, s; the end of the axis without one. */
    public double cooldownStartS() {
        return warmS + restS;
    }

    /** What happens when, in order, with times on the axis, s; every one has a time. */
    public List<TimeEvent> marks() {
        return marks;
    }

    /** The named stretches, in order and without gaps from 0 to the end. */
    public List<RunPhase> phases() {
        return phases;
    }

    /** Part of the axis at a place on it, s. */
    public RunPart partAt(double axisS) {
        if (axisS < warmS) {
            return RunPart.WARMUP;
        }
        return cooldown == null || axisS < cooldownStartS() ? RunPart.REST : RunPart.COOLDOWN;
    }

    /** What a clock shows at a place on the axis, s: time since the backing pump started, or since the heat went off. */
    public double clockS(double axisS) {
        double within = Math.max(0, Math.min(endS, axisS));
        return switch (partAt(within)) {
            case WARMUP -> within;
            case REST -> warmS;
            case COOLDOWN -> within - cooldownStartS();
        };
    }

    /** The pump at a place on the axis, s; beyond the ends that of the end. */
    public MomentState at(double axisS) {
        double within = Math.max(0, Math.min(endS, axisS));
        return switch (partAt(within)) {
            case WARMUP -> moment(RunPart.WARMUP, warmup, within);
            case REST -> rest();
            case COOLDOWN -> moment(RunPart.COOLDOWN, cooldown, within - cooldownStartS());
        };
    }

    private MomentState moment(RunPart part, RunTrack track, double clockS) {
        RunTrack.Place at = track.place(clockS);
        double flow = track.value(SeriesQuantity.VAPOUR_FLOW, at);
        double waterOut = track.value(SeriesQuantity.WATER_OUT, at);
        double oil = track.value(SeriesQuantity.LIQUID_TEMPERATURE, at);
        double[] cells = track.cellsK(at);
        List<JetState> jets = new ArrayList<>();
        for (int k = 0; k < steady.stages().size(); k++) {
            jets.add(jet(track, at, k, waterOut));
        }
        double atRest = steady.vapourFlowKgPerS();
        double held = atRest > 0 ? heldAtRest * Math.cbrt(Math.max(0, flow) / atRest) : 0;
        return new MomentState(
                part,
                clockS,
                oil,
                track.value(SeriesQuantity.BOILER_WALL, at),
                track.value(SeriesQuantity.SOURCE_TEMPERATURE, at),
                track.heightsM(),
                cells,
                jets,
                track.value(SeriesQuantity.CAP, at),
                waterOut,
                track.value(SeriesQuantity.BOILER_PRESSURE, at),
                flow,
                track.value(SeriesQuantity.HEAT_DELIVERED, at),
                track.value(SeriesQuantity.HEAT_TO_WATER, at),
                track.value(SeriesQuantity.HEAT_TO_AIR, at),
                Math.max(0, track.value(SeriesQuantity.OIL_MASS, at) / warmup.first(SeriesQuantity.OIL_MASS) - held),
                flow > 0 ? front(track.heightsM(), cells, oil) : 0);
    }

    private JetState jet(RunTrack track, RunTrack.Place at, int k, double waterOut) {
        int stage = k + 1;
        double fraction = track.value(SeriesQuantity.STAGE_FULL_FLOW_FRACTION, stage, at);
        boolean lit = track.flag(SeriesQuantity.STAGE_LIT, stage, at);
        return new JetState(
                steady.stages().get(k).name(),
                track.value(SeriesQuantity.STAGE_WALL, stage, at),
                track.value(SeriesQuantity.STAGE_FLOW, stage, at),
                fraction,
                lit,
                lit && fraction >= JetState.FULL_SHARE,
                track.value(SeriesQuantity.STAGE_CONDENSED_SHARE, stage, at),
                waterAt(k, waterOut));
    }

    private double waterAt(int k, double waterOut) {
        double riseAtRest = steady.waterOutK().orElse(Double.NaN) - waterInK;
        if (Double.isNaN(riseAtRest)) {
            return waterOut;
        }
        double share = riseAtRest > 0 ? (steady.stages().get(k).waterK() - waterInK) / riseAtRest : 1;
        return waterInK + Math.max(0, Math.min(1, share)) * (waterOut - waterInK);
    }

    private MomentState rest() {
        List<JetState> jets = new ArrayList<>();
        for (StageState s : steady.stages()) {
            double water = warmup.has(SeriesQuantity.WATER_OUT) ? s.waterK() : Double.NaN;
            jets.add(new JetState(
                    s.name(),
                    s.wallK(),
                    s.flowKgPerS(),
                    s.fullFlowFraction(),
                    s.lit(),
                    s.full(),
                    s.condensedShare(),
                    water));
        }
        double[] heights = toArray(steady.columnHeightsM());
        double[] cells = toArray(steady.columnK());
        return new MomentState(
                RunPart.REST,
                warmS,
                steady.liquidTemperatureK(),
                warmup.last(SeriesQuantity.BOILER_WALL),
                steady.sourceK().orElse(Double.NaN),
                heights,
                cells,
                jets,
                steady.capK().orElse(Double.NaN),
                steady.waterOutK().orElse(warmup.last(SeriesQuantity.WATER_OUT)),
                steady.boilerPressurePa(),
                steady.vapourFlowKgPerS(),
                steady.heatDeliveredW(),
                steady.heatToWaterW(),
                steady.heatToAirW(),
                steady.liquidFraction(),
                steady.vapourFlowKgPerS() > 0 ? front(heights, cells, steady.liquidTemperatureK()) : 0);
    }

    private double front(double[] heights, double[] cells, double oilK) {
        double foot = cells[0];
        if (foot - coldK[0] < FRONT_SHARE * (oilK - coldK[0])) {
            return 0;
        }
        for (int j = 1; j < cells.length; j++) {
            double wanted = coldK[j] + FRONT_SHARE * (foot - coldK[j]);
            if (cells[j] < wanted) {
                double drop = cells[j - 1] - cells[j];
                double share = drop > 0 ? Math.max(0, Math.min(1, (cells[j - 1] - wanted) / drop)) : 0;
                return heights[j - 1] + share * (heights[j] - heights[j - 1]);
            }
        }
        int last = heights.length - 1;
        return last == 0 ? 2 * heights[0] : heights[last] + (heights[last] - heights[last - 1]) / 2;
    }

    private List<TimeEvent> marks(RunResult warm, RunResult cool) {
        List<TimeEvent> all = new ArrayList<>();
        warm.events().stream().filter(e -> e.timeS().isPresent()).forEach(e -> all.add(moved(e, 0)));
        if (cool != null) {
            cool.events().stream().filter(e -> e.timeS().isPresent()).forEach(e -> all.add(moved(e, cooldownStartS())));
        }
        all.sort(Comparator.comparingDouble(e -> e.timeS().getAsDouble()));
        return List.copyOf(all);
    }

    private static TimeEvent moved(TimeEvent event, double byS) {
        return new TimeEvent(
                event.kind(), event.stage(), OptionalDouble.of(event.timeS().getAsDouble() + byS), event.reason());
    }

    private static double[] toArray(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
