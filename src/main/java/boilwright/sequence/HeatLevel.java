package boilwright.sequence;

import boilwright.rig.Schedule;
import java.util.OptionalDouble;

/**
 * What the heat source is set to.
 *
 * @param fraction share of the rated power, 0 to 1; 1 while an oil temperature is held
 * @param holdOilK oil temperature to hold, K; empty for a fixed power
 */
public record HeatLevel(double fraction, OptionalDouble holdOilK) {
    /** Nothing. */
    public static final HeatLevel OFF = new HeatLevel(0, OptionalDouble.empty());

    /** The level of a step of a schedule. */
    static HeatLevel of(Schedule.Step step) {
        return new HeatLevel(step.level(), step.holdK());
    }

    /** A step of a schedule that sets this level. */
    Schedule.Step at(double seconds) {
        return holdOilK.isPresent()
                ? new Schedule.HoldOil(seconds, holdOilK.getAsDouble())
                : new Schedule.Power(seconds, fraction);
    }

    boolean isOn() {
        return fraction > 0;
    }
}
