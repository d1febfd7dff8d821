package boilwright.thermal;

import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;

/**
 * What the source of a rig delivers into a boiler wall held at a temperature: the source's own curve, which meets the pump's
 * need where the rig is at rest. Thermostats are taken as proportional and a cartridge as warm as the room, as at rest.
 */
public final class DeliveredHeat {
    private final SourceBlock source;

    private DeliveredHeat(SourceBlock source) {
        this.source = source;
    }

    /** The source at the last level of the rig's schedule. */
    public static DeliveredHeat of(Rig rig, ParameterValues values) {
        Schedule.Step last = rig.schedule().steps().get(rig.schedule().steps().size() - 1);
        return at(rig, values, last);
    }

    /** The source at full power, whatever the rig's schedule says. */
    public static DeliveredHeat atFullPower(Rig rig, ParameterValues values) {
        return at(rig, values, new Schedule.Power(0, 1));
    }

    /** The source at one level. */
    public static DeliveredHeat at(Rig rig, ParameterValues values, Schedule.Step level) {
        // with the outer face held, the wall behind it has no part in what the source delivers
        SourceBlock source = SourceBlock.of(rig, values, 0);
        source.setStep(level);
        source.setFuelEmpty(false);
        return new DeliveredHeat(source);
    }

    /**
     * Heat through the boiler's outer face, W; negative where the wall is hotter than the source can hold it.
     *
     * @param outerFaceK temperature of the heated outer face (of the wall for an element in the oil), K
     * @param oilK oil temperature, which only a schedule that holds the oil looks at, K
     */
    public double watts(double outerFaceK, double oilK) {
        return source.steadyDeliveredW(outerFaceK, oilK);
    }

    /** Power the source takes for that, W: electrical, or fuel on the gross heating value. */
    public double inputW(double outerFaceK, double oilK) {
        source.steadyDeliveredW(outerFaceK, oilK);
        return source.inputW();
    }
}
