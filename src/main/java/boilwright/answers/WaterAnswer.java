package boilwright.answers;

import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The cooling side of one rig.
 *
 * @param check the check of the whole rig, from which the cooling's part is taken
 * @param forFullJets true where as described not every jet is full: every figure is then for full jets
 * @param verdict what it comes to, in sentences
 * @param elements the elements in the order of the rig
 * @param peakDutyW highest heat into the water along the warm-up, W
 * @param restDutyW heat into the water at rest, W
 * @param pumpHeatW heat of the supply's pump, W
 * @param capacityW what the supply carries away at its set point and in this room, W; empty when not known or not limited
 * @param settlesAtK where a chiller that is too weak settles, K; empty when it keeps its set point or runs beyond what is known
 * @param leastFlows the least flow for each limit
 * @param governing the limit that asks for the most flow; empty when none asks
 * @param chillerW smallest chiller, with a reserve of 20 %, at set point and room, W; empty without flowing water
 * @param pumpFlowM3PerS flow that a pump has to bring, 25 % more than the least, m3/s; empty when no flow is enough
 * @param pumpHeadPa pressure that the circuit takes at that flow, Pa
 * @param tank how long a tank lasts; empty for other supplies
 * @param sessionS length of the session, s
 * @param iceKg ice that keeps the water good through the session, kg
 * @param turnedRound the same rig with its water led the other way round; empty when there is nothing to turn
 * @param margins the margins of the cooling side, worst first
 * @param cures what would make a chiller enough, each worked out; empty when it is enough
 * @param notes assumptions and remarks
 */
public record WaterAnswer(
        CheckAnswer check,
        boolean forFullJets,
        String verdict,
        List<Element> elements,
        double peakDutyW,
        double restDutyW,
        double pumpHeatW,
        OptionalDouble capacityW,
        OptionalDouble settlesAtK,
        List<LeastFlow> leastFlows,
        Optional<LeastFlow> governing,
        OptionalDouble chillerW,
        OptionalDouble pumpFlowM3PerS,
        OptionalDouble pumpHeadPa,
        Optional<Tank> tank,
        double sessionS,
        double iceKg,
        Optional<SteadyState> turnedRound,
        List<Margin> margins,
        List<String> cures,
        List<String> notes) {
    /** At most this a limit asks for no flow worth a number, m3/s (0.02 L/min): twice where the search for the least flow ends. */
    public static final double HARDLY_ANY_M3_PER_S = 0.02e-3 / 60;

    public WaterAnswer {
        elements = List.copyOf(elements);
        leastFlows = List.copyOf(leastFlows);
        margins = List.copyOf(margins);
        cures = List.copyOf(cures);
        notes = List.copyOf(notes);
    }

    /** The rig at rest with full jets. */
    public SteadyState steady() {
        return fullJets(check);
    }

    /** The state that the cooling is sized for: at rest where every jet is full, else that in which the weakest just would be. */
    static SteadyState fullJets(CheckAnswer check) {
        return check.steady().stages().stream().allMatch(StageState::full)
                ? check.steady()
                : check.needed().state();
    }

    /** Whether some margin of the cooling fails. */
    public boolean anyFails() {
        return margins.stream().anyMatch(Margin::fails);
    }

    /**
     * One element.
     *
     * @param name what it is called
     * @param inletK water that enters, K
     * @param outletK water that leaves, K
     * @param flowKgPerS water through it, kg/s
     * @param heatW heat that the water takes up, W
     * @param coefficient heat transfer coefficient, W/(m2 K); empty where no wall is cooled
     * @param reynolds Reynolds number at the inlet of the circuit; empty for valves and rises
     * @param pressureDropPa pressure lost, Pa
     */
    public record Element(
            String name,
            double inletK,
            double outletK,
            double flowKgPerS,
            double heatW,
            OptionalDouble coefficient,
            OptionalDouble reynolds,
            double pressureDropPa) {}

    /**
     * The least flow that keeps a limit.
     *
     * @param limit the margin
     * @param flowM3PerS flow, m3/s; empty when no flow up to 100 L/min is enough
     */
    public record LeastFlow(MarginId limit, OptionalDouble flowM3PerS) {}

    /**
     * How long a tank lasts.
     *
     * @param runTimeS from cold until its water passes the limit, s; empty when it never does
     * @param limitK the limit, K
     * @param iceKg ice in it at the start, kg
     */
    public record Tank(OptionalDouble runTimeS, double limitK, double iceKg) {}
}
