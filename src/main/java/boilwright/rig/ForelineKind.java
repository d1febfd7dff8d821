package boilwright.rig;

/** The kinds of foreline, as rig files spell them. */
public enum ForelineKind {
    GIVEN_PRESSURE,
    BACKING_PUMP;

    /** How a rig file spells it. */
    public String id() {
        return FieldCatalogue.id(this);
    }
}
