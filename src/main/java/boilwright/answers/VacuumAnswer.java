package boilwright.answers;

import boilwright.vacuum.VacuumState;
import boilwright.vacuum.VacuumTimeline;
import java.util.List;

/**
 * The gas side of one rig.
 *
 * @param check the check of the whole rig
 * @param verdict what it comes to, in sentences
 * @param lookS how long after the foreline is down the end is, s
 * @param gas what flows, as it is spelt
 * @param before pressures at rest with the gas of the moment at which all jets are full (or the warm-up ends)
 * @param end pressures at the end
 * @param timeline pressures against time
 * @param stages the gauge now, with the best single change, and, where not every jet is full, with every jet full and with both
 * @param fixes every single change that lowers the gauge, the best first
 * @param waiting what mere pumping brings, without any change
 * @param crossover when the jets may take over, in sentences
 * @param backstreamingKgPerM2S oil that evaporates towards the chamber, kg per second and m2 of the pump's opening; an estimate
 *     within a factor of ten
 * @param margins margins of the gas side, worst first
 * @param cautions what can hurt someone
 * @param notes assumptions and remarks
 */
public record VacuumAnswer(
        CheckAnswer check,
        String verdict,
        double lookS,
        String gas,
        VacuumState before,
        VacuumState end,
        VacuumTimeline timeline,
        List<VacuumStage> stages,
        List<Fix> fixes,
        List<Fix> waiting,
        String crossover,
        double backstreamingKgPerM2S,
        List<Margin> margins,
        List<String> cautions,
        List<String> notes) {
    public VacuumAnswer {
        stages = List.copyOf(stages);
        fixes = List.copyOf(fixes);
        waiting = List.copyOf(waiting);
        margins = List.copyOf(margins);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** Whether some margin of the gas side fails. */
    public boolean anyFails() {
        return margins.stream().anyMatch(Margin::fails);
    }
}
