package boilwright.dashboard.session;

import boilwright.rig.Boiler;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.HeatSource.Thermostat;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import boilwright.rig.TypicalValues;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A believable heat source of another kind under the same boiler, to start from. Its figures are
 * {@link TypicalValues}, as in an estimate.
 */
public final class SourceDefaults {

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
        Contact contact = TypicalValues.contact(boiler.material());
        return switch (kind) {
            case GAS_BURNER -> new HeatSource.GasBurner(power, Optional.empty());
            case CONTACT_PLATE ->
                new HeatSource.ContactPlate(
                        power,
                        contact,
                        rounded(TypicalValues.CONTACT_SHARE * area),
                        OptionalDouble.empty(),
                        rounded(TypicalValues.PLATE_HEAT_CAPACITY_PER_W * power),
                        TypicalValues.PLATE_LIMIT_K,
                        Thermostat.ON_OFF,
                        rounded(TypicalValues.LOSS_SHARE * area),
                        TypicalValues.LOSS_EMISSIVITY,
                        0,
                        TypicalValues.HEATER_INSULATION_CONDUCTIVITY);
            case HEATING_MANTLE ->
                new HeatSource.HeatingMantle(
                        power,
                        area,
                        OptionalDouble.empty(),
                        rounded(TypicalValues.MANTLE_HEAT_CAPACITY_PER_W * power),
                        TypicalValues.MANTLE_LIMIT_K,
                        rounded(TypicalValues.LOSS_SHARE * area),
                        TypicalValues.LOSS_EMISSIVITY,
                        TypicalValues.HEATER_INSULATION_M,
                        TypicalValues.HEATER_INSULATION_CONDUCTIVITY);
            case CLAMPED_HEATER ->
                new HeatSource.ClampedHeater(
                        power,
                        rounded(TypicalValues.CONTACT_SHARE * area),
                        OptionalDouble.empty(),
                        rounded(TypicalValues.CLAMPED_HEAT_CAPACITY_PER_W * power),
                        TypicalValues.CLAMPED_LIMIT_K,
                        Thermostat.PROPORTIONAL,
                        rounded(TypicalValues.LOSS_SHARE * area),
                        TypicalValues.LOSS_EMISSIVITY,
                        TypicalValues.HEATER_INSULATION_M,
                        TypicalValues.HEATER_INSULATION_CONDUCTIVITY);
            case IMMERSED_ELEMENT -> new HeatSource.ImmersedElement(power, rounded(power / TypicalValues.ELEMENT_LOAD));
            case INDUCTION ->
                new HeatSource.Induction(
                        power,
                        boiler.material().isFerrous() ? Susceptor.FERROUS_BASE : Susceptor.PLATE,
                        TypicalValues.INDUCTION_EFFICIENCY,
                        contact,
                        rounded(TypicalValues.CONTACT_SHARE * area),
                        OptionalDouble.empty(),
                        rounded(TypicalValues.SUSCEPTOR_HEAT_CAPACITY_PER_W * power),
                        TypicalValues.INDUCTION_LIMIT_K,
                        rounded(TypicalValues.SUSCEPTOR_LOSS_SHARE * area),
                        TypicalValues.LOSS_EMISSIVITY);
        };
    }

    /** Two significant figures: more would look measured. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(2)).doubleValue();
    }
}
