package boilwright.answers;

import static boilwright.answers.Margins.basis;

import boilwright.answers.Margin.Side;
import boilwright.rig.Limits;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.TypicalValues;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.units.PhysicalConstants;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The margins of the cooling side: film on the walls, cap, water and chiller. */
final class CoolingMargins {
    private static final double WATER_IN_LOW_K = 289.15;
    static final double WATER_IN_HIGH_K = 300.15;
    static final double WATER_IN_NEVER_K = 305.15;
    static final double LEAST_FILM_K = 5;
    private static final double COMFORTABLE_FILM_K = 20;

    private final Rig rig;
    private final Limits limits;
    private final SteadyState steady;
    private final double roomK;
    private final List<Margin> list = new ArrayList<>();

    private CoolingMargins(Rig rig, SteadyState steady) {
        this.rig = rig;
        this.limits = rig.limits();
        this.steady = steady;
        roomK = rig.room().temperatureK();
    }

    static List<Margin> of(Rig rig, SteadyState steady) {
        CoolingMargins margins = new CoolingMargins(rig, steady);
        margins.filmAndCap();
        margins.water();
        return margins.list;
    }

    private void add(MarginMaker maker) {
        list.add(maker.make());
    }

    private void filmAndCap() {
        double film = steady.stages().stream()
                .filter(s -> s.flowKgPerS() > 0)
                .mapToDouble(StageState::filmMarginK)
                .min()
                .orElse(Double.NaN);
        if (!Double.isNaN(film)) {
            add(MarginMaker.of(MarginId.FILM_MARGIN)
                    .value(film)
                    .atLeast(LEAST_FILM_K)
                    .tightBelow(COMFORTABLE_FILM_K / LEAST_FILM_K)
                    .basis(AnswerText.BASIS_FILM_MARGIN.say())
                    .cure(AnswerText.CURE_FILM_MARGIN));
        }
        MarginMaker cap = MarginMaker.of(MarginId.CAP)
                .from(roomK)
                .side(Side.AT_MOST)
                .tightBelow(1.2)
                .cure(AnswerText.CURE_CAP);
        if (steady.capK().isPresent()) {
            cap.value(steady.capK().getAsDouble())
                    .atMost(limits.capK().orElse(TypicalValues.CAP_LIMIT_K))
                    .basis(basis(limits.capK(), AnswerText.BASIS_CAP));
        } else {
            cap.basis(AnswerText.MISSING_CAP.say());
        }
        add(cap);
    }

    private void water() {
        double inlet = rig.cooling().inletTemperatureK();
        MarginMaker out = waterOut(rig, steady.hottestWaterK());
        add(out);
        MarginMaker flow = MarginMaker.of(MarginId.WATER_FLOW)
                .side(Side.AT_LEAST)
                .tightBelow(1.25)
                .cure(AnswerText.CURE_WATER_FLOW);
        if (steady.waterOutK().isPresent()) {
            double limit = limits.waterOutK().orElse(TypicalValues.WATER_OUT_LIMIT_K);
            double rise = steady.hottestWaterK().orElseThrow() - inlet;
            double least = steady.flow().volumeFlowM3PerS() * Math.max(0, rise) / Math.max(1e-9, limit - inlet);
            flow.value(steady.flow().volumeFlowM3PerS()).atLeast(least).basis(AnswerText.BASIS_WATER_FLOW.say());
            boolean cold = inlet < limits.waterInLowK().orElse(WATER_IN_LOW_K);
            double good = limits.waterInHighK().orElse(WATER_IN_HIGH_K);
            double never = limits.waterInHighK().isPresent() ? good : WATER_IN_NEVER_K;
            // colder than good is a nuisance, not a failure: it can only be tight
            double tight = cold
                    ? Margins.FAR + 1
                    : (never - PhysicalConstants.ZERO_CELSIUS_K) / (good - PhysicalConstants.ZERO_CELSIUS_K);
            add(MarginMaker.of(MarginId.WATER_IN)
                    .value(inlet)
                    .atMost(never)
                    .from(PhysicalConstants.ZERO_CELSIUS_K)
                    .tightBelow(tight)
                    .basis(basis(limits.waterInHighK(), AnswerText.BASIS_WATER_IN))
                    .cure(cold ? AnswerText.CURE_WATER_IN_COLD : AnswerText.CURE_WATER_IN_WARM));
        } else {
            flow.basis(AnswerText.MISSING_WATER.say());
        }
        add(flow);
        MarginMaker chiller = MarginMaker.of(MarginId.CHILLER)
                .value(steady.heatToWaterW() + WaterSizing.pumpHeatW(rig))
                .side(Side.AT_MOST)
                .tightBelow(1.2)
                .basis(AnswerText.MISSING_CHILLER.say())
                .cure(AnswerText.CURE_CHILLER);
        WaterSizing.capacityW(rig)
                .ifPresent(c -> chiller.atMost(c)
                        .basis(
                                rig.cooling().supply() instanceof Supply.Chiller
                                        ? AnswerText.BASIS_CHILLER_CURVE.say(
                                                Say.temperature(inlet), Say.temperature(roomK))
                                        : AnswerText.BASIS_CHILLER.say()));
        add(chiller);
    }

    /** The outlet against its limit; also used along runs. */
    static MarginMaker waterOut(Rig rig, OptionalDouble outK) {
        OptionalDouble user = rig.limits().waterOutK();
        MarginMaker maker = MarginMaker.of(MarginId.WATER_OUT)
                .from(rig.room().temperatureK())
                .side(Side.AT_MOST)
                .tightBelow(1.2)
                .cure(AnswerText.CURE_WATER_OUT);
        if (outK.isEmpty()) {
            return maker.basis(AnswerText.MISSING_WATER.say());
        }
        return maker.value(outK.getAsDouble())
                .atMost(user.orElse(TypicalValues.WATER_OUT_LIMIT_K))
                .basis(user.isPresent() ? AnswerText.BASIS_USER.say() : AnswerText.BASIS_WATER_OUT.say());
    }
}
