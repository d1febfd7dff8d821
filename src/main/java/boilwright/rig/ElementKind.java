package boilwright.rig;

/** The kinds of cooling element, as rig files spell them. */
public enum ElementKind {
    JACKET("jacket"),
    SOLDERED_COIL("soldered-coil"),
    CAP_COIL("cap-coil");

    private final String id;

    ElementKind(String id) {
        this.id = id;
    }

    /** How a rig file spells it. */
    public String id() {
        return id;
    }

    /** The kind of a cooling element. */
    public static ElementKind of(Cooling.Element element) {
        if (element instanceof Cooling.Jacket) {
            return JACKET;
        }
        return element instanceof Cooling.SolderedCoil ? SOLDERED_COIL : CAP_COIL;
    }
}
