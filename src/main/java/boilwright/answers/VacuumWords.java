package boilwright.answers;

import boilwright.outgassing.MaterialLibrary;
import boilwright.rig.GasSide;
import boilwright.rig.Rig;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.vacuum.Crossover;
import boilwright.vacuum.GasSource;
import boilwright.vacuum.SourceShare;
import boilwright.vacuum.VacuumState;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The gas side in sentences. */
public final class VacuumWords {
    /** The line is to blame when it leaves less than this of the pump's speed. */
    private static final double LITTLE_SPEED = 0.2;

    private VacuumWords() {}

    /** What a source is called. */
    public static String name(GasSource source) {
        return switch (source.kind()) {
            case SURFACE -> VacuumText.NAME_SURFACE.say(title(source.name()));
            case SEAL -> VacuumText.NAME_SEAL.say(title(source.name()));
            case PIECE -> VacuumText.NAME_PIECE.say(source.name());
            case LEAK -> VacuumText.NAME_LEAK.say(source.name());
            case BACK_DIFFUSION -> VacuumText.NAME_BACK_DIFFUSION.say();
            case OIL_VAPOUR -> VacuumText.NAME_OIL_VAPOUR.say();
            case BACKING_PUMP -> VacuumText.NAME_BACKING.say();
        };
    }

    private static String title(String material) {
        return MaterialLibrary.builtIn().find(material).inWords();
    }

    static String verdict(Rig rig, SteadyState steady, VacuumState end, double lookS, List<Fix> fixes) {
        StringBuilder text = new StringBuilder(VacuumText.VERDICT_SETTLES.say(
                Say.time(lookS), Say.pressure(end.gaugePa()), Say.pressure(end.inletPa())));
        rig.vacuum()
                .map(GasSide::targetPa)
                .orElseThrow()
                .ifPresent(target -> add(
                        text,
                        (end.gaugePa() <= target ? VacuumText.VERDICT_TARGET_MET : VacuumText.VERDICT_TARGET_MISSED)
                                .say(Say.pressure(target))));
        add(text, blame(rig, steady, end));
        fixes.stream()
                .filter(fix -> steady.speedM3PerS() > 0)
                .findFirst()
                .ifPresent(fix -> add(
                        text,
                        VacuumText.VERDICT_FIX.say(fix.title(), Say.pressure(fix.gaugePa()), factor(fix.factor()))));
        return text.toString();
    }

    private static String blame(Rig rig, SteadyState steady, VacuumState end) {
        StageState top = steady.stages().get(steady.stages().size() - 1);
        if (!top.lit()) {
            return VacuumText.VERDICT_DARK.say(top.name());
        }
        if (end.overloaded()) {
            return VacuumText.VERDICT_OVERLOADED.say(
                    QuantityWriter.writeAuto(end.gasPaM3PerS(), Dimension.GAS_FLOW),
                    QuantityWriter.writeAuto(steady.throughputPaM3PerS(), Dimension.GAS_FLOW));
        }
        SourceShare first = end.sources().get(0);
        GasSource.Kind kind = first.source().kind();
        if (kind == GasSource.Kind.BACK_DIFFUSION || kind == GasSource.Kind.OIL_VAPOUR) {
            return VacuumText.VERDICT_ULTIMATE.say();
        }
        String name = name(first.source());
        double left = end.chamberSpeedM3PerS() / end.pumpSpeedM3PerS();
        boolean full = steady.stages().stream().allMatch(StageState::full);
        OptionalDouble target = rig.vacuum().orElseThrow().targetPa();
        boolean good = target.isPresent() && end.gaugePa() <= target.getAsDouble();
        String cause = full && !good && left < LITTLE_SPEED
                ? VacuumText.VERDICT_PLUMBING.say(name, percent(first.share()), percent(left))
                : VacuumText.VERDICT_SOURCE.say(name, percent(first.share()));
        if (full) {
            return cause;
        }
        String dim = steady.stages().stream()
                .filter(stage -> !stage.full())
                .map(StageState::name)
                .collect(Collectors.joining(", "));
        return cause + " " + VacuumText.VERDICT_NOT_FULL.say(dim);
    }

    static String crossover(Crossover crossover, boolean known) {
        String allowed = Say.pressure(crossover.allowedPa());
        if (!known) {
            return VacuumText.CROSSOVER_UNKNOWN.say(allowed);
        }
        if (!crossover.aroundPump()) {
            return VacuumText.CROSSOVER_THROUGH.say(Say.time(crossover.roughingS()), allowed);
        }
        return crossover.timeS().isPresent()
                ? VacuumText.CROSSOVER_AT.say(
                        Say.time(crossover.roughingS()),
                        allowed,
                        Say.time(crossover.timeS().getAsDouble()),
                        Say.time(crossover.overloadS()))
                : VacuumText.CROSSOVER_NEVER.say(allowed);
    }

    private static void add(StringBuilder text, String sentence) {
        text.append(' ').append(sentence);
    }

    private static String percent(double share) {
        return QuantityWriter.writeAuto(share, Dimension.FRACTION);
    }

    /** A factor to two figures. */
    public static String factor(double factor) {
        return factor < 10
                ? String.format(java.util.Locale.ROOT, "%.1f", factor)
                : String.format(java.util.Locale.ROOT, "%,d", Math.round(factor))
                        .replace(",", " ");
    }
}
