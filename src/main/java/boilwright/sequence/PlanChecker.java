package boilwright.sequence;

import boilwright.answers.Instructions;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Say;
import boilwright.sequence.RuleLedger.Look;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Walks through a plan step by step as a person would, in the order in which the steps stand, and holds every rule against the
 * values that the simulated run has at that moment. A step whose time lies before that of the step it follows is done right
 * after it.
 */
final class PlanChecker {
    private final SimulatedRun run;
    private final PumpSetup setup;
    private final RuleLedger ledger = new RuleLedger();
    private final SwitchState now;
    private final double originS;

    private Moment moment = new Moment(Clock.FROM_COLD, 0);
    private String step = "";

    private PlanChecker(Plan plan, SimulatedRun run) {
        this.run = run;
        setup = PumpSetup.of(run.rig());
        now = SwitchState.atStart(plan.variant(), setup);
        originS = plan.steps().stream()
                .filter(s -> s.action() == Action.BACKING_ON)
                .mapToDouble(s -> s.moment().atS())
                .findFirst()
                .orElse(0);
    }

    /** What holds for each rule in a plan. */
    static List<RuleFinding> check(Plan plan, SimulatedRun run) {
        PlanChecker checker = new PlanChecker(plan, run);
        checker.walk(plan);
        return checker.ledger.findings();
    }

    /** How many rules were tested and kept, and how many were not, in a sentence. */
    static String tested(List<RuleFinding> findings) {
        long kept = count(findings, RuleFinding.Status.KEPT);
        long notProven = count(findings, RuleFinding.Status.NOT_PROVEN);
        String notAsked = Long.toString(count(findings, RuleFinding.Status.NOT_ASKED));
        String all = Integer.toString(Rule.values().length);
        return notProven == 0
                ? SequenceText.RULES_KEPT_PROVEN.say(Long.toString(kept), all, notAsked)
                : SequenceText.RULES_KEPT.say(Long.toString(kept), all, Long.toString(notProven), notAsked);
    }

    private static long count(List<RuleFinding> findings, RuleFinding.Status status) {
        return findings.stream().filter(f -> f.status() == status).count();
    }

    /** True when no rule is broken. */
    static boolean isSafe(List<RuleFinding> findings) {
        return findings.stream().noneMatch(f -> f.status() == RuleFinding.Status.BROKEN);
    }

    private void walk(Plan plan) {
        if (plan.variant().isFromHot()) {
            moment = new Moment(Clock.FROM_HOT, 0);
        }
        if (plan.variant() == Variant.STANDBY) {
            // a stop is right however the pump stands; a pause goes on with it
            heatRunsHot();
        }
        for (int i = 0; i < plan.steps().size(); i++) {
            PlanStep next = plan.steps().get(i);
            advance(next.moment());
            step = SequenceText.STEP.say(Integer.toString(i + 1), next.action().id());
            act(next);
        }
        step = SequenceText.STEP_END.say();
        heatedStretchEnds(Double.POSITIVE_INFINITY);
        valveAfterHeat(OptionalDouble.empty());
    }

    /** Time never runs back: what stands later in the list is done later. */
    private void advance(Moment next) {
        if (next.clock() == moment.clock()) {
            moment = new Moment(moment.clock(), Math.max(moment.atS(), next.atS()));
        } else if (next.clock() == Clock.FROM_HOT) {
            // between the clocks the pump works as long as anybody likes
            heatedStretchEnds(Double.POSITIVE_INFINITY);
            moment = next;
        }
    }

    private void act(PlanStep next) {
        switch (next.action()) {
            case AIR_ROOM -> now.roomAired = true;
            case OPEN_OUTLET -> now.outletOpen = true;
            case BACKING_ON -> {
                now.backing = true;
                now.backingOnS = moment.atS();
            }
            case COOLING_ON -> coolingOn();
            case HEAT -> {
                if (next.level().isOn()) {
                    heat();
                } else {
                    heatOff();
                }
            }
            case HEAT_OFF -> heatOff();
            case ROUGH_CHAMBER -> now.roughFromS = OptionalDouble.of(moment.atS());
            case OPEN_VALVE -> openValve();
            case CLOSE_VALVE -> {
                valveAfterHeat(OptionalDouble.of(moment.atS()));
                now.valveOpen = false;
            }
            case VENT_CHAMBER -> {
                now.roughFromS = OptionalDouble.empty();
                if (now.valveOpen) {
                    letAir();
                }
            }
            case LET_AIR_IN, OPEN_PUMP -> letAir();
            case COOLING_OFF -> coolingOff();
            case BACKING_OFF -> backingOff();
            default -> {
                // looks and pauses change nothing
            }
        }
    }

    private Look look(double closeness, String value, String limit) {
        return new Look(moment, step, closeness, value, limit);
    }

    private boolean isHot() {
        return moment.clock() == Clock.FROM_HOT;
    }

    /** Time on the run's own clock from cold. */
    private double upS() {
        return moment.atS() - originS;
    }

    private double oilK() {
        return isHot() ? run.oilDownK(sinceOff()) : run.oilUpK(upS());
    }

    /** How long the heat has been off on the clock from hot. */
    private OptionalDouble sinceOff() {
        return now.heatOffHotS.isPresent()
                ? OptionalDouble.of(moment.atS() - now.heatOffHotS.getAsDouble())
                : OptionalDouble.empty();
    }

    private void heat() {
        double power = isHot() ? run.powerAtRestW() : run.powerUpW(upS());
        heatNeedsWater(power);
        if (setup.isFlame()) {
            ledger.judge(
                    Rule.AIR_FOR_FLAME,
                    now.roomAired,
                    look(
                            0,
                            (now.roomAired ? SequenceText.VALUE_FLAME : SequenceText.VALUE_FLAME_UNAIRED)
                                    .say(Say.power(power)),
                            SequenceText.LIMIT_AIR.say()));
        }
        if (!isHot() && !now.heatOn) {
            double since = now.backing ? moment.atS() - now.backingOnS : 0;
            double least = setup.backingLeastS();
            ledger.judge(
                    Rule.BACKING_BEFORE_HEAT,
                    now.backing && since >= least,
                    look(
                            least / Math.max(since, 1),
                            now.backing ? Say.time(since) : SequenceText.VALUE_BACKING_OFF.say(),
                            SequenceText.LIMIT_AT_LEAST.say(Say.time(least))));
            foreline(
                    now.backing && !now.airInPump
                            ? run.forelineUpPa(upS())
                            : run.rig().room().pressurePa());
            now.heatOnS = moment.atS();
        }
        now.heatOn = true;
        now.heatOffHotS = OptionalDouble.empty();
    }

    private void heatNeedsWater(double power) {
        if (setup.isCooled()) {
            ledger.judge(
                    Rule.WATER_WITH_HEAT,
                    now.cooling && run.coolingFlows(),
                    look(
                            0,
                            SequenceText.VALUE_COOLING.say(
                                    now.cooling ? setup.coolingInWords(run) : SequenceText.VALUE_NO_FLOW.say(),
                                    Say.power(power)),
                            SequenceText.LIMIT_FLOW.say()));
        }
        if (setup.hasWater()) {
            ledger.judge(
                    Rule.OUTLET_OPEN,
                    now.outletOpen,
                    look(
                            0,
                            (now.outletOpen ? SequenceText.VALUE_INTO_WATER : SequenceText.VALUE_INTO_WATER_SHUT)
                                    .say(Say.power(run.check().steady().heatToWaterW())),
                            SequenceText.LIMIT_OUTLET.say()));
        }
    }

    private void foreline(double pa) {
        double limit = setup.forelineLimitPa();
        ledger.judge(
                Rule.FORELINE_WITH_HEAT,
                pa <= limit,
                look(pa / limit, Say.pressure(pa), SequenceText.LIMIT_AT_MOST.say(Say.pressure(limit))));
    }

    /** A hot pump at work: what holds at rest. */
    private void heatRunsHot() {
        step = SequenceText.STEP_START.say();
        heatNeedsWater(run.powerAtRestW());
        foreline(run.forelineAtRestPa());
        run.check().findings().stream()
                .filter(margin -> margin.moment() == boilwright.answers.Moment.REST)
                .forEach(this::limit);
    }

    /** Every margin of the check along a heated stretch up to a time of the run; those at rest when it goes on that long. */
    private void limits(double until) {
        Map<MarginId, Margin> first = new EnumMap<>(MarginId.class);
        for (Margin margin : run.check().findings()) {
            boolean reached = switch (margin.moment()) {
                case WARMUP -> margin.atS().orElseThrow() + run.zeroS() <= until;
                case REST, SESSION -> until == Double.POSITIVE_INFINITY;
                case STOP -> false;
            };
            if (reached) {
                first.merge(margin.id(), margin, this::toBeSaid);
            }
        }
        Moment before = moment;
        for (Margin margin : first.values()) {
            moment = new Moment(Clock.FROM_COLD, reachedS(margin) + run.zeroS() + originS);
            limit(margin);
        }
        moment = before;
    }

    /** Of two moments of one margin that at which it fails first, or, where it holds, comes nearer to its limit. */
    private Margin toBeSaid(Margin one, Margin other) {
        if (one.fails() && other.fails()) {
            return reachedS(one) <= reachedS(other) ? one : other;
        }
        if (one.fails() || other.fails()) {
            return one.fails() ? one : other;
        }
        return one.ratio().orElse(Double.MAX_VALUE) <= other.ratio().orElse(Double.MAX_VALUE) ? one : other;
    }

    /** When on the run's clock a margin stands so, s; at rest that is when the warm-up ends. */
    private double reachedS(Margin margin) {
        return margin.atS().orElseGet(run::warmupEndS);
    }

    private void limit(Margin margin) {
        if (margin.ratio().isEmpty()) {
            return;
        }
        String limit = Say.quantity(margin.limit().orElseThrow(), margin.dimension());
        ledger.judge(
                Rule.HEAT_WITHIN_LIMITS,
                !margin.fails(),
                look(
                        1 / Math.max(1e-9, margin.ratio().getAsDouble()),
                        SequenceText.VALUE_MARGIN.say(
                                margin.when(), Say.quantity(margin.value().orElseThrow(), margin.dimension())),
                        (margin.side() == Margin.Side.AT_MOST
                                        ? SequenceText.LIMIT_AT_MOST
                                        : SequenceText.LIMIT_AT_LEAST)
                                .say(limit)));
    }

    private void heatOff() {
        heatedStretchEnds(upS());
        if (isHot() && now.heatOn) {
            now.heatOffHotS = OptionalDouble.of(moment.atS());
        }
        now.heatOn = false;
    }

    /** Looks back over a stretch of the warm-up with heat, up to a time of the run: the foreline and the limits along it. */
    private void heatedStretchEnds(double until) {
        if (isHot() || !now.heatOn || Double.isNaN(now.heatOnS)) {
            return;
        }
        Moment end = moment;
        if (now.backing) {
            Readings.Extreme highest = run.highestForeline(now.heatOnS - originS, until);
            moment = new Moment(Clock.FROM_COLD, highest.timeS() + originS);
            foreline(highest.value());
        }
        limits(until);
        run.brokenOff().ifPresent(event -> {
            moment = new Moment(Clock.FROM_COLD, run.zeroS() + event.timeS().orElseThrow() + originS);
            ledger.judge(
                    Rule.HEAT_WITHIN_LIMITS,
                    false,
                    look(
                            1,
                            SequenceText.VALUE_BROKEN_OFF.say(event.reason(), Say.temperature(run.oilUpK(upS()))),
                            SequenceText.LIMIT_TO_REST.say()));
        });
        moment = end;
        now.heatOnS = Double.NaN;
    }

    private void coolingOn() {
        if (!now.cooling && setup.coolsGlass()) {
            double hottest = Math.max(now.hottestDryK, oilK());
            double water = run.rig().cooling().inletTemperatureK();
            ledger.judge(
                    Rule.NO_COLD_SHOCK,
                    hottest - water <= Instructions.SHOCK_K,
                    look(
                            (hottest - water) / Instructions.SHOCK_K,
                            SequenceText.VALUE_SHOCK.say(
                                    Say.kelvins(hottest - water), Say.temperature(hottest), Say.temperature(water)),
                            SequenceText.LIMIT_AT_MOST.say(Say.kelvins(Instructions.SHOCK_K))));
        }
        now.cooling = true;
    }

    private void coolingOff() {
        if (setup.isCooled() && now.cooling) {
            double oil = oilK();
            if (now.heatOn) {
                double power = isHot() ? run.powerAtRestW() : run.powerUpW(upS());
                ledger.judge(
                        Rule.WATER_WITH_HEAT,
                        false,
                        look(
                                1,
                                SequenceText.VALUE_COOLING.say(SequenceText.VALUE_NO_FLOW.say(), Say.power(power)),
                                SequenceText.LIMIT_FLOW.say()));
            }
            untilCold(Rule.WATER_UNTIL_COLD, oil);
            now.hottestDryK = oil;
        }
        now.cooling = false;
    }

    private void backingOff() {
        if (now.backing) {
            untilCold(Rule.BACKING_UNTIL_COLD, oilK());
        }
        now.backing = false;
    }

    private void untilCold(Rule rule, double oil) {
        double limit = run.leaveK();
        ledger.judge(
                rule,
                !now.heatOn && oil <= limit + Readings.ROUNDING_K,
                look(
                        oil / limit,
                        now.heatOn ? SequenceText.VALUE_STILL_HEATED.say(Say.temperature(oil)) : Say.temperature(oil),
                        SequenceText.LIMIT_AT_MOST.say(Say.temperature(limit))));
    }

    private void letAir() {
        double limit = run.airK();
        double oil = oilK();
        ledger.judge(
                Rule.AIR_ON_COLD_OIL,
                !now.heatOn && oil <= limit + Readings.ROUNDING_K,
                look(
                        oil / limit,
                        now.heatOn ? SequenceText.VALUE_STILL_HEATED.say(Say.temperature(oil)) : Say.temperature(oil),
                        SequenceText.LIMIT_AT_MOST.say(Say.temperature(limit))));
        now.airInPump = true;
    }

    private void openValve() {
        boolean full = now.heatOn && (isHot() ? run.allFullAtRest() : run.allFullUp(upS()));
        double share = now.heatOn ? (isHot() ? run.leastJetAtRest() : run.leastJetUp(upS())) : 0;
        ledger.judge(
                Rule.VALVE_WITH_JETS,
                full,
                look(-share, SequenceText.VALUE_JETS.say(Say.percent(share) + " %"), SequenceText.LIMIT_JETS.say()));
        if (run.vacuum().isEmpty()) {
            ledger.notProven(Rule.VALVE_BELOW_CROSSOVER, SequenceText.UNKNOWN_CHAMBER.say());
        } else {
            double allowed = run.vacuum().get().timeline().crossover().allowedPa();
            double pa = now.roughFromS.isPresent() && setup.isRoughedApart()
                    ? run.chamberPa(moment.atS() - now.roughFromS.getAsDouble())
                    : run.rig().room().pressurePa();
            ledger.judge(
                    Rule.VALVE_BELOW_CROSSOVER,
                    pa <= allowed,
                    look(pa / allowed, Say.pressure(pa), SequenceText.LIMIT_AT_MOST.say(Say.pressure(allowed))));
        }
        now.valveOpen = true;
    }

    /** The valve must be shut before the first jet goes out. */
    private void valveAfterHeat(OptionalDouble shutAtS) {
        if (!now.valveOpen
                || !isHot()
                || now.heatOffHotS.isEmpty()
                || run.firstLostS().isEmpty()) {
            return;
        }
        double lost = now.heatOffHotS.getAsDouble() + run.firstLostS().getAsDouble();
        boolean inTime = shutAtS.isPresent() && shutAtS.getAsDouble() < lost;
        Moment end = moment;
        moment = inTime ? end : new Moment(Clock.FROM_HOT, lost);
        ledger.judge(
                Rule.VALVE_WITH_JETS,
                inTime,
                look(
                        -1,
                        inTime
                                ? SequenceText.VALUE_SHUT.say(Say.time(lost - shutAtS.orElseThrow()))
                                : SequenceText.VALUE_JET_LOST.say(),
                        SequenceText.LIMIT_SHUT.say()));
        moment = end;
        if (!inTime) {
            now.valveOpen = false;
        }
    }

    /** Which switch stands how while a plan is walked through. */
    private static final class SwitchState {
        boolean backing;
        boolean cooling;
        boolean outletOpen;
        boolean roomAired;
        boolean heatOn;
        boolean valveOpen;
        /** Whether air was let onto the oil. */
        boolean airInPump;

        double backingOnS;
        /** When the heat went on, s from cold; NaN while it is off or was looked back over already. */
        double heatOnS = Double.NaN;
        /** When the heat went off on the clock from hot, s. */
        OptionalDouble heatOffHotS = OptionalDouble.empty();
        /** When the chamber's roughing began, s on the clock of the moment. */
        OptionalDouble roughFromS = OptionalDouble.empty();
        /** Hottest oil since the cooling stands, K; no wall in its vapour gets hotter. */
        double hottestDryK;

        private SwitchState() {}

        /** Everything off and cold; or a hot pump at work with everything on. */
        static SwitchState atStart(Variant variant, PumpSetup setup) {
            SwitchState state = new SwitchState();
            boolean hot = variant.isFromHot();
            state.backing = hot;
            state.cooling = hot;
            state.outletOpen = hot;
            state.roomAired = hot;
            state.heatOn = hot;
            // a chamber that is roughed through the pump stands open to it from the beginning
            state.valveOpen = setup.hasValve() && (hot || !setup.isRoughedApart());
            return state;
        }
    }
}
