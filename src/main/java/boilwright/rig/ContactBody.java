package boilwright.rig;

import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Thermostat;
import java.util.OptionalDouble;

/**
 * The heated mass of a source that touches the boiler: what a plate, a mantle, a clamped heater and a susceptor have in common.
 *
 * @param contact how it touches the boiler
 * @param areaM2 area of contact, m2; of a mantle the area that it wraps
 * @param conductance conductance of the contact, W/(m2 K), when known; empty: by the kind of contact, with its range
 * @param heatCapacity heat capacity of the mass, J/K
 * @param limitK temperature at which thermostat or cut-out holds it, K
 * @param thermostat how it is held there
 * @param lossAreaM2 area of its other faces, m2
 * @param lossEmissivity their emissivity
 * @param insulationThicknessM insulation over them, m; 0 for none
 * @param insulationConductivity of the insulation, W/(m K)
 */
public record ContactBody(
        Contact contact,
        double areaM2,
        OptionalDouble conductance,
        double heatCapacity,
        double limitK,
        Thermostat thermostat,
        double lossAreaM2,
        double lossEmissivity,
        double insulationThicknessM,
        double insulationConductivity) {
    /** Conductance of the contact, W/(m2 K): as given, else the registry's value for its kind. */
    public double conductance(ParameterValues values) {
        return conductance.orElseGet(() -> values.get(contact.usualConductance()));
    }

    /** The same body touching another area, m2. */
    public ContactBody withArea(double m2) {
        return with(m2, conductance, limitK, thermostat);
    }

    /** The same body with a known conductance of its contact, W/(m2 K). */
    public ContactBody withConductance(double known) {
        return with(areaM2, OptionalDouble.of(known), limitK, thermostat);
    }

    /** The same body held at another temperature, K. */
    public ContactBody withLimit(double otherK) {
        return with(areaM2, conductance, otherK, thermostat);
    }

    /** The same body held in another way. */
    public ContactBody withThermostat(Thermostat other) {
        return with(areaM2, conductance, limitK, other);
    }

    private ContactBody with(double area, OptionalDouble h, double limit, Thermostat hold) {
        return new ContactBody(
                contact,
                area,
                h,
                heatCapacity,
                limit,
                hold,
                lossAreaM2,
                lossEmissivity,
                insulationThicknessM,
                insulationConductivity);
    }
}
