package boilwright.rig;

/** The kinds of piece of a vacuum line, as rig files spell them. */
public enum PieceKind {
    TUBE("tube"),
    HOSE("hose"),
    ELBOW("elbow"),
    APERTURE("aperture"),
    REDUCER("reducer"),
    VALVE("valve"),
    OPAQUE_COIL("opaque-coil"),
    CHEVRON("chevron"),
    LOUVRE("louvre");

    private final String id;

    PieceKind(String id) {
        this.id = id;
    }

    /** How a rig file spells it. */
    public String id() {
        return id;
    }

    /** Whether it is there to hold oil back: a baffle. */
    public boolean isBaffle() {
        return this == OPAQUE_COIL || this == CHEVRON || this == LOUVRE;
    }
}
