package boilwright.answers;

import boilwright.answers.Margin.Side;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** The ledger of margins of a rig at rest, worst first. */
final class Margins {
    /** Ratio of heat available to heat needed that is wanted. */
    static final double HEAT_MARGIN = 1.25;
    /** Largest ratio reported: beyond it a margin is simply far away. */
    static final double FAR = 1000;

    private static final double GLASS_PERMISSIBLE_PA = 7e6;
    private static final double GLASS_HIGHEST_PA = 15e6;
    private static final double WATER_OUT_K = 325.15;
    private static final double WATER_IN_LOW_K = 289.15;
    private static final double WATER_IN_HIGH_K = 300.15;
    private static final double WATER_IN_NEVER_K = 305.15;
    private static final double CAP_K = 366.15;
    private static final double MACH_THROTTLES = 0.6;
    private static final double SUPERHEAT_THROWS_K = 70;
    private static final double LEAST_LIQUID = 0.5;
    private static final double LEAST_FILM_K = 5;
    private static final double COMFORTABLE_FILM_K = 20;

    private final Rig rig;
    private final Limits limits;
    private final WorkingFluid fluid;
    private final ParameterValues values;
    private final SteadyState steady;
    private final NeededState needed;
    private final RunResult warmup;
    private final double roomK;
    private final List<Margin> list = new ArrayList<>();

    private Margins(
            Rig rig,
            WorkingFluid fluid,
            ParameterValues values,
            SteadyState steady,
            NeededState needed,
            RunResult warmup) {
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
        Margins margins = new Margins(rig, fluid, values, steady, needed, warmup);
        margins.heat();
        margins.oil();
        margins.glass();
        margins.column();
        margins.water();
        margins.foreline();
        margins.fuel();
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

    private String basis(OptionalDouble user, AnswerText usual) {
        return user.isPresent() ? AnswerText.BASIS_USER.say() : usual.say();
    }

    private void heat() {
        double wanted = HeatLimiter.wantedRatio(rig);
        HeatLimiter limiter = HeatLimiter.of(rig, values, needed);
        add(MarginMaker.of("heat", AnswerText.TITLE_HEAT, Dimension.POWER)
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
        add(MarginMaker.of("jets", AnswerText.TITLE_JETS, Dimension.FRACTION)
                .value(full)
                .atLeast(steady.stages().size())
                .tightBelow(1)
                .basis(AnswerText.BASIS_JETS.say())
                .cure(AnswerText.CURE_JETS));
        double required = requiredPa();
        add(MarginMaker.of("boiler-pressure", AnswerText.TITLE_BOILER_PRESSURE, Dimension.PRESSURE)
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
        return Math.max(design, 2 * rig.foreline().pressurePa() / values.get(Parameter.CRITICAL_BACKING_RATIO));
    }

    private String pressureBasis(double required) {
        if (required > limits.requiredBoilerPressurePa().orElse(fluid.usualBoilerPressure())) {
            return AnswerText.BASIS_BOILER_PRESSURE_FORELINE.say(
                    Say.pressure(rig.foreline().pressurePa()));
        }
        return limits.requiredBoilerPressurePa().isPresent()
                ? AnswerText.BASIS_BOILER_PRESSURE_RIG.say()
                : AnswerText.BASIS_BOILER_PRESSURE_FLUID.say(fluid.title());
    }

    private void oil() {
        add(oilBulk(rig, fluid, steady.liquidTemperatureK()));
        MarginMaker film = MarginMaker.of("oil-film", AnswerText.TITLE_OIL_FILM, Dimension.TEMPERATURE)
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
        add(MarginMaker.of("liquid", AnswerText.TITLE_LIQUID, Dimension.FRACTION)
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
        MarginMaker maker = MarginMaker.of("oil-bulk", AnswerText.TITLE_OIL_BULK, Dimension.TEMPERATURE)
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
            add(MarginMaker.of("source", AnswerText.TITLE_SOURCE, Dimension.TEMPERATURE)
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
                .ifPresent(stress ->
                        glass("glass-boiler", AnswerText.TITLE_GLASS_BOILER, stress, AnswerText.CURE_GLASS_BOILER));
        steady.jacketGlassStressPa()
                .ifPresent(
                        stress -> glass("glass-body", AnswerText.TITLE_GLASS_BODY, stress, AnswerText.CURE_GLASS_BODY));
    }

    private void glass(String id, AnswerText title, double stress, AnswerText cure) {
        OptionalDouble user = limits.glassStressPa();
        add(MarginMaker.of(id, title, Dimension.PRESSURE)
                .value(stress)
                .atMost(user.orElse(GLASS_HIGHEST_PA))
                .tightBelow(user.isPresent() ? 1.1 : GLASS_HIGHEST_PA / GLASS_PERMISSIBLE_PA)
                .basis(basis(user, AnswerText.BASIS_GLASS))
                .cure(cure));
    }

    private void column() {
        add(MarginMaker.of("column-mach", AnswerText.TITLE_COLUMN_MACH, Dimension.FRACTION)
                .value(steady.columnMach())
                .atMost(limits.columnMach().orElse(MACH_THROTTLES))
                .tightBelow(2)
                .basis(basis(limits.columnMach(), AnswerText.BASIS_COLUMN_MACH))
                .cure(AnswerText.CURE_COLUMN_MACH));
        add(MarginMaker.of("superheat", AnswerText.TITLE_SUPERHEAT, Dimension.TEMPERATURE_DIFFERENCE)
                .value(steady.hydrostaticSuperheatK())
                .atMost(limits.hydrostaticSuperheatK().orElse(SUPERHEAT_THROWS_K))
                .tightBelow(2)
                .basis(basis(limits.hydrostaticSuperheatK(), AnswerText.BASIS_SUPERHEAT))
                .cure(AnswerText.CURE_SUPERHEAT));
        double film = steady.stages().stream()
                .filter(s -> s.flowKgPerS() > 0)
                .mapToDouble(StageState::filmMarginK)
                .min()
                .orElse(Double.NaN);
        if (!Double.isNaN(film)) {
            add(MarginMaker.of("film-margin", AnswerText.TITLE_FILM_MARGIN, Dimension.TEMPERATURE_DIFFERENCE)
                    .value(film)
                    .atLeast(LEAST_FILM_K)
                    .tightBelow(COMFORTABLE_FILM_K / LEAST_FILM_K)
                    .basis(AnswerText.BASIS_FILM_MARGIN.say())
                    .cure(AnswerText.CURE_FILM_MARGIN));
        }
        MarginMaker cap = MarginMaker.of("cap", AnswerText.TITLE_CAP, Dimension.TEMPERATURE)
                .from(roomK)
                .side(Side.AT_MOST)
                .tightBelow(1.2)
                .cure(AnswerText.CURE_CAP);
        if (steady.capK().isPresent()) {
            cap.value(steady.capK().getAsDouble())
                    .atMost(limits.capK().orElse(CAP_K))
                    .basis(basis(limits.capK(), AnswerText.BASIS_CAP));
        } else {
            cap.basis(AnswerText.MISSING_CAP.say());
        }
        add(cap);
    }

    private void water() {
        double inlet = rig.cooling().inletTemperatureK();
        MarginMaker out = waterOut(rig, steady.waterOutK());
        add(out);
        MarginMaker flow = MarginMaker.of("water-flow", AnswerText.TITLE_WATER_FLOW, Dimension.VOLUME_FLOW)
                .side(Side.AT_LEAST)
                .tightBelow(1.25)
                .cure(AnswerText.CURE_WATER_FLOW);
        if (steady.waterOutK().isPresent()) {
            double limit = limits.waterOutK().orElse(WATER_OUT_K);
            double rise = steady.waterOutK().getAsDouble() - inlet;
            double least = rig.cooling().flowM3PerS() * Math.max(0, rise) / Math.max(1e-9, limit - inlet);
            flow.value(rig.cooling().flowM3PerS()).atLeast(least).basis(AnswerText.BASIS_WATER_FLOW.say());
            boolean cold = inlet < limits.waterInLowK().orElse(WATER_IN_LOW_K);
            double good = limits.waterInHighK().orElse(WATER_IN_HIGH_K);
            double never = limits.waterInHighK().isPresent() ? good : WATER_IN_NEVER_K;
            // colder than good is a nuisance, not a failure: it can only be tight
            double tight = cold ? FAR + 1 : (never - 273.15) / (good - 273.15);
            add(MarginMaker.of("water-in", AnswerText.TITLE_WATER_IN, Dimension.TEMPERATURE)
                    .value(inlet)
                    .atMost(never)
                    .from(273.15)
                    .tightBelow(tight)
                    .basis(basis(limits.waterInHighK(), AnswerText.BASIS_WATER_IN))
                    .cure(cold ? AnswerText.CURE_WATER_IN_COLD : AnswerText.CURE_WATER_IN_WARM));
        } else {
            flow.basis(AnswerText.MISSING_WATER.say());
        }
        add(flow);
        MarginMaker chiller = MarginMaker.of("chiller", AnswerText.TITLE_CHILLER, Dimension.POWER)
                .value(steady.heatToWaterW())
                .side(Side.AT_MOST)
                .tightBelow(1.2)
                .basis(AnswerText.MISSING_CHILLER.say())
                .cure(AnswerText.CURE_CHILLER);
        rig.cooling().chillerCapacityW().ifPresent(c -> chiller.atMost(c).basis(AnswerText.BASIS_CHILLER.say()));
        add(chiller);
    }

    /** The outlet against its limit; also used along runs. */
    static MarginMaker waterOut(Rig rig, OptionalDouble outK) {
        OptionalDouble user = rig.limits().waterOutK();
        MarginMaker maker = MarginMaker.of("water-out", AnswerText.TITLE_WATER_OUT, Dimension.TEMPERATURE)
                .from(rig.room().temperatureK())
                .side(Side.AT_MOST)
                .tightBelow(1.2)
                .cure(AnswerText.CURE_WATER_OUT);
        if (outK.isEmpty()) {
            return maker.basis(AnswerText.MISSING_WATER.say());
        }
        return maker.value(outK.getAsDouble())
                .atMost(user.orElse(WATER_OUT_K))
                .basis(user.isPresent() ? AnswerText.BASIS_USER.say() : AnswerText.BASIS_WATER_OUT.say());
    }

    private void foreline() {
        add(MarginMaker.of("foreline", AnswerText.TITLE_FORELINE, Dimension.PRESSURE)
                .value(rig.foreline().pressurePa())
                .atMost(steady.criticalBackingPa())
                .tightBelow(2)
                .basis(AnswerText.BASIS_FORELINE.say(Say.ratio(values.get(Parameter.CRITICAL_BACKING_RATIO))))
                .cure(AnswerText.CURE_FORELINE));
        double charge = rig.chargeM3() * fluid.liquidDensity(roomK);
        add(MarginMaker.of("oil-loss", AnswerText.TITLE_OIL_LOSS, Dimension.MASS_FLOW)
                .value(steady.oilLossKgPerS())
                .atMost(limits.oilLossKgPerS().orElse(0.01 * charge / 3600))
                .tightBelow(3)
                .basis(basis(limits.oilLossKgPerS(), AnswerText.BASIS_OIL_LOSS))
                .cure(AnswerText.CURE_OIL_LOSS));
    }

    private void fuel() {
        if (!(rig.heatSource() instanceof HeatSource.GasBurner burner)
                || burner.cartridge().isEmpty()) {
            return;
        }
        double full = burner.cartridge().get().fuelMassKg();
        MarginMaker maker = MarginMaker.of("fuel", AnswerText.TITLE_FUEL, Dimension.MASS)
                .value(full)
                .side(Side.AT_LEAST)
                .tightBelow(1.5)
                .basis(AnswerText.MISSING_FUEL.say())
                .cure(AnswerText.CURE_FUEL);
        OptionalDouble pumping = warmup.events().stream()
                .filter(e -> e.id().equals("full-pumping"))
                .findFirst()
                .map(TimeEvent::timeS)
                .orElse(OptionalDouble.empty());
        pumping.ifPresent(t -> maker.atLeast(full - fuelAt(t)).basis(AnswerText.BASIS_FUEL.say()));
        add(maker);
    }

    private double fuelAt(double t) {
        double[] times = warmup.series().column("timeS").values();
        double[] fuel = warmup.series().column("fuelMassKg").values();
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
