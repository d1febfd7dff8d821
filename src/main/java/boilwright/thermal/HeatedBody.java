package boilwright.thermal;

import boilwright.numerics.Roots;
import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import java.util.OptionalDouble;

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

    static HeatedBody plate(Rig rig, HeatSource.ContactPlate p, ParameterValues v, double halfResistance) {
        return new HeatedBody(
                rig,
                p.ratedPowerW() * v.get(Parameter.SUPPLY_POWER_FACTOR),
                1,
                contact(p.contactConductance(), p.contact(), v) * p.contactAreaM2(),
                halfResistance,
                p.heatCapacity(),
                p.limitK(),
                p.thermostat() == HeatSource.Thermostat.ON_OFF,
                p.lossAreaM2(),
                loss(rig, p.lossAreaM2(), p.lossEmissivity(), p.insulationThicknessM(), p.insulationConductivity()));
    }

    static HeatedBody mantle(Rig rig, HeatSource.HeatingMantle m, ParameterValues v, double halfResistance) {
        return new HeatedBody(
                rig,
                m.ratedPowerW() * v.get(Parameter.SUPPLY_POWER_FACTOR),
                1,
                m.contactConductance().orElse(v.get(Parameter.CONTACT_MANTLE)) * m.wrappedAreaM2(),
                halfResistance,
                m.heatCapacity(),
                m.limitK(),
                false,
                m.lossAreaM2(),
                loss(rig, m.lossAreaM2(), m.lossEmissivity(), m.insulationThicknessM(), m.insulationConductivity()));
    }

    static HeatedBody clamped(Rig rig, HeatSource.ClampedHeater c, ParameterValues v, double halfResistance) {
        return new HeatedBody(
                rig,
                c.ratedPowerW() * v.get(Parameter.SUPPLY_POWER_FACTOR),
                1,
                contact(c.contactConductance(), HeatSource.Contact.MACHINED_METAL, v) * c.contactAreaM2(),
                halfResistance,
                c.heatCapacity(),
                c.limitK(),
                c.thermostat() == HeatSource.Thermostat.ON_OFF,
                c.lossAreaM2(),
                loss(rig, c.lossAreaM2(), c.lossEmissivity(), c.insulationThicknessM(), c.insulationConductivity()));
    }

    /** A ferrous plate in an induction field. */
    static HeatedBody susceptor(Rig rig, HeatSource.Induction i, ParameterValues v, double halfResistance) {
        return new HeatedBody(
                rig,
                i.ratedPowerW() * i.efficiency() * v.get(Parameter.SUPPLY_POWER_FACTOR),
                1 / i.efficiency(),
                contact(i.contactConductance(), i.contact(), v) * i.contactAreaM2(),
                halfResistance,
                i.heatCapacity(),
                i.limitK(),
                false,
                i.lossAreaM2(),
                loss(rig, i.lossAreaM2(), i.lossEmissivity(), 0, 1));
    }

    /** Conductance of a contact, W/(m2 K): as given, else the registry's value for its kind. */
    static double contact(OptionalDouble given, HeatSource.Contact kind, ParameterValues values) {
        if (given.isPresent()) {
            return given.getAsDouble();
        }
        return values.get(
                switch (kind) {
                    case MACHINED_METAL -> Parameter.CONTACT_MACHINED_METAL;
                    case FLAT_GLASS -> Parameter.CONTACT_FLAT_GLASS;
                    case DOMED_GLASS -> Parameter.CONTACT_DOMED_GLASS;
                });
    }

    /** Share of full power of a controller that falls to zero over the band below its set point. */
    static double proportional(double setK, double actualK) {
        return Math.max(0, Math.min(1, (setK - actualK) / BAND_K));
    }

    private static SurfaceLoss loss(Rig rig, double areaM2, double emissivity, double insulationM, double k) {
        double height = Math.max(0.02, Math.sqrt(areaM2) / 2);
        return new SurfaceLoss(height, emissivity, insulationM, k, rig.room().temperatureK());
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
