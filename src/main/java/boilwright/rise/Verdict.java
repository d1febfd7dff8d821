package boilwright.rise;

/** What makes the pressure rise. */
public enum Verdict {
    /** A steady inflow. */
    LEAK("leak"),
    /** Gas that the surfaces give off. */
    SURFACE_GAS("surface-gas"),
    /** Both, and each of them shows. */
    MIXED("mixed"),
    /** The record does not tell. */
    UNDECIDED("undecided");

    private final String id;

    Verdict(String id) {
        this.id = id;
    }

    /** Its name for other programs. */
    public String id() {
        return id;
    }
}
