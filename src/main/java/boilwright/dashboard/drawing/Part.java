package boilwright.dashboard.drawing;

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
}
