package boilwright.rig;

import static boilwright.units.Dimension.AREA;
import static boilwright.units.Dimension.FRACTION;
import static boilwright.units.Dimension.HEAT_CAPACITY;
import static boilwright.units.Dimension.HEAT_TRANSFER_COEFFICIENT;
import static boilwright.units.Dimension.LENGTH;
import static boilwright.units.Dimension.MASS;
import static boilwright.units.Dimension.POWER;
import static boilwright.units.Dimension.PRESSURE;
import static boilwright.units.Dimension.TEMPERATURE;
import static boilwright.units.Dimension.THERMAL_CONDUCTANCE;
import static boilwright.units.Dimension.THERMAL_CONDUCTIVITY;
import static boilwright.units.Dimension.TIME;
import static boilwright.units.PhysicalConstants.ZERO_CELSIUS_K;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The fields of what surrounds the pump: heat source, schedule, foreline, cooling ({@link CoolingFields}) and room. */
final class OperationFields {
    private static final String BURNER = SourceKind.GAS_BURNER.id();
    private static final String PLATE = SourceKind.CONTACT_PLATE.id();
    private static final String MANTLE = SourceKind.HEATING_MANTLE.id();
    private static final String CLAMPED = SourceKind.CLAMPED_HEATER.id();
    private static final String IMMERSED = SourceKind.IMMERSED_ELEMENT.id();
    private static final String INDUCTION = SourceKind.INDUCTION.id();

    private OperationFields() {}

    static List<Field> all() {
        List<Field> all = new ArrayList<>(heatSource());
        all.addAll(new FieldSet("heatSource.cartridge")
                .quantity("fuelMass", MASS, "g", 1e-3, 60, 0.05, 15)
                .quantity("metalMass", MASS, "g", 1e-3, 60, 0.03, 20)
                .quantityFrom(FieldSet.JUDGEMENT, "airConductance", THERMAL_CONDUCTANCE, "W/K", 0, 50, 0.05, 10)
                .quantityFrom(FieldSet.JUDGEMENT, "heatReturnFraction", FRACTION, "1", 0, 0.2, 0, 0.1)
                .optional()
                .fields());
        all.addAll(new FieldSet("schedule[]")
                .quantityFrom("working days, common practice", "at", TIME, "min", 0, 172_800, 1, 28_800)
                .quantityFrom("none to all of the rated power", "power", FRACTION, "%", 0, 1, 0.02, 1)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "holdOil", TEMPERATURE, "degC", 300, 750, 320, 620)
                .optional()
                .fields());
        all.addAll(VacuumFields.foreline());
        all.addAll(CoolingFields.all());
        all.addAll(new FieldSet("room")
                .quantityFrom(
                        "rooms in which people work",
                        "temperature",
                        TEMPERATURE,
                        "degC",
                        253.15,
                        333.15,
                        ZERO_CELSIUS_K,
                        318.15)
                .quantityFrom("inhabited heights above the sea", "pressure", PRESSURE, "kPa", 3e4, 1.1e5, 6e4, 1.06e5)
                .optional()
                .fields());
        all.addAll(VacuumFields.vacuum());
        all.addAll(VacuumFields.protection());
        return all;
    }

    private static List<Field> heatSource() {
        return new FieldSet("heatSource")
                .choice(
                        "kind",
                        Arrays.stream(SourceKind.values()).map(SourceKind::id).toArray(String[]::new))
                .quantity("ratedPower", POWER, "W", 1, 1e7, 50, 20e3)
                .only(INDUCTION)
                .choice("susceptor", FieldCatalogue.ids(HeatSource.Susceptor.values()))
                .quantityFrom(FieldSet.JUDGEMENT, "efficiency", FRACTION, "1", 0.05, 1, 0.3, 1)
                .only(PLATE, INDUCTION)
                .choice("contact", FieldCatalogue.ids(HeatSource.Contact.values()))
                .only(PLATE, CLAMPED, INDUCTION)
                .quantity("contactArea", AREA, "cm2", 1e-5, 10, 2e-4, 1)
                .only(MANTLE)
                .quantity("wrappedArea", AREA, "cm2", 1e-4, 10, 3e-4, 1)
                .only(IMMERSED)
                .quantity("surfaceArea", AREA, "cm2", 1e-5, 10, 5e-4, 1)
                .only(PLATE, MANTLE, CLAMPED, INDUCTION)
                .quantityFrom(
                        FieldSet.JUDGEMENT,
                        "contactConductance",
                        HEAT_TRANSFER_COEFFICIENT,
                        "W/(m2 K)",
                        1,
                        20_000,
                        10,
                        5000)
                .optional()
                .quantity("heatCapacity", HEAT_CAPACITY, "J/K", 1, 1e6, 20, 20e3)
                .quantityFrom(FieldSet.JUDGEMENT, "limit", TEMPERATURE, "degC", 320, 1500, 373, 1200)
                .only(PLATE, CLAMPED)
                .choice("thermostat", FieldCatalogue.ids(HeatSource.Thermostat.values()))
                .only(PLATE, MANTLE, CLAMPED, INDUCTION)
                .quantity("lossArea", AREA, "cm2", 1e-4, 10, 5e-4, 2)
                .quantityFrom(FieldSet.JUDGEMENT, "lossEmissivity", FRACTION, "1", 0.01, 1, 0.01, 1)
                .optional()
                .only(PLATE, MANTLE, CLAMPED)
                .quantity("insulationThickness", LENGTH, "mm", 0, 0.5, 1e-3, 0.15)
                .optional()
                .quantityFrom(
                        FieldSet.JUDGEMENT, "insulationConductivity", THERMAL_CONDUCTIVITY, "W/(m K)", 5e-3, 5, 0.01, 1)
                .optional()
                .only(BURNER)
                .object("cartridge")
                .optional()
                .fields();
    }
}
