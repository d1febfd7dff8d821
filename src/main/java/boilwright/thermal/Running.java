package boilwright.thermal;

/**
 * What of a rig still works.
 *
 * @param water the water flows
 * @param chiller the chiller cools
 * @param fan the fan turns
 * @param backing the backing pump takes gas
 * @param tight no air comes into the foreline
 * @param heatHeld thermostats and regulators hold the heat back
 * @param fuel the cartridge gives gas
 */
record Running(
        boolean water, boolean chiller, boolean fan, boolean backing, boolean tight, boolean heatHeld, boolean fuel) {
    /** Everything works. */
    static final Running ALL = new Running(true, true, true, true, true, true, true);

    /** From this time on that works. */
    record Change(double atS, Running running) {}

    /** What works right after a fault. */
    static Running after(Fault fault) {
        return switch (fault) {
            case WATER -> new Running(false, true, true, true, true, true, true);
            case MAINS -> throw new IllegalArgumentException("what fails with the mains depends on the rig");
            case HEATER_STUCK -> new Running(true, true, true, true, true, false, true);
            case BACKING -> new Running(true, true, true, false, true, true, true);
            case CARTRIDGE_EMPTY -> new Running(true, true, true, true, true, true, false);
            case AIR_INLET -> new Running(true, true, true, true, false, true, true);
            case CHILLER_TRIP -> new Running(true, false, true, true, true, true, true);
            case FAN -> new Running(true, true, false, true, true, true, true);
        };
    }

    /** Sets a model to it. */
    void applyTo(PumpModel model) {
        model.water.setRunning(water);
        model.supply.setChillerRuns(chiller);
        model.setFanRuns(fan);
        model.foreline.setState(backing, tight);
        model.source.setHeld(heatHeld);
        if (!fuel) {
            model.source.setFuelEmpty(true);
        }
        model.modesChanged();
    }
}
