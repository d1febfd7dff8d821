package boilwright.thermal;

/** What a fault can break, in the words of the trade. */
public enum DrillLimit {
    /** The film on the wall is so warm that less than half of a driven jet condenses: it stops pumping. */
    FILM(true),
    /** The top cap is too warm to hold oil back. */
    CAP(true),
    /** Water that stands in a jacket or coil boils. */
    WATER_BOILS(true),
    /** Glass is so hot that water let back on it would crack it. */
    COLD_SHOCK(true),
    /** The oil is hotter than it bears. */
    OIL(true),
    /** A hundredth of the charge has left into the foreline. */
    OIL_LOSS(true),
    /** More air in the foreline than hot oil may meet. */
    FORELINE(true),
    /** An outside face is too hot to touch. */
    TOUCH(false);

    /** Highest foreline pressure while the oil is too hot for air, Pa (0.5 Torr): common practice, no source. */
    public static final double FORELINE_WITH_HOT_OIL_PA = 66.5;

    private final boolean harms;

    DrillLimit(boolean harms) {
        this.harms = harms;
    }

    /** True when passing it harms pump, charge or people by itself; a hot face only when it is touched. */
    public boolean harms() {
        return harms;
    }
}
