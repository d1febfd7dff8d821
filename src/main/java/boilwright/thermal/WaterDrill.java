package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.RunSimulator.Outcome;
import boilwright.thermal.RunSimulator.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The water stops while the pump works, with the heat left on or cut some time later. */
public final class WaterDrill {
    /** How long a drill is watched after the water stopped, s. */
    public static final double WATCHED_S = 3600;

    private final Rig rig;
    private final TabulatedFluid fluid;
    private final ParameterValues parameters;
    private final OptionalDouble atS;
    private final CancelToken cancel;
    private final ProgressSink progress;

    /**
     * Sets a drill up.
     *
     * @param rig the rig
     * @param fluid its fluid
     * @param parameters values of the uncertain defaults
     * @param atS when the water stops, s from cold along the rig's schedule; empty: at rest at full power
     * @param cancel stops the computation
     * @param progress hears how far it is
     */
    public WaterDrill(
            Rig rig,
            TabulatedFluid fluid,
            ParameterValues parameters,
            OptionalDouble atS,
            CancelToken cancel,
            ProgressSink progress) {
        this.rig = atS.isPresent() ? rig : rig.withSchedule(new Schedule(List.of(new Schedule.Power(0, 1))));
        this.fluid = fluid;
        this.parameters = parameters;
        this.atS = atS;
        this.cancel = cancel;
        this.progress = progress;
    }

    /**
     * Runs it.
     *
     * @param cutAfterS when the heat is cut after the water stopped, s; empty for never
     */
    public DrillRun run(OptionalDouble cutAfterS) {
        PumpModel model = new PumpModel(rig, fluid, parameters, ColumnGeometry.USUAL_CELLS);
        double[] start;
        if (atS.isPresent()) {
            model.jets.allDark();
            start = model.coldState();
        } else {
            SteadySolver hot = new SteadySolver(model);
            hot.steady();
            start = hot.state();
        }
        double failed = atS.orElse(0);
        List<Schedule.Step> steps = rig.schedule().steps();
        if (cutAfterS.isPresent()) {
            double cut = failed + cutAfterS.getAsDouble();
            List<Schedule.Step> kept = new ArrayList<>();
            steps.stream().filter(s -> s.atS() < cut).forEach(kept::add);
            kept.add(new Schedule.Power(cut, 0));
            steps = kept;
        }
        Script script = new Script("drill", steps, failed, failed + WATCHED_S, true);
        DrillWatches limits = new DrillWatches(model, start);
        Outcome outcome = RunSimulator.drill(model, script, start, limits::addTo, cancel, progress);
        RunWatches watches = outcome.watches();
        OptionalDouble firstLost = OptionalDouble.empty();
        OptionalDouble gone = OptionalDouble.empty();
        boolean anyLeft = false;
        boolean anyLit = false;
        for (int k = 0; k < model.jets.stages; k++) {
            if (watches.lit(k).first(true).isEmpty()) {
                continue;
            }
            anyLit = true;
            OptionalDouble lost = watches.lit(k).lastOff();
            if (lost.isEmpty()) {
                anyLeft = true;
            } else {
                double after = lost.getAsDouble() - failed;
                firstLost = OptionalDouble.of(Math.min(firstLost.orElse(after), after));
                gone = OptionalDouble.of(Math.max(gone.orElse(after), after));
            }
        }
        double watched = outcome.endS() - failed;
        return new DrillRun(
                cutAfterS,
                limits.times(watches, start, failed),
                firstLost,
                anyLit && !anyLeft ? gone : OptionalDouble.empty(),
                watched,
                watched < WATCHED_S - 1,
                outcome.result());
    }
}
