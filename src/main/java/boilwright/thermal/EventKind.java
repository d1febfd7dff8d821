package boilwright.thermal;

/** What can happen in a run: in a warm-up, a cool-down or a drill. */
public enum EventKind {
    /** The heat source is switched on. */
    HEAT_ON("heat-on"),
    /** Nearly all gas has left the oil. */
    DEGASSED("degassed"),
    /** The vapour pressure of the oil passes the foreline's. */
    FIRST_VAPOUR("first-vapour"),
    /** The vapour front reaches the nozzle of a stage. */
    FRONT_AT_STAGE("front-at-stage"),
    /** The jet of a stage lights. */
    JET_LIT("jet-lit"),
    /** The jet of a stage carries its full flow. */
    JET_FULL("jet-full"),
    /** Every jet carries its full flow, for good. */
    FULL_PUMPING("full-pumping"),
    /** The chamber may be joined to the working pump. */
    CROSSOVER_ALLOWED("crossover-allowed"),
    /** A limit is passed; the reason names it. */
    LIMIT_REACHED("limit-reached"),
    /** The cartridge of a burner is used up. */
    FUEL_EMPTY("fuel-empty"),
    /** The heat source is switched off. */
    HEAT_OFF("heat-off"),
    /** The jet of a stage goes out. */
    JET_LOST("jet-lost"),
    /** The boiler gives no vapour any more. */
    FLOW_ZERO("flow-zero"),
    /** The last jet has gone out. */
    JETS_GONE("jets-gone"),
    /** The oil is cold enough for air. */
    AIR_ALLOWED("air-allowed"),
    /** Every outer face is cold enough to touch. */
    TOUCH_SAFE("touch-safe"),
    /** The cooling water may be shut off. */
    WATER_MAY_STOP("water-may-stop"),
    /** The backing pump may be stopped. */
    BACKING_MAY_STOP("backing-may-stop"),
    /** What a drill lets fail fails. */
    FAULT("fault"),
    /** The cooling water of a drill stops. */
    WATER_STOPS("water-stops"),
    /** The battery that kept something going through a drill is empty. */
    BATTERY_ENDS("battery-ends");

    private final String id;

    EventKind(String id) {
        this.id = id;
    }

    /** How files spell it. */
    public String id() {
        return id;
    }
}
