package boilwright.dashboard.session;

import boilwright.rig.Boiler;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.HeatSource.Thermostat;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A believable heat source of another kind under the same boiler, to start from. Figures without a size of the boiler in them
 * are engineering judgement, from memory.
 */
public final class SourceDefaults {
    private static final double EMISSIVITY = 0.8;
    private static final double INSULATION = 0.06;

    private SourceDefaults() {}

    /**
     * A source of a kind for a rig, with the rated power of the one it replaces.
     *
     * @throws boilwright.errors.InputRefusedException never; a kind that does not go with the boiler is refused when the
     *     rig's fields are checked
     */
    public static HeatSource of(SourceKind kind, Rig rig) {
        Boiler boiler = rig.boiler();
        double power = rig.heatSource().ratedPowerW();
        double area = boiler.heatedAreaM2();
        boolean glass = boiler.material().isGlass();
        Contact contact = glass ? Contact.FLAT_GLASS : Contact.MACHINED_METAL;
        return switch (kind) {
            case GAS_BURNER -> new HeatSource.GasBurner(power, Optional.empty());
            case CONTACT_PLATE ->
                new HeatSource.ContactPlate(
                        power,
                        new ContactBody(
                                contact,
                                rounded(0.9 * area),
                                OptionalDouble.empty(),
                                rounded(45_000 * area),
                                723.15,
                                Thermostat.ON_OFF,
                                rounded(1.8 * area),
                                EMISSIVITY,
                                0,
                                INSULATION));
            case HEATING_MANTLE ->
                new HeatSource.HeatingMantle(
                        power,
                        new ContactBody(
                                Contact.WRAPPED,
                                area,
                                OptionalDouble.empty(),
                                rounded(17_000 * area),
                                733.15,
                                Thermostat.PROPORTIONAL,
                                rounded(1.7 * area),
                                EMISSIVITY,
                                0.02,
                                INSULATION));
            case CLAMPED_HEATER ->
                new HeatSource.ClampedHeater(
                        power,
                        new ContactBody(
                                Contact.MACHINED_METAL,
                                rounded(0.95 * area),
                                OptionalDouble.empty(),
                                rounded(58_000 * area),
                                693.15,
                                Thermostat.PROPORTIONAL,
                                rounded(1.7 * area),
                                EMISSIVITY,
                                0.025,
                                INSULATION));
            case IMMERSED_ELEMENT -> new HeatSource.ImmersedElement(power, rounded(power / 20_000));
            case INDUCTION ->
                new HeatSource.Induction(
                        power,
                        boiler.material().isFerrous() ? Susceptor.FERROUS_BASE : Susceptor.PLATE,
                        0.85,
                        new ContactBody(
                                contact,
                                rounded(0.9 * area),
                                OptionalDouble.empty(),
                                rounded(45_000 * area),
                                723.15,
                                Thermostat.PROPORTIONAL,
                                rounded(1.2 * area),
                                EMISSIVITY,
                                0,
                                1));
        };
    }

    /** Two significant figures: more would look measured. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(2)).doubleValue();
    }
}
