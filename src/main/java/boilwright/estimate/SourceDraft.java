package boilwright.estimate;

import boilwright.rig.Boiler;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.HeatSource.Thermostat;
import boilwright.rig.Parameter;
import boilwright.rig.TypicalValues;
import java.util.Optional;
import java.util.OptionalDouble;

/** The heat source as such sources usually are; all of it is from memory. */
final class SourceDraft {

    private final OutsideMeasurements measured;
    private final GuessBook book;
    private final Boiler boiler;
    private final OptionalDouble solvedConductance;

    /** @param solvedConductance contact conductance when one was solved, W/(m2 K); empty: the usual one */
    SourceDraft(OutsideMeasurements measured, GuessBook book, Boiler boiler, OptionalDouble solvedConductance) {
        this.measured = measured;
        this.book = book;
        this.boiler = boiler;
        this.solvedConductance = solvedConductance;
    }

    HeatSource source() {
        double rated = measured.ratedPowerW();
        return switch (measured.source()) {
            case GAS_BURNER -> new HeatSource.GasBurner(rated, Optional.empty());
            case CONTACT_PLATE -> plate(rated);
            case HEATING_MANTLE -> mantle(rated);
            case CLAMPED_HEATER -> clamped(rated);
            case IMMERSED_ELEMENT ->
                new HeatSource.ImmersedElement(
                        rated,
                        book.quantity(
                                "heatSource.surfaceArea",
                                rated / TypicalValues.ELEMENT_LOAD,
                                EstimateText.BASIS_ELEMENT_LOAD));
            case INDUCTION -> induction(rated);
        };
    }

    private HeatSource plate(double rated) {
        Contact contact = contact();
        return new HeatSource.ContactPlate(
                rated,
                contact,
                contactArea(),
                conductance(Contacts.parameter(contact)),
                heatCapacity(TypicalValues.PLATE_HEAT_CAPACITY_PER_W),
                limit(TypicalValues.PLATE_LIMIT_K),
                book.mark("heatSource.thermostat", Thermostat.ON_OFF, EstimateText.BASIS_THERMOSTAT),
                lossArea(TypicalValues.LOSS_SHARE),
                lossEmissivity(),
                book.exactly("heatSource.insulationThickness", 0, EstimateText.BASIS_BARE),
                insulationConductivity());
    }

    private HeatSource mantle(double rated) {
        return new HeatSource.HeatingMantle(
                rated,
                book.quantity("heatSource.wrappedArea", boiler.heatedAreaM2(), EstimateText.BASIS_HEATED_MANTLE),
                conductance(Parameter.CONTACT_MANTLE),
                heatCapacity(TypicalValues.MANTLE_HEAT_CAPACITY_PER_W),
                limit(TypicalValues.MANTLE_LIMIT_K),
                lossArea(TypicalValues.LOSS_SHARE),
                lossEmissivity(),
                insulation(),
                insulationConductivity());
    }

    private HeatSource clamped(double rated) {
        return new HeatSource.ClampedHeater(
                rated,
                contactArea(),
                conductance(Parameter.CONTACT_MACHINED_METAL),
                heatCapacity(TypicalValues.CLAMPED_HEAT_CAPACITY_PER_W),
                limit(TypicalValues.CLAMPED_LIMIT_K),
                book.mark("heatSource.thermostat", Thermostat.PROPORTIONAL, EstimateText.BASIS_THERMOSTAT),
                lossArea(TypicalValues.LOSS_SHARE),
                lossEmissivity(),
                insulation(),
                insulationConductivity());
    }

    private HeatSource induction(double rated) {
        boolean ferrous = measured.material().isFerrous();
        Contact contact = contact();
        return new HeatSource.Induction(
                rated,
                book.mark(
                        "heatSource.susceptor",
                        ferrous ? Susceptor.FERROUS_BASE : Susceptor.PLATE,
                        EstimateText.BASIS_SUSCEPTOR),
                book.quantity(
                        "heatSource.efficiency", TypicalValues.INDUCTION_EFFICIENCY, EstimateText.BASIS_EFFICIENCY),
                contact,
                contactArea(),
                conductance(Contacts.parameter(contact)),
                heatCapacity(TypicalValues.SUSCEPTOR_HEAT_CAPACITY_PER_W),
                limit(TypicalValues.INDUCTION_LIMIT_K),
                lossArea(TypicalValues.SUSCEPTOR_LOSS_SHARE),
                lossEmissivity());
    }

    private Contact contact() {
        return measured.known()
                .contact()
                .orElseGet(() -> book.mark(
                        "heatSource.contact", TypicalValues.contact(measured.material()), EstimateText.BASIS_CONTACT));
    }

    private double contactArea() {
        return book.quantity(
                "heatSource.contactArea",
                TypicalValues.CONTACT_SHARE * boiler.heatedAreaM2(),
                EstimateText.BASIS_CONTACT_AREA);
    }

    private OptionalDouble conductance(Parameter parameter) {
        String path = "heatSource.contactConductance";
        return OptionalDouble.of(
                solvedConductance.isPresent()
                        ? book.quantity(path, solvedConductance.getAsDouble(), EstimateText.BASIS_CONDUCTANCE_SOLVED)
                        : book.exactly(path, parameter.nominal(), EstimateText.BASIS_CONDUCTANCE));
    }

    private double heatCapacity(double perWatt) {
        return book.quantity(
                "heatSource.heatCapacity", perWatt * measured.ratedPowerW(), EstimateText.BASIS_HEAT_CAPACITY);
    }

    private double limit(double usualK) {
        return measured.known().sourceLimitK().isPresent()
                ? measured.known().sourceLimitK().getAsDouble()
                : book.exactly("heatSource.limit", usualK, EstimateText.BASIS_SOURCE_LIMIT);
    }

    private double lossArea(double overHeatedArea) {
        return book.quantity(
                "heatSource.lossArea", overHeatedArea * boiler.heatedAreaM2(), EstimateText.BASIS_LOSS_AREA);
    }

    private double lossEmissivity() {
        return book.exactly("heatSource.lossEmissivity", TypicalValues.LOSS_EMISSIVITY, EstimateText.BASIS_EMISSIVITY);
    }

    private double insulation() {
        return book.exactly(
                "heatSource.insulationThickness", TypicalValues.HEATER_INSULATION_M, EstimateText.BASIS_INSULATION);
    }

    private double insulationConductivity() {
        return book.exactly(
                "heatSource.insulationConductivity",
                TypicalValues.HEATER_INSULATION_CONDUCTIVITY,
                EstimateText.BASIS_INSULATION);
    }
}
