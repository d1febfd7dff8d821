package boilwright.rig;

/** The kinds of cooling supply, as rig files spell them. */
public enum SupplyKind {
    GIVEN_FLOW("given-flow"),
    CHILLER("chiller"),
    TAP("tap"),
    TANK("tank"),
    FINS_AND_FAN("fins-and-fan");

    private final String id;

    SupplyKind(String id) {
        this.id = id;
    }

    /** How a rig file spells it. */
    public String id() {
        return id;
    }
}
