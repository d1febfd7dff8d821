package boilwright.choice;

import boilwright.answers.Asked;
import boilwright.answers.HeatLimiter;
import boilwright.answers.RestAnswer;
import boilwright.errors.ComputationException;
import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.rig.Boiler;
import boilwright.rig.HeatSource;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import boilwright.thermal.DeliveredHeat;
import boilwright.thermal.NeededState;
import boilwright.thermal.SteadySolver;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * One rig tried with other heat: what it needs and what comes of it, each worked out once. For one thread.
 *
 * <p>What a pump needs depends on its boiler and on how it is heated (from outside, by a flame, in the oil), not on the
 * source's rating, contact or limit; so one needed state serves many of them.
 */
final class HeatTrial {
    private record NeedKey(Boiler boiler, SourceKind kind) {}

    private final Asked asked;
    private final CancelToken cancel;
    private final Map<NeedKey, NeededState> needs = new HashMap<>();
    private final Map<HeatSource, Optional<RestAnswer>> rests = new HashMap<>();

    /** Of any rig with this fluid and these parameter values. */
    HeatTrial(Asked asked, CancelToken cancel) {
        this.asked = asked;
        this.cancel = cancel;
    }

    ParameterValues values() {
        return asked.values();
    }

    TabulatedFluid tables() {
        return asked.tables();
    }

    /** The state in which the weakest jet is just full; the rig differs in source and boiler only. */
    NeededState needed(Rig rig) {
        NeedKey key = new NeedKey(rig.boiler(), rig.heatSource().kind());
        return needs.computeIfAbsent(key, k -> {
            cancel.check();
            return new SteadySolver(rig, asked.tables(), asked.values()).needed();
        });
    }

    /** Heat that the source could deliver there over heat needed. */
    double ratio(Rig rig) {
        NeededState needed = needed(rig);
        double available = DeliveredHeat.of(rig, asked.values())
                .watts(needed.state().outerFaceK(), needed.state().liquidTemperatureK());
        return available / needed.heatNeededW();
    }

    /** What keeps the source from delivering more there. */
    HeatLimiter limiter(Rig rig) {
        NeededState needed = needed(rig);
        double available = ratio(rig) * needed.heatNeededW();
        return HeatLimiter.of(
                rig,
                asked.values(),
                new NeededState(needed.state(), needed.governingStage(), needed.heatNeededW(), available));
    }

    /** The rig at rest; it differs in its source only. Empty where the oil would leave every range that is known. */
    Optional<RestAnswer> rest(Rig rig) {
        return rests.computeIfAbsent(rig.heatSource(), s -> {
            cancel.check();
            try {
                return Optional.of(RestAnswer.of(asked.with(rig, asked.values())));
            } catch (ComputationException e) {
                return Optional.empty();
            }
        });
    }
}
