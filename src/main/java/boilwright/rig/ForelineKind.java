package boilwright.rig;

/** The kinds of foreline, as rig files spell them. */
public enum ForelineKind {
    GIVEN_PRESSURE,
    BACKING_PUMP;

    /** How a rig file spells it. */
    public String id() {
        return FieldCatalogue.id(this);
    }

    /** The kind of a foreline. */
    public static ForelineKind of(Foreline foreline) {
        return foreline instanceof Foreline.GivenPressure ? GIVEN_PRESSURE : BACKING_PUMP;
    }
}
