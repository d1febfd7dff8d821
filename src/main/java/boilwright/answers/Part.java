package boilwright.answers;

/** Which part of a rig a margin is about; each command answers for some of them. */
public enum Part {
    /** The source and what it brings into the boiler. */
    HEAT("heat"),
    /** The jets and what they need to work. */
    JETS("jets"),
    /** The oil, in bulk and at the wall, and where it goes. */
    OIL("oil"),
    /** Glass under stress. */
    GLASS("glass"),
    /** Water, walls that it cools, and what stands behind it. */
    COOLING("cooling"),
    /** Chamber, line and gauge. */
    GAS("gas");

    private final String id;

    Part(String id) {
        this.id = id;
    }

    /** How files spell it. */
    public String id() {
        return id;
    }
}
