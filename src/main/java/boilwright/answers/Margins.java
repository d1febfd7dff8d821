package boilwright.answers;

import boilwright.answers.Margin.Side;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.EventKind;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The ledger of margins of a rig at rest, worst first. */
final class Margins {
    /** Ratio of heat available to heat needed that is wanted. */
    static final double HEAT_MARGIN = 1.25;
    /** Largest ratio reported: beyond it a margin is simply far away. */
    static final double FAR = 1000;

    private static final double GLASS_PERMISSIBLE_PA = 7e6;
    private static final double GLASS_HIGHEST_PA = 15e6;
    private static final double MACH_THROTTLES = 0.6;
    private static final double SUPERHEAT_THROWS_K = 70;
    private static final double LEAST_LIQUID = 0.5;

    private final Rig rig;
    private final Limits limits;
    private final WorkingFluid fluid;
    private final ParameterValues values;
    private final SteadyState steady;
    private final NeededState needed;
    private final Optional<RunResult> warmup;
    private final double roomK;
    private final List<Margin> list = new ArrayList<>();

    private Margins(
            Rig rig,
            WorkingFluid fluid,
            ParameterValues values,
            SteadyState steady,
            NeededState needed,
            Optional<RunResult> warmup) {
        this.rig = rig;
        this.limits = rig.limits();
        this.fluid = fluid;
        this.values = values;
        this.steady = steady;
        this.needed = needed;
        this.warmup = warmup;
        roomK = rig.room().temperatureK();
    }

    static List<Margin> of(
            Rig rig,
            WorkingFluid fluid,
            ParameterValues values,
            SteadyState steady,
            NeededState needed,
            RunResult warmup) {
        return of(rig, fluid, values, steady, needed, Optional.of(warmup));
    }

    /** Without a warm-up the margin of fuel, which is met on the way, is not among them. */
    static List<Margin> of(
            Rig rig,
            WorkingFluid fluid,
            ParameterValues values,
            SteadyState steady,
            NeededState needed,
            Optional<RunResult> warmup) {
        Margins margins = new Margins(rig, fluid, values, steady, needed, warmup);
        margins.heat();
        margins.oil();
        margins.glass();
        margins.column();
        margins.list.addAll(CoolingMargins.of(rig, steady));
        margins.foreline();
        warmup.ifPresent(margins::fuel);
        return worstFirst(margins.list);
    }

    /** Failing, tight, unknown, holding; within each the smallest ratio first. */
    static List<Margin> worstFirst(List<Margin> margins) {
        List<Margin> sorted = new ArrayList<>(margins);
        sorted.sort(Comparator.comparingInt((Margin m) -> m.status().ordinal())
                .thenComparingDouble(m -> m.ratio().orElse(0)));
        return sorted;
    }

    private void add(MarginMaker maker) {
        list.add(maker.make());
    }

    /** The user's own limit, or where the usual one comes from. */
    static String basis(OptionalDouble user, AnswerText usual) {
        return user.isPresent() ? AnswerText.BASIS_USER.say() : usual.say();
    }

    private void heat() {
        double wanted = HeatLimiter.wantedRatio(rig);
        HeatLimiter limiter = HeatLimiter.of(rig, values, needed);
        add(MarginMaker.of(MarginId.HEAT)
                .value(needed.heatAvailableW())
                .atLeast(needed.heatNeededW())
                .tightBelow(wanted)
                .basis(AnswerText.BASIS_HEAT.say(
                        Say.power(needed.heatNeededW()),
                        needed.governingStage(),
                        Say.pressure(governingPressure()),
                        Say.ratio(wanted)))
                .cure(limiter.reason() + " " + limiter.cure()));
        long full = steady.stages().stream().filter(StageState::full).count();
        add(MarginMaker.of(MarginId.JETS)
                .value(full)
                .atLeast(steady.stages().size())
                .tightBelow(1)
                .basis(AnswerText.BASIS_JETS.say())
                .cure(AnswerText.CURE_JETS));
        double required = requiredPa();
        add(MarginMaker.of(MarginId.BOILER_PRESSURE)
                .value(steady.boilerPressurePa())
                .atLeast(required)
                .basis(pressureBasis(required))
                .cure(AnswerText.CURE_BOILER_PRESSURE));
    }

    private double governingPressure() {
        return needed.state().stages().stream()
                .filter(s -> s.name().equals(needed.governingStage()))
                .mapToDouble(StageState::pressurePa)
                .findFirst()
                .orElseThrow();
    }

    private double requiredPa() {
        double design = limits.requiredBoilerPressurePa().orElse(fluid.usualBoilerPressure());
        return Math.max(design, 2 * steady.forelinePa() / values.get(Parameter.CRITICAL_BACKING_RATIO));
    }

    private String pressureBasis(double required) {
        if (required > limits.requiredBoilerPressurePa().orElse(fluid.usualBoilerPressure())) {
            return AnswerText.BASIS_BOILER_PRESSURE_FORELINE.say(Say.pressure(steady.forelinePa()));
        }
        return limits.requiredBoilerPressurePa().isPresent()
                ? AnswerText.BASIS_BOILER_PRESSURE_RIG.say()
                : AnswerText.BASIS_BOILER_PRESSURE_FLUID.say(fluid.title());
    }

    private void oil() {
        add(oilBulk(rig, fluid, steady.liquidTemperatureK()));
        MarginMaker film = MarginMaker.of(MarginId.OIL_FILM)
                .value(steady.innerFaceK())
                .side(Side.AT_MOST)
                .from(roomK)
                .tightBelow(1.05)
                .cure(AnswerText.CURE_OIL_FILM);
        OptionalDouble limit = limits.oilFilmK().isPresent() ? limits.oilFilmK() : fluid.filmLimit();
        if (limit.isPresent()) {
            film.atMost(limit.getAsDouble())
                    .basis(
                            limits.oilFilmK().isPresent()
                                    ? AnswerText.BASIS_USER.say()
                                    : AnswerText.BASIS_OIL_FILM.say(fluid.title()));
        } else {
            film.basis(AnswerText.MISSING_OIL_FILM.say(fluid.title(), Say.temperature(steady.innerFaceK())));
        }
        add(film);
        add(MarginMaker.of(MarginId.LIQUID)
                .value(steady.liquidFraction())
                .atLeast(limits.leastLiquidFraction().orElse(LEAST_LIQUID))
                .tightBelow(1.4)
                .basis(basis(limits.leastLiquidFraction(), AnswerText.BASIS_LIQUID))
                .cure(AnswerText.CURE_LIQUID));
        steady.sourceK().ifPresent(this::source);
    }

    /** The bulk temperature against its limit; also used along runs. */
    static MarginMaker oilBulk(Rig rig, WorkingFluid fluid, double oilK) {
        OptionalDouble user = rig.limits().oilBulkK();
        OptionalDouble limit = user.isPresent() ? user : fluid.bulkLimit();
        MarginMaker maker = MarginMaker.of(MarginId.OIL_BULK)
                .value(oilK)
                .from(rig.room().temperatureK())
                .tightBelow(1.05)
                .cure(AnswerText.CURE_OIL_BULK);
        if (limit.isEmpty()) {
            return maker.side(Side.AT_MOST).basis(AnswerText.MISSING_OIL_BULK.say(fluid.title()));
        }
        return maker.atMost(limit.getAsDouble())
                .basis(user.isPresent() ? AnswerText.BASIS_USER.say() : AnswerText.BASIS_OIL_BULK.say(fluid.title()));
    }

    private void source(double bodyK) {
        OptionalDouble own = ownLimit(rig.heatSource());
        OptionalDouble limit = limits.sourceK().isPresent() ? limits.sourceK() : own;
        if (limit.isPresent()) {
            add(MarginMaker.of(MarginId.SOURCE)
                    .value(bodyK)
                    .atMost(limit.getAsDouble())
                    .from(roomK)
                    .tightBelow(1.03)
                    .basis(basis(limits.sourceK(), AnswerText.BASIS_SOURCE))
                    .cure(AnswerText.CURE_SOURCE));
        }
    }

    private static OptionalDouble ownLimit(HeatSource source) {
        if (source instanceof HeatSource.ContactPlate p) {
            return OptionalDouble.of(p.limitK());
        } else if (source instanceof HeatSource.ClampedHeater c) {
            return OptionalDouble.of(c.limitK());
        } else if (source instanceof HeatSource.HeatingMantle m) {
            return OptionalDouble.of(m.limitK());
        } else if (source instanceof HeatSource.Induction i) {
            return OptionalDouble.of(i.limitK());
        }
        return OptionalDouble.empty();
    }

    private void glass() {
        steady.boilerGlassStressPa()
                .ifPresent(stress -> glass(MarginId.GLASS_BOILER, stress, AnswerText.CURE_GLASS_BOILER));
        steady.jacketGlassStressPa()
                .ifPresent(stress -> glass(MarginId.GLASS_BODY, stress, AnswerText.CURE_GLASS_BODY));
    }

    private void glass(MarginId id, double stress, AnswerText cure) {
        OptionalDouble user = limits.glassStressPa();
        add(MarginMaker.of(id)
                .value(stress)
                .atMost(user.orElse(GLASS_HIGHEST_PA))
                .tightBelow(user.isPresent() ? 1.1 : GLASS_HIGHEST_PA / GLASS_PERMISSIBLE_PA)
                .basis(basis(user, AnswerText.BASIS_GLASS))
                .cure(cure));
    }

    /**
     * The state in which the plumbing is judged: at rest when all jets are full, else the one in which they would be, so that
     * a cold boiler is not mistaken for a bad hose or a narrow column.
     */
    private SteadyState pumping() {
        return steady.stages().stream().allMatch(StageState::full) ? steady : needed.state();
    }

    private void column() {
        add(MarginMaker.of(MarginId.COLUMN_MACH)
                .value(pumping().columnMach())
                .atMost(limits.columnMach().orElse(MACH_THROTTLES))
                .tightBelow(2)
                .basis(basis(limits.columnMach(), AnswerText.BASIS_COLUMN_MACH))
                .cure(AnswerText.CURE_COLUMN_MACH));
        add(MarginMaker.of(MarginId.SUPERHEAT)
                .value(pumping().hydrostaticSuperheatK())
                .atMost(limits.hydrostaticSuperheatK().orElse(SUPERHEAT_THROWS_K))
                .tightBelow(2)
                .basis(basis(limits.hydrostaticSuperheatK(), AnswerText.BASIS_SUPERHEAT))
                .cure(AnswerText.CURE_SUPERHEAT));
    }

    private void foreline() {
        add(MarginMaker.of(MarginId.FORELINE)
                .value(steady.forelinePa())
                .atMost(pumping().criticalBackingPa())
                .tightBelow(2)
                .basis(AnswerText.BASIS_FORELINE.say(Say.ratio(values.get(Parameter.CRITICAL_BACKING_RATIO))))
                .cure(AnswerText.CURE_FORELINE));
        double charge = rig.chargeM3() * fluid.liquidDensity(roomK);
        add(MarginMaker.of(MarginId.OIL_LOSS)
                .value(steady.oilLossKgPerS())
                .atMost(limits.oilLossKgPerS().orElse(0.01 * charge / 3600))
                .tightBelow(3)
                .basis(basis(limits.oilLossKgPerS(), AnswerText.BASIS_OIL_LOSS))
                .cure(AnswerText.CURE_OIL_LOSS));
    }

    private void fuel(RunResult run) {
        if (!(rig.heatSource() instanceof HeatSource.GasBurner burner)
                || burner.cartridge().isEmpty()) {
            return;
        }
        double full = burner.cartridge().get().fuelMassKg();
        MarginMaker maker = MarginMaker.of(MarginId.FUEL)
                .value(full)
                .side(Side.AT_LEAST)
                .tightBelow(1.5)
                .basis(AnswerText.MISSING_FUEL.say())
                .cure(AnswerText.CURE_FUEL);
        OptionalDouble pumping = run.events().stream()
                .filter(e -> e.kind() == EventKind.FULL_PUMPING)
                .findFirst()
                .map(TimeEvent::timeS)
                .orElse(OptionalDouble.empty());
        pumping.ifPresent(t -> maker.atLeast(full - fuelAt(run, t)).basis(AnswerText.BASIS_FUEL.say()));
        add(maker);
    }

    private static double fuelAt(RunResult run, double t) {
        double[] times = run.series().column(SeriesQuantity.TIME).values();
        double[] fuel = run.series().column(SeriesQuantity.FUEL_MASS).values();
        int i = 0;
        while (i < times.length - 1 && times[i] < t) {
            i++;
        }
        return fuel[i];
    }

    /** Glass anywhere in the pump. */
    static boolean isGlass(Rig rig) {
        return rig.boiler().material().isGlass()
                || rig.body().material().isGlass()
                || rig.column().segments().stream().anyMatch(s -> s.material() == Material.BOROSILICATE);
    }
}
