package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.EventFunction;
import boilwright.numerics.OdeDriver;
import boilwright.numerics.OdeIntegrator;
import boilwright.numerics.OdeOutcome;
import boilwright.numerics.OdeStatistics;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.Rosenbrock;
import boilwright.numerics.Tolerances;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.StateLayout.Quadrature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** Runs a rig through time: from cold along its schedule to rest, or from hot with the heat off until everything is safe. */
public final class RunSimulator {
    /** Largest energy balance left over in a run. */
    public static final double CLOSURE_LIMIT = 1e-3;

    private static final double LONGEST_WARMUP_S = 8 * 3600;
    private static final double LONGEST_COOLDOWN_S = 36 * 3600;
    /** Cells of the column follow the vapour at once, so that an error in one of them dies out. */
    private static final double CELL_TOLERANCE_K = 5e-2;
    /** An error in what stores much heat stays and moves events far ahead; it is one of few in a mean over all cells. */
    private static final double FORELINE_TOLERANCE_PA = 5e-3;

    private static final double STORE_TOLERANCE_K = 1e-4;

    private static final double RELATIVE_TOLERANCE = 1e-7;
    private static final String SESSION = "session";
    /** A session is judged by its highest values, which change over hours, s. */
    private static final double SESSION_GAP_S = 300;
    /** So near to boiling a run with a tank ends, K. */
    private static final double NEARLY_BOILING_K = 2;

    private final PumpModel model;
    private final CancelToken cancel;
    private final ProgressSink progress;
    private final double accuracy;
    private final OdeIntegrator integrator;

    private RunSimulator(
            PumpModel model, CancelToken cancel, ProgressSink progress, double accuracy, OdeIntegrator integrator) {
        this.model = model;
        this.cancel = cancel;
        this.progress = progress;
        this.accuracy = accuracy;
        this.integrator = integrator;
    }

    /** From cold along the rig's schedule until nothing moves any more. */
    public static RunResult warmup(
            Rig rig, TabulatedFluid fluid, ParameterValues parameters, CancelToken cancel, ProgressSink progress) {
        PumpModel model = new PumpModel(rig, fluid, parameters, ColumnGeometry.USUAL_CELLS);
        return warmup(model, cancel, progress, 1, new Rosenbrock()).result();
    }

    /** From the steady state with the heat turned off until the pump is cold enough to leave. */
    public static RunResult cooldown(
            Rig rig, TabulatedFluid fluid, ParameterValues parameters, CancelToken cancel, ProgressSink progress) {
        PumpModel model = new PumpModel(rig, fluid, parameters, ColumnGeometry.USUAL_CELLS);
        return cooldown(model, cancel, progress, 1, new Rosenbrock()).result();
    }

    /**
     * From cold with the heat on for one session, then off until water and backing pump may stop: what warms or runs out with
     * time, a tank, its ice, a cartridge, is followed all the way. Ends early where the tank is about to boil.
     *
     * @param sessionS from heat-on to heat-off, s
     */
    public static RunResult session(
            Rig rig,
            TabulatedFluid fluid,
            ParameterValues parameters,
            double sessionS,
            CancelToken cancel,
            ProgressSink progress) {
        PumpModel model = new PumpModel(rig, fluid, parameters, ColumnGeometry.USUAL_CELLS);
        model.jets.allDark();
        double offS = rig.schedule().heatOnS() + sessionS;
        List<Schedule.Step> steps = new ArrayList<>();
        rig.schedule().steps().stream().filter(step -> step.atS() < offS).forEach(steps::add);
        steps.add(new Schedule.Power(offS, 0));
        RunSimulator simulator = new RunSimulator(model, cancel, progress, 1, new Rosenbrock());
        return simulator
                .run(Script.of(SESSION, steps, LONGEST_COOLDOWN_S), model.coldState(), watches -> {})
                .result();
    }

    /** Oil temperature at which every run ends because no vapour-jet pump works there, K. */
    public static double highestOilK(TabulatedFluid fluid) {
        return RunLimits.wildOilK(fluid);
    }

    /** A result with the state it ended in, what was watched and when it ended. */
    record Outcome(RunResult result, double[] state, RunWatches watches, double endS) {}

    /**
     * What a run follows.
     *
     * @param kind what kind of run
     * @param steps the heat's schedule
     * @param happenings what fails or comes to an end, by rising time
     * @param longestS longest time after the last change, or the end itself, s
     * @param toTheEnd true for a run of that very length
     */
    record Script(
            String kind, List<Schedule.Step> steps, List<Happening> happenings, double longestS, boolean toTheEnd) {
        static Script of(String kind, List<Schedule.Step> steps, double longestS) {
            return new Script(kind, steps, List.of(), longestS, false);
        }

        private List<Running.Change> changes() {
            return happenings.stream().map(Happening::change).toList();
        }
    }

    /**
     * Something that fails.
     *
     * @param kind what it is among the events
     * @param change what works from then on
     * @param sentence what is said of it
     */
    record Happening(EventKind kind, Running.Change change, String sentence) {}

    static Outcome warmup(
            PumpModel model, CancelToken cancel, ProgressSink progress, double accuracy, OdeIntegrator integrator) {
        model.jets.allDark();
        RunSimulator simulator = new RunSimulator(model, cancel, progress, accuracy, integrator);
        return simulator.run(
                Script.of("warmup", model.rig.schedule().steps(), LONGEST_WARMUP_S), model.coldState(), watches -> {});
    }

    static Outcome cooldown(
            PumpModel model, CancelToken cancel, ProgressSink progress, double accuracy, OdeIntegrator integrator) {
        SteadySolver hot = new SteadySolver(model);
        hot.steady();
        RunSimulator simulator = new RunSimulator(model, cancel, progress, accuracy, integrator);
        Script script = Script.of("cooldown", List.of(new Schedule.Power(0, 0)), LONGEST_COOLDOWN_S);
        return simulator.run(script, hot.state(), watches -> {});
    }

    /** A run with a fault, to the end of its script or until the oil is gone or out of every known range. */
    static Outcome drill(
            PumpModel model,
            Script script,
            double[] start,
            Consumer<RunWatches> more,
            CancelToken cancel,
            ProgressSink progress) {
        return new RunSimulator(model, cancel, progress, 1, new Rosenbrock()).run(script, start, more);
    }

    private Outcome run(Script script, double[] start, Consumer<RunWatches> more) {
        String kind = script.kind();
        model.modesChanged();
        RunSystem system = new RunSystem(model, script.steps(), script.changes());
        boolean cooling = kind.equals("cooldown");
        boolean session = kind.equals(SESSION);
        RunWatches watches = new RunWatches(model, start, cooling);
        more.accept(watches);
        RestDetector rest = new RestDetector(model, system.lastChangeS());
        if (!script.toTheEnd()) {
            watches.add(
                    WatchKind.END,
                    "",
                    EventFunction.Direction.FALLING,
                    session
                            ? (t, y) -> Math.max(system.lastChangeS() - t, RunWatches.leaveExcessK(model, y))
                            : cooling ? this::unsafe : (t, y) -> rest.isReached() ? -1 : 1,
                    (t, y, rising) -> EventFunction.Action.STOP);
        }
        if (session && model.layout.supplySize > 0) {
            double boiling = model.water.boilingK() - NEARLY_BOILING_K;
            watches.add(
                    WatchKind.TANK_HOT,
                    "",
                    EventFunction.Direction.RISING,
                    (t, y) -> y[model.layout.supply] - boiling,
                    (t, y, rising) -> EventFunction.Action.STOP);
        }
        SeriesRecorder recorder =
                new SeriesRecorder(model, system, rest, session ? SESSION_GAP_S : SeriesRecorder.USUAL_GAP_S);
        OdeDriver driver = new OdeDriver(system, integrator, tolerances())
                .stopPoints(system.stopPoints())
                .events(watches.all())
                .handler(recorder)
                .cancel(cancel)
                .progress(progress, kind)
                .eventTolerance(0.01)
                .unseenSpan(RunWatch.HOLD_S);
        watches.settleAtStart(start);
        OdeOutcome outcome =
                driver.run(0, start, script.toTheEnd() ? script.longestS() : system.lastChangeS() + script.longestS());
        EnergyBalance balance = balance(start, outcome.state());
        requireClosed("the " + kind, balance.closureRelative());
        OptionalDouble supplyClosure = supplyClosure(start, outcome.state());
        requireClosed("the water supply", supplyClosure.orElse(0));
        boolean ended = outcome.stoppedBy() != null;
        RunResult result = new RunResult(
                kind,
                script.toTheEnd()
                        ? RunEvents.ofDrill(model, watches, script)
                        : new RunEvents(model, watches, script.steps(), cooling, outcome.time(), ended).list(),
                recorder.series(),
                recorder.column(),
                balance,
                supplyClosure,
                assumptions(cooling),
                statistics(outcome.statistics()));
        return new Outcome(result, outcome.state(), watches, outcome.time());
    }

    private Tolerances tolerances() {
        StateLayout at = model.layout;
        double[] absolute = new double[at.size];
        Arrays.fill(absolute, 1e-4 * accuracy);
        for (int i = 0; i < at.quadratures; i++) {
            if (at.isTemperature(i) || (i == at.source && at.sourceSize > 0)) {
                boolean cell = i >= at.column && i < at.walls;
                absolute[i] = (cell ? CELL_TOLERANCE_K : STORE_TOLERANCE_K) * accuracy;
            }
        }
        if (at.forelineSize > 0) {
            absolute[at.foreline] = FORELINE_TOLERANCE_PA * accuracy;
        }
        absolute[at.oilMass] = 1e-5 * model.chargeKg * accuracy;
        for (int i = at.quadratures; i < at.size; i++) {
            absolute[i] = Double.POSITIVE_INFINITY;
        }
        return new Tolerances(RELATIVE_TOLERANCE * accuracy, absolute);
    }

    /** How far the pump still is from being safe to leave, K. */
    private double unsafe(double t, double[] y) {
        double oil = RunWatches.leaveExcessK(model, y);
        double air = y[model.layout.oil] - model.fluid.airAdmissionLimit().orElse(Double.POSITIVE_INFINITY);
        return Math.max(Math.max(oil, air), model.faces.touchExcessK(y));
    }

    private EnergyBalance balance(double[] start, double[] end) {
        StateLayout at = model.layout;
        double in = end[at.quadrature(Quadrature.IN)];
        double water = end[at.quadrature(Quadrature.WATER)];
        double air = end[at.quadrature(Quadrature.AIR)];
        double foreline = end[at.quadrature(Quadrature.FORELINE)];
        double stored = model.storedJ(end) - model.storedJ(start);
        // while cooling nothing comes in and the store is what goes round
        double scale = Math.max(1, Math.max(Math.abs(in), Math.abs(stored)));
        return new EnergyBalance(
                in, water, air, foreline, stored, Math.abs(in - water - air - foreline - stored) / scale);
    }

    private static void requireClosed(String what, double closure) {
        if (!(closure <= CLOSURE_LIMIT)) {
            throw new ComputationException(Message.of(
                    MessageKey.ENERGY_NOT_CLOSED, what, Double.toString(closure), Double.toString(CLOSURE_LIMIT)));
        }
    }

    /** What the supply took up, less what it stored and its chiller removed, relative to what went through it. */
    private OptionalDouble supplyClosure(double[] start, double[] end) {
        StateLayout at = model.layout;
        if (at.supplySize == 0) {
            return OptionalDouble.empty();
        }
        double in = end[at.quadrature(Quadrature.STREAM)] + end[at.quadrature(Quadrature.SUPPLY_GAIN)];
        double removed = end[at.quadrature(Quadrature.CHILLER)];
        double stored = model.supply.storedJ(end, at.supply) - model.supply.storedJ(start, at.supply);
        return OptionalDouble.of(Math.abs(in - removed - stored) / Math.max(1, Math.abs(in) + Math.abs(removed)));
    }

    private List<String> assumptions(boolean cooling) {
        return cooling
                ? List.of(ModelText.ASSUMED_HOT_START.say(), ModelText.ASSUMED_WATER_GOES_ON.say())
                : List.of(
                        ModelText.ASSUMED_COLD_START.say(),
                        (model.foreline.size() > 0
                                        ? ModelText.ASSUMED_BACKING_FOLLOWED
                                        : ModelText.ASSUMED_BACKING_HOLDS)
                                .say());
    }

    private static Map<String, Long> statistics(OdeStatistics s) {
        Map<String, Long> map = new LinkedHashMap<>();
        map.put("steps", s.steps());
        map.put("rejected", s.rejected());
        map.put("derivatives", s.derivatives());
        map.put("restarts", s.restarts());
        map.put("events", s.events());
        return map;
    }
}
