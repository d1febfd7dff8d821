package boilwright.numerics;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.util.Arrays;
import java.util.List;

/**
 * Carries a set of differential equations from a start to an end: restarts at stop points, finds events on the dense
 * solution, hands the solution on in stretches, tells how far it is and stops when asked to. The same input gives the
 * same bits. One run at a time; set it up with the chained methods, then {@link #run}.
 */
public final class OdeDriver {
    /** More events than this within the event tolerance are a chatter that leads nowhere. */
    private static final int MOST_EVENTS_TOGETHER = 100;
    /** At how many equally spaced times inside each step event values are looked at. */
    private static final int CHECKS_INSIDE = 1;

    private final OdeSystem equations;
    private final OdeIntegrator integrator;
    private final Tolerances tolerances;
    private double[] stopPoints = {};
    private List<EventFunction> events = List.of();
    private StepHandler handler = StepHandler.NONE;
    private CancelToken cancel = new CancelToken();
    private ProgressSink progress = ProgressSink.NONE;
    private String phase = "";
    private double smallestStep = 1e-12;
    private double largestStep = Double.POSITIVE_INFINITY;
    private double eventTolerance = 1e-3;
    private double unseen;
    private long mostSteps = 5_000_000;

    private OdeStatistics.Counters counters;
    private TrialSystem trials;
    private EventWatch watch;
    private double[] state;
    private EventFunction stoppedBy;
    private boolean restartWanted;
    private int eventsTogether;
    private double eventsSince;

    /**
     * @param equations what is integrated
     * @param integrator the method; private to this driver
     * @param tolerances for each component of the state
     */
    public OdeDriver(OdeSystem equations, OdeIntegrator integrator, Tolerances tolerances) {
        this.equations = equations;
        this.integrator = integrator;
        this.tolerances = tolerances;
    }

    /** Times, s, at which something is known to jump (steps of a schedule): no step reaches across them. Any order. */
    public OdeDriver stopPoints(double... times) {
        stopPoints = times.clone();
        Arrays.sort(stopPoints);
        return this;
    }

    /** What is watched; at equal times the order of the list decides. */
    public OdeDriver events(List<? extends EventFunction> watched) {
        events = List.copyOf(watched);
        return this;
    }

    /** Who records the solution. */
    public OdeDriver handler(StepHandler recorder) {
        handler = recorder;
        return this;
    }

    /** Looked at before each step and every 64 calls of the derivative. */
    public OdeDriver cancel(CancelToken token) {
        cancel = token;
        return this;
    }

    /** Who is told how far this is, and under which name. */
    public OdeDriver progress(ProgressSink sink, String phaseName) {
        progress = sink;
        phase = phaseName;
        return this;
    }

    /** Longest step, s; without it a step may be as long as the stretch between stop points. */
    OdeDriver largestStep(double seconds) {
        largestStep = positive(seconds);
        return this;
    }

    /** How sharply events are located, s; 1e-3 s unless set. */
    public OdeDriver eventTolerance(double seconds) {
        eventTolerance = positive(seconds);
        return this;
    }

    /**
     * Length of time, s, within which a value may cross zero and come back unseen: steps no longer than this are looked at
     * only at their ends. Zero unless set.
     */
    public OdeDriver unseenSpan(double seconds) {
        unseen = seconds;
        return this;
    }

    /** How many steps are enough to give up; five million unless set. */
    OdeDriver mostSteps(long steps) {
        mostSteps = steps;
        return this;
    }

    /**
     * Integrates.
     *
     * @param start start time, s
     * @param initial state then; not changed
     * @param end end time, s, later than {@code start}
     * @throws ComputationException when the equations can't be followed to the end
     * @throws boilwright.errors.CancelledException when the cancel token was raised
     */
    public OdeOutcome run(double start, double[] initial, double end) {
        if (!(end > start) || !Double.isFinite(end - start) || initial.length != equations.size()) {
            throw new IllegalArgumentException("from " + start + " s to " + end + " s with " + initial.length
                    + " components for " + equations.size());
        }
        counters = new OdeStatistics.Counters();
        trials = new TrialSystem(equations, counters, cancel);
        watch = new EventWatch(trials, events, eventTolerance);
        state = initial.clone();
        stoppedBy = null;
        eventsTogether = 0;
        eventsSince = Double.NEGATIVE_INFINITY;
        integrator.attach(trials, tolerances, smallestStep, largestStep);
        progress.progress(0, phase);
        double t = start;
        double limit = nextStop(t, end);
        trials.stopPointAhead(limit);
        watch.begin(t, state);
        begin(t, limit);
        while (t < end && stoppedBy == null) {
            cancel.check();
            if (counters.steps >= mostSteps) {
                throw new ComputationException(
                        Message.of(MessageKey.STEPS_USED_UP, Long.toString(counters.steps), Double.toString(t)));
            }
            StepInterpolant step = integrator.step(limit);
            double reached = follow(step);
            boolean cut = restartWanted;
            t = reached;
            if (stoppedBy == null && t >= limit && t < end) {
                limit = nextStop(t, end);
                trials.stopPointAhead(limit);
                settle(t, -1);
                cut = true;
            }
            if (stoppedBy == null && cut && t < end) {
                begin(t, limit);
            }
            progress.progress(stoppedBy == null ? (t - start) / (end - start) : 1, phase);
        }
        return new OdeOutcome(t, state, stoppedBy, counters.snapshot());
    }

    private void begin(double t, double limit) {
        counters.restarts++;
        integrator.restart(t, state, limit);
        handler.started(t, state);
    }

    /** Hands a step on, up to its end or to the event that cuts it short. Returns the time reached; state is there. */
    private double follow(StepInterpolant step) {
        restartWanted = false;
        double handedOn = step.start();
        double from = step.start();
        int checks = step.end() - step.start() <= unseen ? 0 : CHECKS_INSIDE;
        for (int check = 1; check <= checks + 1 && !events.isEmpty(); check++) {
            double share = (double) check / (checks + 1);
            double to = check > checks ? step.end() : step.start() + share * (step.end() - step.start());
            watch.locate(step, from, to);
            for (int k = watch.first(); k >= 0; k = watch.first()) {
                double t = watch.crossing(k);
                if (!watch.take(k)) {
                    continue;
                }
                handOn(step, handedOn, t);
                handedOn = t;
                step.stateAt(t, state);
                EventFunction.Action action = tell(k, t);
                if (action == EventFunction.Action.STOP) {
                    return t;
                }
                if (action == EventFunction.Action.RESTART) {
                    restartWanted = true;
                    settle(t, k);
                    return t;
                }
            }
            from = to;
        }
        handOn(step, handedOn, step.end());
        step.stateAt(step.end(), state);
        return step.end();
    }

    private void handOn(StepInterpolant step, double from, double to) {
        if (to > from) {
            handler.stretch(step, from, to);
        }
    }

    /** After a jump: tells of all events that the jump itself brings about, until none is left. */
    private void settle(double t, int cause) {
        int origin = cause;
        for (int k = watch.jumped(t, state, origin); k >= 0; k = watch.jumped(t, state, origin)) {
            EventFunction.Action action = tell(k, t);
            if (action == EventFunction.Action.STOP) {
                return;
            }
            origin = action == EventFunction.Action.RESTART ? k : origin;
        }
    }

    private EventFunction.Action tell(int k, double t) {
        EventFunction function = events.get(k);
        if (t > eventsSince + eventTolerance) {
            eventsSince = t;
            eventsTogether = 0;
        }
        eventsTogether++;
        if (eventsTogether > MOST_EVENTS_TOGETHER + events.size()) {
            throw new ComputationException(Message.of(
                    MessageKey.EVENTS_WITHOUT_PROGRESS,
                    Double.toString(t),
                    Integer.toString(function.id()),
                    Integer.toString(eventsTogether)));
        }
        counters.events++;
        EventFunction.Action action = function.occurred(t, state, watch.roseLast(k));
        if (action == EventFunction.Action.STOP) {
            stoppedBy = function;
        }
        return action;
    }

    private double nextStop(double t, double end) {
        for (double stop : stopPoints) {
            if (stop > t && stop < end) {
                return stop;
            }
        }
        return end;
    }

    private static double positive(double seconds) {
        if (!(seconds > 0)) {
            throw new IllegalArgumentException("a time that is not positive: " + seconds + " s");
        }
        return seconds;
    }
}
