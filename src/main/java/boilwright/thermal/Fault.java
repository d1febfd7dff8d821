package boilwright.thermal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What fails in a drill. Names in files and on the command line are the constants' names in lower case with hyphens. */
public enum Fault {
    /** The water stops; it stands in jackets and coils. */
    WATER,
    /** The mains fail: electric heat, pumps, chiller and fan stop, a flame burns on. */
    MAINS,
    /** Whatever holds the heat back fails: it stands at full power until somebody or something cuts it. */
    HEATER_STUCK,
    /** The backing pump stops taking gas; no air comes back through it. */
    BACKING,
    /** The gas cartridge is empty. */
    CARTRIDGE_EMPTY,
    /** Air comes into the foreline through an opening. */
    AIR_INLET,
    /** The chiller cools no more; its pump runs on. */
    CHILLER_TRIP,
    /** The fan stops. */
    FAN;

    /** Name in files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The fault of this name. */
    public static Optional<Fault> of(String id) {
        return Arrays.stream(values()).filter(f -> f.id().equals(id)).findFirst();
    }

    /** All names. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(Fault::id).toList();
    }
}
