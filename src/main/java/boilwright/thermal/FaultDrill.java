package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.RunSimulator.Outcome;
import boilwright.thermal.RunSimulator.Script;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Something fails while the pump works, with the heat left on or cut some time later. */
public final class FaultDrill {
    /** How long a drill is watched after the failure, s. */
    public static final double WATCHED_S = 3600;

    /** Bore of the opening through which air comes in, m. */
    public static final double OPENING_M = ForelineBlock.OPENING_M;
    /** Pressure up to which air that comes in is followed, Pa. */
    public static final double FOLLOWED_PA = ForelineBlock.FOLLOWED_PA;

    private final Rig rig;
    private final FaultScript fault;
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
     * @param fault what fails; it must be one that this rig can have, see {@link #notPlayed}
     * @param atS when, s from cold along the rig's schedule; empty: at rest at full power, but a heater that sticks at rest at
     *     the level at which the schedule leaves it
     * @param cancel stops the computation
     * @param progress hears how far it is
     */
    public FaultDrill(
            Rig rig,
            TabulatedFluid fluid,
            ParameterValues parameters,
            Fault fault,
            OptionalDouble atS,
            CancelToken cancel,
            ProgressSink progress) {
        this.fault = new FaultScript(rig, fault);
        this.rig = atS.isPresent() ? rig : this.fault.atRest();
        this.fluid = fluid;
        this.parameters = parameters;
        this.atS = atS;
        this.cancel = cancel;
        this.progress = progress;
    }

    /** Why a rig can't have a fault, or why it can't be followed; empty when it can. */
    public static Optional<String> notPlayed(Rig rig, Fault fault) {
        return new FaultScript(rig, fault).notPlayed();
    }

    /** Whether the heat ends with the fault, so that cutting it changes nothing. */
    public boolean endsHeat() {
        return fault.endsHeat();
    }

    /** When the water stops after the fault, s; empty when it goes on. */
    public OptionalDouble waterStopsS() {
        return fault.waterStopsS();
    }

    /**
     * Runs it.
     *
     * @param cutAfterS when the heat is cut after the failure, s; empty for never
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
        OptionalDouble cut = cutAfterS.isPresent() ? OptionalDouble.of(failed + cutAfterS.getAsDouble()) : cutAfterS;
        List<Schedule.Step> steps = fault.heat(rig.schedule().steps(), failed, cut);
        Script script = new Script("drill", steps, fault.happenings(failed), failed + WATCHED_S, true);
        DrillWatches limits = new DrillWatches(model, start);
        Outcome outcome = RunSimulator.drill(model, script, start, limits::addTo, cancel, progress);
        RunWatches watches = outcome.watches();
        OptionalDouble firstLost = OptionalDouble.empty();
        OptionalDouble gone = OptionalDouble.empty();
        boolean anyLeft = false;
        boolean anyLit = false;
        for (int k = 0; k < model.jets.stages; k++) {
            if (!watches.lit(k).wasOn()) {
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
