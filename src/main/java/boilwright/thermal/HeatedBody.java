package boilwright.thermal;

import boilwright.numerics.Roots;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;

/**
 * A heated mass that touches the boiler: plate, mantle, clamped heater or susceptor. Its power heats its own capacity; what
 * passes the contact heats the boiler; the rest of its faces lose to the room.
 */
final class HeatedBody implements SourceBlock {
    /** Band of a proportional thermostat and hysteresis of an on/off one, K. */
    static final double BAND_K = 10;

    /** How far a thermostat that does not switch stands from switching, K: any figure that is not -1, which means none. */
    private static final double HELD_OFF_K = 100;

    private final double ratedW;
    private final double inputPerHeat;
    private final double contactConductance;
    private final double halfResistance;
    private final double heatCapacity;
    private final double limitK;
    private final boolean onOff;
    private final double lossAreaM2;
    private final SurfaceLoss loss;
    private final double roomK;
    private double fraction = 1;
    private double holdK = Double.POSITIVE_INFINITY;
    private boolean heaterOn = true;
    private boolean held = true;
    private double delivered;
    private double faceK;
    private double input;
    private double lost;
    private double steadyK;

    private HeatedBody(
            Rig rig,
            double ratedW,
            double inputPerHeat,
            double contactConductance,
            double halfResistance,
            double heatCapacity,
            double limitK,
            boolean onOff,
            double lossAreaM2,
            SurfaceLoss loss) {
        this.ratedW = ratedW;
        this.inputPerHeat = inputPerHeat;
        this.contactConductance = contactConductance;
        this.halfResistance = halfResistance;
        this.heatCapacity = heatCapacity;
        this.limitK = limitK;
        this.onOff = onOff;
        this.lossAreaM2 = lossAreaM2;
        this.loss = loss;
        roomK = rig.room().temperatureK();
        steadyK = roomK;
    }

    /**
     * The heated mass of a source.
     *
     * @param source a source that touches
     * @param halfResistance resistance of half the boiler's wall, K/W
     */
    static HeatedBody of(Rig rig, HeatSource source, ParameterValues values, double halfResistance) {
        ContactBody body = source.body().orElseThrow();
        return new HeatedBody(
                rig,
                source.ratedPowerW() * source.efficiency() * values.get(Parameter.SUPPLY_POWER_FACTOR),
                1 / source.efficiency(),
                body.conductance(values) * body.areaM2(),
                halfResistance,
                body.heatCapacity(),
                body.limitK(),
                body.thermostat() == HeatSource.Thermostat.ON_OFF,
                body.lossAreaM2(),
                loss(rig, body));
    }

    /** Share of full power of a controller that falls to zero over the band below its set point. */
    static double proportional(double setK, double actualK) {
        return Math.max(0, Math.min(1, (setK - actualK) / BAND_K));
    }

    private static SurfaceLoss loss(Rig rig, ContactBody body) {
        double height = Math.max(0.02, Math.sqrt(body.lossAreaM2()) / 2);
        return new SurfaceLoss(
                height,
                body.lossEmissivity(),
                body.insulationThicknessM(),
                body.insulationConductivity(),
                rig.room().temperatureK());
    }

    @Override
    public int size() {
        return 1;
    }

    @Override
    public String stateName(int i) {
        return SeriesQuantity.SOURCE_TEMPERATURE.key();
    }

    @Override
    public void initial(double[] y, int start, double room) {
        y[start] = room;
    }

    @Override
    public void evaluate(double[] y, int start, double wallK, double oilK, double[] dydt) {
        double bodyK = y[start];
        double power = ratedW * fraction * (held ? proportional(holdK, oilK) : 1);
        if (held && onOff) {
            power = heaterOn ? power : 0;
        } else if (held) {
            power *= proportional(limitK, bodyK);
        }
        delivered = (bodyK - wallK) / (1 / contactConductance + halfResistance);
        faceK = wallK + delivered * halfResistance;
        lost = lossAreaM2 * loss.flux(bodyK) + power * (inputPerHeat - 1);
        input = power * inputPerHeat;
        dydt[start] = (power - delivered - lossAreaM2 * loss.flux(bodyK)) / heatCapacity;
    }

    @Override
    public double deliveredW() {
        return delivered;
    }

    @Override
    public double inputW() {
        return input;
    }

    @Override
    public double lossW() {
        return lost;
    }

    @Override
    public void setLevel(double share, double holdOilK) {
        fraction = share;
        holdK = holdOilK;
    }

    @Override
    public void setHeld(boolean isHeld) {
        held = isHeld;
    }

    @Override
    public void setHeaterOn(boolean on) {
        heaterOn = on;
    }

    @Override
    public boolean isHeaterOn() {
        return heaterOn;
    }

    @Override
    public double thermostatExcess(double[] y, int start) {
        if (!onOff) {
            return -1;
        }
        if (!held) {
            return -HELD_OFF_K;
        }
        return heaterOn ? y[start] - limitK : limitK - BAND_K - y[start];
    }

    @Override
    public double steadyDeliveredW(double outerFaceK, double oilK) {
        double asked = ratedW * fraction * proportional(holdK, oilK);
        double low = Math.min(roomK, outerFaceK) - 1;
        double high = Math.max(Math.max(limitK, outerFaceK), roomK) + 1;
        steadyK = Roots.bracketed(
                bodyK -> asked * proportional(limitK, bodyK)
                        - contactConductance * (bodyK - outerFaceK)
                        - lossAreaM2 * loss.flux(bodyK),
                low,
                high,
                1e-12,
                0,
                "temperature of the heated body");
        double power = asked * proportional(limitK, steadyK);
        delivered = contactConductance * (steadyK - outerFaceK);
        faceK = outerFaceK;
        input = power * inputPerHeat;
        lost = lossAreaM2 * loss.flux(steadyK) + power * (inputPerHeat - 1);
        return delivered;
    }

    @Override
    public double steadyBodyK() {
        return steadyK;
    }

    @Override
    public double bodyK(double[] y, int start) {
        return y[start];
    }

    @Override
    public double touchK(double[] y, int start) {
        return loss.surfaceTemperature(y[start]);
    }

    @Override
    public void steadyStates(double[] y, int start, double room) {
        y[start] = steadyK;
    }
}
