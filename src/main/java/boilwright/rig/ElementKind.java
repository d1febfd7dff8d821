package boilwright.rig;

/** The kinds of cooling element, as rig files spell them. */
public enum ElementKind {
    JACKET("jacket"),
    SOLDERED_COIL("soldered-coil"),
    CAP_COIL("cap-coil"),
    BAFFLE_COIL("baffle-coil"),
    FORELINE_TRAP("foreline-trap"),
    HOSE("hose"),
    VALVE("valve"),
    RISE("rise");

    private final String id;

    ElementKind(String id) {
        this.id = id;
    }

    /** How a rig file spells it. */
    public String id() {
        return id;
    }
}
