package boilwright.thermal;

import boilwright.rig.HeatSource;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;

/**
 * What heats the boiler, as a block of the network. It may own states (plate temperature; cartridge temperature and fuel
 * mass). Switching happens through {@link #setLevel} and {@link #setHeaterOn}, never inside the derivative.
 */
interface SourceBlock {
    /** Number of states. */
    int size();

    /** Name of state i, with its unit at the end. */
    String stateName(int i);

    /** Puts the cold starting values at start. */
    void initial(double[] y, int start, double roomK);

    /**
     * Heat through the boiler's outer face and the block's own derivatives.
     *
     * @param y state
     * @param start index of the block's first state
     * @param wallK temperature of the boiler wall's middle, K
     * @param oilK oil temperature, K
     * @param dydt derivatives to fill at the same indices
     */
    void evaluate(double[] y, int start, double wallK, double oilK, double[] dydt);

    /** Heat through the boiler's outer face at the last evaluation, W. */
    double deliveredW();

    /** Power taken from the mains or the fuel at the last evaluation, W. */
    double inputW();

    /** What the source lost elsewhere at the last evaluation, W. */
    double lossW();

    /** True when the heat goes straight into the oil, not through the wall. */
    default boolean heatsLiquid() {
        return false;
    }

    /** True while a flame licks the boiler, whose measured efficiency already holds the vessel's cold losses. */
    default boolean flameOn() {
        return false;
    }

    /** True while the heated area is covered and does not lose heat to the room itself. */
    default boolean coversHeatedArea() {
        return true;
    }

    /** Share of the rated power asked for, and the oil temperature to hold (infinite for none). */
    void setLevel(double fraction, double holdOilK);

    /** On/off thermostat: +1 switch off when the sign rises, see {@link #thermostatExcess}. */
    default void setHeaterOn(boolean on) {}

    /** Whether thermostats and regulators hold the heat back; without them a level above nothing is full power. */
    default void setHeld(boolean held) {}

    /** True while an on/off thermostat has the heater on. */
    default boolean isHeaterOn() {
        return true;
    }

    /** How far the thermostat is beyond its next switching point, K; negative until then. NaN-free; -1 when there is none. */
    default double thermostatExcess(double[] y, int start) {
        return -1;
    }

    /** Marks the cartridge as empty. */
    default void setFuelEmpty(boolean empty) {}

    /**
     * Steady heat that the source delivers into an outer face held at a temperature, at the level set, W. Thermostats are
     * taken as proportional and a cartridge as warm as the room.
     */
    double steadyDeliveredW(double outerFaceK, double oilK);

    /** Temperature of plate, mantle, heater or element in that steady state, K; NaN for a flame. */
    double steadyBodyK();

    /** Temperature of plate, mantle, heater or element in this state, K; NaN when the source has no body. */
    double bodyK(double[] y, int start);

    /** Temperature that can be touched, K; 0 when there is nothing to touch. */
    double touchK(double[] y, int start);

    /** Sets the states to those of the last steady evaluation. */
    void steadyStates(double[] y, int start, double roomK);

    /**
     * The block of the heat source that a rig describes.
     *
     * @param half resistance of half the boiler's wall, K/W
     */
    static SourceBlock of(Rig rig, ParameterValues parameters, double half) {
        HeatSource described = rig.heatSource();
        return switch (described.path()) {
            case FLAME -> new FlameSource(rig, described, parameters, half);
            case CONTACT -> HeatedBody.of(rig, described, parameters, half);
            case OIL -> DirectSource.immersed(described, parameters);
            case BASE ->
                DirectSource.induction(described, rig.boiler().material().isFerrous(), parameters);
            case NOWHERE -> DirectSource.induction(described, false, parameters);
        };
    }

    /** Sets it to a level of a schedule. */
    default void setStep(Schedule.Step step) {
        setLevel(step.level(), step.holdK().orElse(Double.POSITIVE_INFINITY));
    }
}
