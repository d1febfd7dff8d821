package boilwright.dashboard.drawing;

import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part of the pump that has a reading.
 *
 * @param kind what it is
 * @param index which of its kind, from 0
 */
record Part(Kind kind, int index) {
    /** What a part is. */
    enum Kind {
        INLET,
        CAP,
        JET,
        WALL,
        COLUMN,
        WATER,
        FORELINE,
        VAPOUR,
        BOILER,
        OIL,
        SOURCE,
        TO_BOILER,
        TO_WATER,
        TO_ROOM
    }

    static Part of(Kind kind) {
        return new Part(kind, 0);
    }

    private static final Pattern STAGE = Pattern.compile("stages\\[(\\d+)].*");

    /** The parts of some fields, such as {@code stages[0].throatGap}; fields of no drawn part are left out. */
    static Set<Part> ofFields(Collection<String> paths) {
        Set<Part> parts = new HashSet<>();
        paths.forEach(path -> part(path).ifPresent(parts::add));
        return parts;
    }

    private static Optional<Part> part(String path) {
        Matcher stage = STAGE.matcher(path);
        if (stage.matches()) {
            return Optional.of(new Part(Part.Kind.JET, Integer.parseInt(stage.group(1))));
        }
        String root = path.split("[.\\[]", 2)[0];
        return Optional.ofNullable(
                switch (root) {
                    case "charge", "fluid" -> Part.of(Part.Kind.OIL);
                    case "boiler" -> Part.of(Part.Kind.BOILER);
                    case "column" -> Part.of(Part.Kind.COLUMN);
                    case "body" -> Part.of(Part.Kind.INLET);
                    case "topCap" -> Part.of(Part.Kind.CAP);
                    case "heatSource", "schedule", "session" -> Part.of(Part.Kind.SOURCE);
                    case "cooling" -> Part.of(Part.Kind.WATER);
                    case "foreline" -> Part.of(Part.Kind.FORELINE);
                    case "room" -> Part.of(Part.Kind.TO_ROOM);
                    default -> null;
                });
    }
}
