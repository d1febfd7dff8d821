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

    /** The kind of a cooling element. */
    public static ElementKind of(Cooling.Element element) {
        if (element instanceof Cooling.Jacket) {
            return JACKET;
        }
        if (element instanceof Cooling.SolderedCoil) {
            return SOLDERED_COIL;
        }
        if (element instanceof Cooling.CapCoil) {
            return CAP_COIL;
        }
        if (element instanceof Cooling.CooledPart part) {
            return part.what() == Cooling.Part.BAFFLE ? BAFFLE_COIL : FORELINE_TRAP;
        }
        if (element instanceof Cooling.Hose) {
            return HOSE;
        }
        return element instanceof Cooling.Valve ? VALVE : RISE;
    }
}
