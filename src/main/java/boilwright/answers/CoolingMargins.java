package boilwright.answers;

import boilwright.answers.Margin.Side;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Limits;
import boilwright.rig.Rig;
import boilwright.rig.SupplyKind;
import boilwright.rig.TypicalValues;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The margins of the cooling side: film on the walls, cap, water and chiller. */
final class CoolingMargins {
    private final Rig rig;
    private final Limits limits;
    private final MarginRules rules;
    private final SteadyState steady;
    private final double roomK;
    private final List<Margin> list = new ArrayList<>();

    private CoolingMargins(Rig rig, WorkingFluid fluid, SteadyState steady) {
        this.rig = rig;
        this.limits = rig.limits();
        this.steady = steady;
        rules = new MarginRules(rig, fluid);
        roomK = rig.room().temperatureK();
    }

    static List<Margin> of(Rig rig, WorkingFluid fluid, SteadyState steady) {
        CoolingMargins margins = new CoolingMargins(rig, fluid, steady);
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
            add(rules.film(film));
        }
        steady.capK().ifPresent(k -> add(rules.cap(k)));
    }

    private void water() {
        double inlet = rig.cooling().inletTemperatureK();
        if (steady.waterOutK().isPresent()) {
            double hottest = steady.hottestWaterK().orElseThrow();
            add(rules.waterOut(hottest));
            double limit = limits.waterOutK().orElse(TypicalValues.WATER_OUT_LIMIT_K);
            double rise = Math.max(0, hottest - inlet);
            double least = steady.flow().volumeFlowM3PerS() * rise / Math.max(1e-9, limit - inlet);
            add(MarginMaker.of(MarginId.WATER_FLOW)
                    .value(steady.flow().volumeFlowM3PerS())
                    .atLeast(least)
                    .tightBelow(1.25)
                    .basis(AnswerText.BASIS_WATER_FLOW.say())
                    .cure(AnswerText.CURE_WATER_FLOW));
            add(rules.waterIn(inlet));
        }
        Optional<SupplyKind> limited = Optional.of(rig.cooling().supply().kind())
                .filter(kind -> kind == SupplyKind.CHILLER || kind == SupplyKind.GIVEN_FLOW);
        if (limited.isEmpty()) {
            return;
        }
        MarginMaker chiller = MarginMaker.of(MarginId.CHILLER)
                .value(steady.heatToWaterW() + WaterSizing.pumpHeatW(rig))
                .side(Side.AT_MOST)
                .tightBelow(1.2)
                .basis(AnswerText.MISSING_CHILLER.say())
                .cure(AnswerText.CURE_CHILLER);
        WaterSizing.capacityW(rig)
                .ifPresent(c -> chiller.atMost(c)
                        .basis(
                                rig.cooling().supply().kind() == SupplyKind.CHILLER
                                        ? AnswerText.BASIS_CHILLER_CURVE.say(
                                                Say.temperature(inlet), Say.temperature(roomK))
                                        : AnswerText.BASIS_CHILLER.say()));
        add(chiller);
    }
}
