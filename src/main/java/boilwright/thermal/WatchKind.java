package boilwright.thermal;

/** What is watched during a run for the moment at which it changes sign. */
enum WatchKind {
    /** Whether the jet of a stage works. */
    LIT_MODE,
    /** Whether the jet of a stage carries its full flow. */
    FULL_MODE,
    /** The thermostat of the heat source. */
    THERMOSTAT,
    /** The chiller's switch. */
    CHILLER,
    /** The cartridge against its highest temperature. */
    CARTRIDGE_HOT,
    /** The fuel that is left. */
    FUEL_EMPTY,
    /** The gas in the oil. */
    DEGASSED,
    /** The vapour pressure against the foreline's. */
    FIRST_VAPOUR,
    /** The vapour front against the nozzle of a stage. */
    FRONT_AT_STAGE,
    /** A quantity against its limit, one of {@link RunLimits#NAMES}. */
    LIMIT,
    /** A quantity against a limit of a drill, a {@link DrillLimit}. */
    DRILL_LIMIT,
    /** The charge that is left against the least that a run goes on with. */
    DRY,
    /** The oil against the temperature at which a run ends. */
    WILD,
    /** The oil against the temperature at which air may come in. */
    AIR_ALLOWED,
    /** The outer faces against what may be touched. */
    TOUCH_SAFE,
    /** The oil against the temperature at which water and backing pump may stop. */
    WATER_MAY_STOP,
    /** A tank's water against boiling. */
    TANK_HOT,
    /** What ends the run: rest, or a cold pump after heat-off. */
    END
}
