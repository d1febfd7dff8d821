package boilwright.answers;

import boilwright.outgassing.MaterialLibrary;
import boilwright.vacuum.Crossover;
import boilwright.vacuum.GasSource;
import boilwright.vacuum.SourceShare;
import boilwright.vacuum.VacuumState;

/** The gas side in sentences. */
public final class VacuumWords {
    private VacuumWords() {}

    /** What a source is called among others: where two would have one name, each has its number. */
    public static String name(GasSource source, VacuumState among) {
        String plain = name(source);
        boolean alone = among.sources().stream()
                .map(SourceShare::source)
                .noneMatch(other ->
                        !other.path().equals(source.path()) && name(other).equals(plain));
        return alone ? plain : VacuumText.NAME_NUMBERED.say(plain, number(source.path()));
    }

    /** The number, from 1, of the last entry of a list on a path. */
    private static String number(String path) {
        int open = path.lastIndexOf('[');
        int close = path.indexOf(']', open);
        return open < 0 ? path : Integer.toString(Integer.parseInt(path.substring(open + 1, close)) + 1);
    }

    private static String name(GasSource source) {
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

    /** A factor to two figures. */
    public static String factor(double factor) {
        return factor < 10
                ? String.format(java.util.Locale.ROOT, "%.1f", factor)
                : String.format(java.util.Locale.ROOT, "%,d", Math.round(factor))
                        .replace(",", " ");
    }
}
