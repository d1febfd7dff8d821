package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import boilwright.water.CircuitSolver;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The cooling of a rig at rest with full jets, worked out in milliseconds: for trying a temperature, a flow or another supply.
 *
 * @param inletK temperature at which the cooling enters, K
 * @param flowM3PerS water flow, m3/s; 0 when none flows
 * @param waterOutK water that leaves, K; empty when none flows
 * @param filmMarginK least margin of the film on the walls, K; empty when no jet has vapour
 * @param dutyW heat that the supply takes up: that of the water and of its pump, W
 * @param capacityW what the supply carries away, W; empty when not known or not limited
 * @param margins the margins of the cooling, worst first
 */
public record WaterTrial(
        double inletK,
        double flowM3PerS,
        OptionalDouble waterOutK,
        OptionalDouble filmMarginK,
        double dutyW,
        OptionalDouble capacityW,
        List<Margin> margins) {
    public WaterTrial {
        margins = List.copyOf(margins);
    }

    /** The margin that is nearest to its limit, or farthest beyond; empty when none is known. */
    public Optional<Margin> worst() {
        return margins.stream().filter(m -> m.status() != Margin.Status.UNKNOWN).findFirst();
    }

    /**
     * A rig as it is.
     *
     * @param asked the rig
     * @param cancel stops the computation
     * @throws boilwright.errors.InputRefusedException when the supply cannot lift the water, or the capacity at its
     *     temperature is not known
     * @throws boilwright.errors.ComputationException when no state of rest is found
     */
    public static WaterTrial of(Asked asked, CancelToken cancel) {
        return of(asked, asked.rig(), cancel);
    }

    /**
     * A rig whose water has another temperature, and another flow whatever drives it. Errors as for {@link #of(Asked,
     * CancelToken)}.
     *
     * @param temperatureK temperature at which the cooling enters, K
     * @param flowM3PerS flow, m3/s; empty for the one that supply and circuit agree on
     */
    public static WaterTrial of(Asked asked, double temperatureK, OptionalDouble flowM3PerS, CancelToken cancel) {
        Rig rig = asked.rig();
        Cooling cooling = rig.cooling();
        Rig tempered = rig.withCooling(new Cooling(cooling.supply().withTemperature(temperatureK), cooling.elements()));
        Rig forced = flowM3PerS.isEmpty()
                ? tempered
                : rig.withCooling(new Cooling(
                        new Supply.GivenFlow(temperatureK, flowM3PerS.getAsDouble(), OptionalDouble.empty()),
                        cooling.elements()));
        return of(asked.with(tempered, asked.values()), forced, cancel);
    }

    /** What flows is that of one rig; what its supply can do, and where its limits are, that of the other. */
    private static WaterTrial of(Asked asked, Rig flowing, CancelToken cancel) {
        Rig rig = asked.rig();
        cancel.check();
        OptionalDouble capacity = WaterSizing.capacityW(rig);
        SteadySolver solver = new SteadySolver(flowing, asked.tables(), asked.values());
        SteadyState now = solver.steady();
        SteadyState steady = now.stages().stream().allMatch(StageState::full)
                ? now
                : solver.needed().state();
        cancel.check();
        return new WaterTrial(
                rig.cooling().inletTemperatureK(),
                CircuitSolver.operatingPoint(flowing).volumeFlowM3PerS(),
                steady.waterOutK(),
                WaterSizing.filmMarginK(steady),
                steady.heatToWaterW() + WaterSizing.pumpHeatW(rig),
                capacity,
                Margins.worstFirst(CoolingMargins.of(rig, asked.fluid(), steady)));
    }
}
