package boilwright.companion;

import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanStep;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * A run of a rig as it is done, beside its plan. Everything that happens is a line for the log, and the state follows from the
 * lines alone, so that a log that is taken up again brings the run back as it was. All methods are called on one thread.
 */
public final class Companion {
    /** What is done before the backing pump is switched on. */
    private static final List<Action> BEFORE_THE_CLOCK = List.of(Action.FILL, Action.AIR_ROOM);

    private final PlanAnswer answer;
    private final Plan plan;
    private final InstantSource now;
    private final Consumer<LogEntry> log;
    private final RunState state = new RunState();
    private final StepWarnings warnings;
    private final Alarms alarms;
    private final RunLook look;

    /**
     * @param answer there must be a plan in it
     * @param now tells the time
     * @param log gets every line, in order
     * @throws java.util.NoSuchElementException when there is no plan
     */
    public Companion(PlanAnswer answer, InstantSource now, Consumer<LogEntry> log) {
        this.answer = answer;
        this.now = now;
        this.log = log;
        plan = answer.plan().orElseThrow();
        warnings = new StepWarnings(answer);
        alarms = new Alarms(answer);
        look = new RunLook(answer, state);
    }

    /** The plan that the run is held against. */
    public PlanAnswer answer() {
        return answer;
    }

    /** Takes up what a log tells; to be called before anything else happens. */
    public void takeUp(RunRecord record) {
        record.entries().forEach(this::apply);
    }

    /** The run at this moment; alarms that come up are recorded. */
    public RunView look() {
        Instant at = now.instant();
        if (!state.isEnded()) {
            for (LogEntry alarm : alarms.fresh(state, at)) {
                happened(alarm);
            }
        }
        return look.at(at);
    }

    private void happened(LogEntry entry) {
        apply(entry);
        log.accept(entry);
    }

    private void apply(LogEntry entry) {
        state.apply(entry);
        alarms.settle(state);
    }

    /** An entry at this moment on the clock that counts. */
    private LogEntry entry(LogKind kind, String quantity, String text) {
        Instant at = now.instant();
        LogEntry entry = LogEntry.of(at, kind, quantity, text);
        return state.running()
                .map(clock -> entry.on(clock, state.clockS(clock, at)))
                .orElse(entry);
    }

    /** Starts a clock: the backing pump of the cold rig goes on, or the stop of the hot one begins. */
    public Outcome start(Clock clock) {
        if (state.isEnded()) {
            return over();
        }
        if (plan.steps().stream().noneMatch(s -> s.moment().clock() == clock)) {
            return Outcome.refused(CompanionText.NO_SUCH_CLOCK.say());
        }
        if (state.runs(clock)) {
            return Outcome.refused(CompanionText.CLOCK_RUNS.say());
        }
        if (clock == Clock.FROM_COLD && state.runs(Clock.FROM_HOT)) {
            return Outcome.refused(CompanionText.STOP_RUNS.say());
        }
        happened(LogEntry.of(now.instant(), LogKind.CLOCK, RunState.STARTED, "").on(clock, 0));
        return Outcome.done((clock == Clock.FROM_COLD ? CompanionText.STARTED_COLD : CompanionText.STARTED_HOT).say());
    }

    private Outcome over() {
        return Outcome.refused(CompanionText.RUN_IS_OVER.say());
    }

    /** Does the step that is next, or starts its clock when that does not run yet. */
    public Outcome tickNext(boolean allTheSame) {
        Optional<Integer> next = look.current();
        return next.isPresent() ? tick(next.get(), allTheSame) : Outcome.refused(CompanionText.NO_STEP_LEFT.say());
    }

    /**
     * Does a step, or starts its clock when that does not run yet.
     *
     * @param number of the step, from 1
     * @param allTheSame whether the person was warned and does it all the same
     */
    public Outcome tick(int number, boolean allTheSame) {
        if (state.isEnded()) {
            return over();
        }
        PlanStep step = plan.steps().get(number - 1);
        Clock clock = step.moment().clock();
        if (state.isDone(number)) {
            return Outcome.refused(CompanionText.STEP_DONE_BEFORE.say(Integer.toString(number)));
        }
        if (!state.runs(clock) && !BEFORE_THE_CLOCK.contains(step.action())) {
            return start(clock);
        }
        if (clock == Clock.FROM_COLD && state.runs(Clock.FROM_HOT)) {
            return Outcome.refused(CompanionText.STOP_RUNS.say());
        }
        List<String> against = warnings.against(number, state);
        if (!against.isEmpty() && !allTheSame) {
            return Outcome.warned(String.join(" ", against) + " " + CompanionText.WARN_ONCE_MORE.say());
        }
        String text = String.join(" ", against);
        Optional<Sight> sight = Sight.of(step.action());
        LogEntry line = sight.isPresent()
                ? entry(LogKind.SIGHT, sight.get().id(), text)
                : entry(LogKind.TICK, step.action().id(), text);
        happened(line.ofStep(number));
        String done = Integer.toString(number);
        OptionalDouble at = state.doneS(number, clock);
        return Outcome.done(
                at.isPresent()
                        ? CompanionText.STEP_DONE_AT.say(done, RunLook.against(at.getAsDouble(), step))
                        : CompanionText.STEP_DONE.say(done));
    }

    /** Takes back the step that was done last, or the start of a clock on which none was done yet. */
    public Outcome takeBack() {
        if (state.isEnded()) {
            return over();
        }
        Optional<Clock> clock = state.running();
        boolean untouched = clock.isPresent() && look.doneOn(clock.get()) == 0;
        if (untouched) {
            happened(entry(LogKind.CLOCK, RunState.TAKEN_BACK, ""));
            return Outcome.done(CompanionText.CLOCK_TAKEN_BACK.say());
        }
        Optional<Integer> last = state.lastDone();
        if (last.isEmpty()) {
            return Outcome.refused(CompanionText.NOTHING_TO_TAKE_BACK.say());
        }
        return untick(last.get());
    }

    /** Takes a step back. */
    public Outcome untick(int number) {
        if (state.isEnded()) {
            return over();
        }
        if (!state.isDone(number)) {
            return Outcome.refused(CompanionText.NOTHING_TO_TAKE_BACK.say());
        }
        happened(entry(LogKind.UNTICK, plan.steps().get(number - 1).action().id(), "")
                .ofStep(number));
        return Outcome.done(CompanionText.STEP_TAKEN_BACK.say(Integer.toString(number)));
    }

    /** Something that was waited for is seen now; does the step that waits for it. What is seen is never doubted. */
    public Outcome see(Sight sight) {
        if (state.isEnded()) {
            return over();
        }
        if (!state.runs(sight.clock()) || (state.runs(Clock.FROM_HOT) && sight.clock() == Clock.FROM_COLD)) {
            return Outcome.refused(CompanionText.SIGHT_WITHOUT_CLOCK.say(sight.title()));
        }
        for (int i = 0; i < plan.steps().size(); i++) {
            if (plan.steps().get(i).action() == sight.action()) {
                return tick(i + 1, true);
            }
        }
        happened(entry(LogKind.SIGHT, sight.id(), ""));
        return Outcome.done(CompanionText.SIGHT_NOTED.say(sight.title()));
    }

    /**
     * Takes a reading.
     *
     * @param kind what was read
     * @param text number and unit, as typed
     * @param allTheSame whether the person was warned of a likely slip and means it as it stands
     */
    public Outcome read(ReadingKind kind, String text, boolean allTheSame) {
        if (state.isEnded()) {
            return over();
        }
        OptionalDouble computed = look.computedNow(kind, now.instant());
        ReadingDesk.Taken taken = ReadingDesk.take(kind, text, computed, allTheSame);
        if (taken.outcome().isPresent()) {
            return taken.outcome().get();
        }
        double si = taken.si().orElseThrow();
        happened(entry(LogKind.READING, kind.id(), text.strip())
                .with(si, kind.dimension().siUnit()));
        String typed = QuantityReader.read(text, kind.dimension()) instanceof Reading.Read read
                ? QuantityWriter.write(si, read.unit())
                : QuantityWriter.writeAuto(si, kind.dimension());
        return Outcome.done(
                computed.isPresent()
                        ? CompanionText.READING_TAKEN.say(
                                kind.title(), typed, QuantityWriter.writeAuto(computed.getAsDouble(), kind.dimension()))
                        : CompanionText.READING_TAKEN_ALONE.say(kind.title(), typed));
    }

    /** Words of the person's own. */
    public Outcome note(String words) {
        if (state.isEnded()) {
            return over();
        }
        if (words.isBlank()) {
            return Outcome.refused(CompanionText.NOTE_BLANK.say());
        }
        happened(entry(LogKind.NOTE, "", words.strip()));
        return Outcome.done(CompanionText.NOTE_TAKEN.say());
    }

    /** Takes note of every alarm. */
    public Outcome acknowledge() {
        if (!look.calls()) {
            return Outcome.refused(CompanionText.NO_ALARM.say());
        }
        happened(entry(LogKind.ACKNOWLEDGED, "", ""));
        return Outcome.done(CompanionText.ALARMS_ACKNOWLEDGED.say());
    }

    /** Ends the run; nothing can happen after it. */
    public Outcome end() {
        if (state.isEnded()) {
            return over();
        }
        happened(entry(LogKind.END, "by-hand", ""));
        return Outcome.done(CompanionText.ENDED.say());
    }
}
