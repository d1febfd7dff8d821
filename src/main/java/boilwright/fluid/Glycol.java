package boilwright.fluid;

/** The glycols that keep cooling water from freezing. */
public enum Glycol {
    /** Ethane-1,2-diol. */
    ETHYLENE("ethylene-glycol-water"),
    /** Propane-1,2-diol. */
    PROPYLENE("propylene-glycol-water");

    private final String id;

    Glycol(String id) {
        this.id = id;
    }

    /** Name of its mixture with water, and of the file with its data. */
    public String id() {
        return id;
    }
}
