package boilwright.sequence;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Instructions;
import boilwright.answers.VacuumAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.StageState;
import boilwright.thermal.TimeEvent;
import boilwright.vacuum.VacuumTimeline;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * What a rig does while a plan is followed: its warm-up and cool-down, read at the times of the plan. Before the run begins the
 * rig is cold; on the clock from hot it is at rest until the heat goes off.
 */
final class SimulatedRun {
    /** So that a reading at a switch is that after it, whatever rounding does to its time, s. */
    private static final double JUST_AFTER_S = 1e-6;

    private static final double SAME_TIME_S = 1e-6;
    /** Flow that is as good as none, m3/s. */
    private static final double HARDLY_ANY_M3_PER_S = 1e-9;

    private final CheckAnswer check;
    private final RunResult cooldown;
    private final GasRun gas;
    private final double gapS;
    private final Readings up;
    private final Readings down;

    /**
     * @param check the rig at rest and its warm-up
     * @param cooldown from rest with the heat off
     * @param gas its gas side
     * @param gapS how long the cold rig waits with its foreline down before the warm-up's time 0, s
     */
    SimulatedRun(CheckAnswer check, RunResult cooldown, GasRun gas, double gapS) {
        this.check = check;
        this.cooldown = cooldown;
        this.gas = gas;
        this.gapS = gapS;
        up = new Readings(check.warmup().series());
        down = new Readings(cooldown.series());
    }

    CheckAnswer check() {
        return check;
    }

    Rig rig() {
        return check.rig();
    }

    WorkingFluid fluid() {
        return check.asked().fluid();
    }

    RunResult cooldown() {
        return cooldown;
    }

    /** The gas side, when the rig describes it. */
    Optional<VacuumAnswer> vacuum() {
        return gas.answer();
    }

    /** The same with another wait before the warm-up. */
    SimulatedRun withGap(double otherS) {
        return new SimulatedRun(check, cooldown, gas, otherS);
    }

    /** How long the chamber is drawn down through the cold pump before the foreline is down, s; 0 where that is not known. */
    double pumpDownS() {
        return vacuum().map(v -> v.timeline().crossover())
                .filter(c -> !c.aroundPump())
                .map(c -> c.roughingS())
                .orElse(0.0);
    }

    /** Time after the backing pump's start at which the warm-up's time 0 lies, s. */
    double zeroS() {
        return gapS + pumpDownS();
    }

    /** When something happens in the warm-up, s after the backing pump's start. */
    OptionalDouble upS(EventKind event, String stage) {
        OptionalDouble t = time(check.warmup(), event, stage);
        return t.isPresent() ? OptionalDouble.of(zeroS() + t.getAsDouble()) : t;
    }

    /**
     * When something happens in the cool-down, s after heat-off; empty too when the cool-down had to be broken off, for then
     * nothing can be said of what holds after it.
     */
    OptionalDouble downS(EventKind event) {
        return brokenOff(cooldown, down).isPresent() ? OptionalDouble.empty() : time(cooldown, event, "");
    }

    private static OptionalDouble time(RunResult run, EventKind kind, String stage) {
        return run.events().stream()
                .filter(e -> e.kind() == kind && e.stage().equals(stage))
                .map(TimeEvent::timeS)
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** When the first jet goes out after heat-off, s; empty when none works at rest. */
    OptionalDouble firstLostS() {
        return cooldown.events().stream()
                .filter(e -> e.kind() == EventKind.JET_LOST && e.timeS().isPresent())
                .mapToDouble(e -> e.timeS().getAsDouble())
                .min();
    }

    /** Oil temperature, K, at a time from cold; the cold oil's before the warm-up begins. */
    double oilUpK(double seconds) {
        return up.at(SeriesQuantity.LIQUID_TEMPERATURE, seconds - zeroS());
    }

    /** Oil temperature, K, so long after heat-off; that at rest while the heat is on. */
    double oilDownK(OptionalDouble sinceOffS) {
        return sinceOffS.isPresent()
                ? down.at(SeriesQuantity.LIQUID_TEMPERATURE, sinceOffS.getAsDouble())
                : check.steady().liquidTemperatureK();
    }

    /** Water outlet temperature, K, at a time from cold; only where water passes. */
    double waterOutUpK(double seconds) {
        return up.at(SeriesQuantity.WATER_OUT, seconds - zeroS());
    }

    /** Power that the source takes, W, at a time from cold. */
    double powerUpW(double seconds) {
        return up.at(SeriesQuantity.SOURCE_INPUT, seconds - zeroS() + JUST_AFTER_S);
    }

    double powerAtRestW() {
        return check.steady().sourceInputW();
    }

    /** Foreline pressure, Pa, at a time from cold with the backing pump on since time 0. */
    double forelineUpPa(double seconds) {
        double t = seconds - zeroS();
        if (t < -gapS && vacuum().isPresent()) {
            VacuumTimeline line = vacuum().get().timeline();
            return Readings.at(line.timeS(), line.forelinePa(), seconds - pumpDownS());
        }
        return up.has(SeriesQuantity.FORELINE)
                ? up.at(SeriesQuantity.FORELINE, t)
                : check.steady().forelinePa();
    }

    /** Highest foreline pressure of the warm-up between two times from cold, with its time. */
    Readings.Extreme highestForeline(double fromS, double toS) {
        if (!up.has(SeriesQuantity.FORELINE)) {
            return new Readings.Extreme(fromS, forelineUpPa(fromS));
        }
        Readings.Extreme inRun = up.highest(SeriesQuantity.FORELINE, fromS - zeroS(), toS - zeroS());
        double first = forelineUpPa(fromS);
        return first >= inRun.value()
                ? new Readings.Extreme(fromS, first)
                : new Readings.Extreme(inRun.timeS() + zeroS(), inRun.value());
    }

    /** Foreline pressure at rest, Pa. */
    double forelineAtRestPa() {
        return check.steady().forelinePa();
    }

    /** When the warm-up ends on its own clock, s. */
    double warmupEndS() {
        return up.endS();
    }

    /** What ended the warm-up before it came to rest, when something did. */
    Optional<TimeEvent> brokenOff() {
        return brokenOff(check.warmup(), up);
    }

    private static Optional<TimeEvent> brokenOff(RunResult run, Readings readings) {
        return run.events().stream()
                .filter(e -> e.kind() == EventKind.LIMIT_REACHED && e.timeS().isPresent())
                .filter(e -> e.timeS().getAsDouble() >= readings.endS() - SAME_TIME_S)
                .findFirst();
    }

    /** Least share of its full flow that any jet has at a time from cold. */
    double leastJetUp(double seconds) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 1; k <= rig().stages().size(); k++) {
            least = Math.min(
                    least,
                    seconds < zeroS() ? 0 : up.atStage(SeriesQuantity.STAGE_FULL_FLOW_FRACTION, k, seconds - zeroS()));
        }
        return least;
    }

    double leastJetAtRest() {
        return check.steady().stages().stream()
                .mapToDouble(StageState::fullFlowFraction)
                .min()
                .orElse(0);
    }

    /** Whether every jet is full for good at a time from cold. */
    boolean allFullUp(double seconds) {
        OptionalDouble full = upS(EventKind.FULL_PUMPING, "");
        return full.isPresent() && seconds >= full.getAsDouble() - 1e-9;
    }

    boolean allFullAtRest() {
        return check.steady().stages().stream().allMatch(StageState::full);
    }

    /** Chamber pressure, Pa, so long after roughing from room pressure began. */
    double chamberPa(double sinceRoughS) {
        VacuumTimeline line = vacuum().orElseThrow().timeline();
        if (sinceRoughS >= line.crossover().roughingS()) {
            return line.crossover().allowedPa();
        }
        return Readings.at(line.timeS(), line.chamberPa(), line.crossover().roughingFromS() + sinceRoughS);
    }

    /** Oil temperature below which water and backing pump may stop, K. */
    double leaveK() {
        return Math.min(TypicalValues.LEAVE_OIL_K, fluid().saturationTemperature(forelineAtRestPa()));
    }

    /** What is to be done when something fails. */
    Instructions instructions() {
        return new Instructions(rig(), fluid());
    }

    /** Oil temperature below which air may be let in, K. */
    double airK() {
        return instructions().airK();
    }

    /** Whether the cooling moves when it is on. */
    boolean coolingFlows() {
        return rig().cooling()
                .supply()
                .fins()
                .map(fan -> fan.airSpeedMPerS() > 0)
                .orElseGet(() -> check.steady().flow().volumeFlowM3PerS() > HARDLY_ANY_M3_PER_S);
    }

    /** The gas side of a run, computed when it is first asked for: a stop needs none. */
    static final class GasRun {
        private final Supplier<Optional<VacuumAnswer>> question;
        private Optional<VacuumAnswer> answer;

        GasRun(Supplier<Optional<VacuumAnswer>> question) {
            this.question = question;
        }

        /**
         * The answer; empty when the rig describes no chamber.
         *
         * @throws boilwright.errors.ComputationException when its gas does not add up
         */
        Optional<VacuumAnswer> answer() {
            if (answer == null) {
                answer = question.get();
            }
            return answer;
        }
    }
}
