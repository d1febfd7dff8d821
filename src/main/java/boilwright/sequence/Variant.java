package boilwright.sequence;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a plan is for. */
public enum Variant {
    /** The first heating of a fresh charge: slowly, until its gas is out. */
    FIRST("first", false),
    /** From cold to pumping to cold. */
    NORMAL("normal", false),
    /** A pause: the pump stays hot, the chamber may be opened. */
    STANDBY("standby", true),
    /** The shortest safe way from pumping until one may leave. */
    QUICK_STOP("quick-stop", true),
    /** Something is wrong: what comes first. */
    EMERGENCY("emergency", true);

    private final String id;
    private final boolean fromHot;

    Variant(String id, boolean fromHot) {
        this.id = id;
        this.fromHot = fromHot;
    }

    /** Name in files and on the command line. */
    public String id() {
        return id;
    }

    /** Whether it begins with a hot pump at work. */
    public boolean isFromHot() {
        return fromHot;
    }

    /** The variant of this name. */
    public static Optional<Variant> of(String id) {
        return Arrays.stream(values()).filter(v -> v.id.equals(id)).findFirst();
    }

    /** All names. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(Variant::id).toList();
    }
}
