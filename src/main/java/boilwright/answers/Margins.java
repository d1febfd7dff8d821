package boilwright.answers;

import boilwright.fluid.WorkingFluid;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The ledger of margins of a rig at rest, worst first. */
final class Margins {
    /** Largest ratio reported: beyond it a margin is simply far away. */
    static final double FAR = 1000;

    private static final double MACH_THROTTLES = 0.6;
    private static final double SUPERHEAT_THROWS_K = 70;

    private static final Comparator<Margin> WORST_FIRST = Comparator.comparingInt(
                    (Margin m) -> m.status().ordinal())
            .thenComparingDouble(m -> m.ratio().orElse(0));

    private final Rig rig;
    private final Limits limits;
    private final WorkingFluid fluid;
    private final ParameterValues values;
    private final SteadyState steady;
    private final NeededState needed;
    private final MarginRules rules;
    private final double roomK;
    private final List<Margin> list = new ArrayList<>();

    private Margins(Rig rig, WorkingFluid fluid, ParameterValues values, SteadyState steady, NeededState needed) {
        this.rig = rig;
        this.limits = rig.limits();
        this.fluid = fluid;
        this.values = values;
        this.steady = steady;
        this.needed = needed;
        rules = new MarginRules(rig, fluid);
        roomK = rig.room().temperatureK();
    }

    /** The margins at rest, in no order. */
    static List<Margin> atRest(Asked asked, SteadyState steady, NeededState needed) {
        Margins margins = new Margins(asked.rig(), asked.fluid(), asked.values(), steady, needed);
        margins.heat();
        margins.oil();
        margins.glass();
        margins.column();
        margins.list.addAll(CoolingMargins.of(asked.rig(), asked.fluid(), steady));
        margins.foreline();
        return margins.list;
    }

    /** One row for each margin, that of the moment at which it stands worst; failing, tight, unknown, holding. */
    static List<Margin> ledger(List<Margin> findings) {
        Map<MarginId, Margin> worst = new EnumMap<>(MarginId.class);
        for (Margin margin : findings) {
            worst.merge(margin.id(), margin, (a, b) -> WORST_FIRST.compare(b, a) < 0 ? b : a);
        }
        return worstFirst(List.copyOf(worst.values()));
    }

    /** Failing, tight, unknown, holding; within each the smallest ratio first. */
    static List<Margin> worstFirst(List<Margin> margins) {
        List<Margin> sorted = new ArrayList<>(margins);
        sorted.sort(WORST_FIRST);
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

        add(rules.weakestJet(
                steady.stages().stream()
                        .mapToDouble(StageState::fullFlowFraction)
                        .min()
                        .orElse(0),
                steady.stages().stream().allMatch(StageState::full)));
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
        add(rules.oilBulk(steady.liquidTemperatureK(), Optional.empty()));
        add(rules.oilFilm(steady.innerFaceK()));
        add(rules.liquid(steady.liquidFraction()));
        steady.sourceK().ifPresent(bodyK -> rules.source(bodyK).ifPresent(this::add));
    }

    private void glass() {
        steady.boilerGlassStressPa().ifPresent(stress -> add(rules.boilerGlass(stress)));
        steady.jacketGlassStressPa().ifPresent(stress -> add(rules.bodyGlass(stress)));
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

    /** Glass anywhere in the pump. */
    static boolean isGlass(Rig rig) {
        return rig.boiler().material().isGlass()
                || rig.body().material().isGlass()
                || rig.column().segments().stream().anyMatch(s -> s.material() == Material.BOROSILICATE);
    }
}
