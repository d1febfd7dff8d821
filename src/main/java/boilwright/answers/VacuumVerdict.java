package boilwright.answers;

import boilwright.answers.VacuumStage.Step;
import boilwright.thermal.SteadyState;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.vacuum.GasSource;
import boilwright.vacuum.SourceShare;
import boilwright.vacuum.VacuumState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What holds the gauge up, in sentences. Heat or the gas side alone is blamed only where curing it alone meets the target and
 * curing the other alone does not; both were tried.
 */
final class VacuumVerdict {
    private final CheckAnswer check;
    private final SteadyState steady;
    private final VacuumState end;
    private final double lookS;
    private final List<VacuumStage> stages;
    private final List<Fix> fixes;
    private final OptionalDouble target;

    VacuumVerdict(CheckAnswer check, VacuumState end, double lookS, List<VacuumStage> stages, List<Fix> fixes) {
        this.check = check;
        this.end = end;
        this.lookS = lookS;
        this.stages = stages;
        this.fixes = fixes;
        steady = check.steady();
        target = check.rig().vacuum().orElseThrow().targetPa();
    }

    String text() {
        List<String> said = new ArrayList<>();
        said.add(VacuumText.VERDICT_SETTLES.say(
                Say.time(lookS), Say.pressure(end.gaugePa()), Say.pressure(end.inletPa())));
        boolean met = target.isPresent() && end.gaugePa() <= target.getAsDouble();
        target.ifPresent(pa -> said.add(
                (met ? VacuumText.VERDICT_TARGET_MET : VacuumText.VERDICT_TARGET_MISSED).say(Say.pressure(pa))));
        Optional<VacuumStage> full = stage(Step.JETS_FULL);
        full.ifPresent(stage -> {
            said.add(Verdict.whyNotFull(check));
            said.add(VacuumText.VERDICT_WITH_JETS.say(Say.pressure(stage.gaugePa())));
        });
        said.add(source());
        if (!met) {
            if (target.isPresent()) {
                said.add(full.isPresent() ? heatOrGas() : VacuumText.BLAME_GAS_WITH_FULL_JETS.say());
            }
            bestChange(full.isPresent()).ifPresent(said::add);
        }
        return String.join(" ", said);
    }

    private Optional<VacuumStage> stage(Step step) {
        return stages.stream().filter(s -> s.step() == step).findFirst();
    }

    private boolean meets(Step step) {
        return stage(step).flatMap(VacuumStage::meetsTarget).orElse(false);
    }

    private String heatOrGas() {
        boolean heat = meets(Step.JETS_FULL);
        boolean gas = meets(Step.BEST_CHANGE);
        if (heat && gas) {
            return VacuumText.BLAME_EITHER.say();
        } else if (heat) {
            return VacuumText.BLAME_HEAT.say();
        } else if (gas) {
            return VacuumText.BLAME_GAS.say();
        }
        return (meets(Step.BOTH) ? VacuumText.BLAME_BOTH : VacuumText.BLAME_BOTH_AND_MORE)
                .say(Say.pressure(stage(Step.BOTH)
                        .or(() -> stage(Step.JETS_FULL))
                        .orElseThrow()
                        .gaugePa()));
    }

    private String source() {
        if (steady.speedM3PerS() > 0 && end.overloaded()) {
            return VacuumText.VERDICT_OVERLOADED.say(
                    QuantityWriter.writeAuto(end.gasPaM3PerS(), Dimension.GAS_FLOW),
                    QuantityWriter.writeAuto(steady.throughputPaM3PerS(), Dimension.GAS_FLOW));
        }
        SourceShare first = end.sources().get(0);
        GasSource.Kind kind = first.source().kind();
        if (kind == GasSource.Kind.BACK_DIFFUSION || kind == GasSource.Kind.OIL_VAPOUR) {
            return VacuumText.VERDICT_ULTIMATE.say();
        }
        String left = percent(end.chamberSpeedM3PerS() / end.pumpSpeedM3PerS());
        String name = VacuumWords.name(first.source(), end);
        return steady.speedM3PerS() > 0
                ? VacuumText.VERDICT_SOURCE.say(name, percent(first.share()), left)
                : VacuumText.VERDICT_SOURCE_DARK.say(name, percent(first.share()));
    }

    /** Where jets are not full, what keeps them from it comes first, and no change of the gas side is the best one. */
    private Optional<String> bestChange(boolean jetsMissing) {
        return fixes.stream()
                .findFirst()
                .filter(fix -> steady.speedM3PerS() > 0)
                .map(fix -> (jetsMissing ? VacuumText.VERDICT_NEXT_CHANGE : VacuumText.VERDICT_FIX)
                        .say(fix.title(), Say.pressure(fix.gaugePa()), VacuumWords.factor(fix.factor())));
    }

    private static String percent(double share) {
        return QuantityWriter.writeAuto(share, Dimension.FRACTION);
    }
}
