package boilwright.estimate;

import boilwright.rig.Boiler;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.HeatSource.Thermostat;
import boilwright.rig.Material;
import boilwright.rig.SourceKind;
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
            case CONTACT_PLATE -> new HeatSource.ContactPlate(rated, plate());
            case HEATING_MANTLE -> new HeatSource.HeatingMantle(rated, mantle());
            case CLAMPED_HEATER -> new HeatSource.ClampedHeater(rated, clamped());
            case IMMERSED_ELEMENT ->
                new HeatSource.ImmersedElement(
                        rated,
                        book.quantity(
                                "heatSource.surfaceArea",
                                rated / TypicalValues.ELEMENT_LOAD,
                                EstimateText.BASIS_ELEMENT_LOAD));
            case INDUCTION ->
                new HeatSource.Induction(
                        rated,
                        susceptor(),
                        book.quantity(
                                "heatSource.efficiency",
                                TypicalValues.INDUCTION_EFFICIENCY,
                                EstimateText.BASIS_EFFICIENCY),
                        susceptorBody());
        };
    }

    /** Least and greatest share of a source's power that reaches the oil of a working pump; engineering judgement. */
    static double[] shares(OutsideMeasurements measured) {
        return shares(measured.source(), measured.material());
    }

    /** Least and greatest share of its rating that a kind of source brings into the oil of a boiler. */
    static double[] shares(SourceKind kind, Material material) {
        return switch (kind) {
            case GAS_BURNER -> new double[] {0.15, 0.65};
            case CONTACT_PLATE -> material.isGlass() ? new double[] {0.25, 0.8} : new double[] {0.6, 0.97};
            case HEATING_MANTLE -> new double[] {0.4, 0.9};
            case CLAMPED_HEATER -> new double[] {0.7, 0.97};
            case IMMERSED_ELEMENT -> new double[] {0.9, 1};
            case INDUCTION -> new double[] {0.3, 0.9};
        };
    }

    private ContactBody plate() {
        Contact contact = contact();
        return new ContactBody(
                contact,
                contactArea(),
                conductance(contact),
                heatCapacity(TypicalValues.PLATE_HEAT_CAPACITY_PER_W),
                limit(TypicalValues.PLATE_LIMIT_K),
                thermostat(Thermostat.ON_OFF),
                lossArea(TypicalValues.LOSS_SHARE),
                lossEmissivity(),
                book.exactly("heatSource.insulationThickness", 0, EstimateText.BASIS_BARE),
                insulationConductivity());
    }

    private ContactBody mantle() {
        return new ContactBody(
                Contact.WRAPPED,
                book.quantity("heatSource.wrappedArea", boiler.heatedAreaM2(), EstimateText.BASIS_HEATED_MANTLE),
                conductance(Contact.WRAPPED),
                heatCapacity(TypicalValues.MANTLE_HEAT_CAPACITY_PER_W),
                limit(TypicalValues.MANTLE_LIMIT_K),
                Thermostat.PROPORTIONAL,
                lossArea(TypicalValues.LOSS_SHARE),
                lossEmissivity(),
                insulation(),
                insulationConductivity());
    }

    private ContactBody clamped() {
        return new ContactBody(
                Contact.MACHINED_METAL,
                contactArea(),
                conductance(Contact.MACHINED_METAL),
                heatCapacity(TypicalValues.CLAMPED_HEAT_CAPACITY_PER_W),
                limit(TypicalValues.CLAMPED_LIMIT_K),
                thermostat(Thermostat.PROPORTIONAL),
                lossArea(TypicalValues.LOSS_SHARE),
                lossEmissivity(),
                insulation(),
                insulationConductivity());
    }

    private Susceptor susceptor() {
        return book.mark(
                "heatSource.susceptor",
                measured.material().isFerrous() ? Susceptor.FERROUS_BASE : Susceptor.PLATE,
                EstimateText.BASIS_SUSCEPTOR);
    }

    private ContactBody susceptorBody() {
        Contact contact = contact();
        return new ContactBody(
                contact,
                contactArea(),
                conductance(contact),
                heatCapacity(TypicalValues.SUSCEPTOR_HEAT_CAPACITY_PER_W),
                limit(TypicalValues.INDUCTION_LIMIT_K),
                Thermostat.PROPORTIONAL,
                lossArea(TypicalValues.SUSCEPTOR_LOSS_SHARE),
                lossEmissivity(),
                0,
                1);
    }

    private Thermostat thermostat(Thermostat usual) {
        return book.mark("heatSource.thermostat", usual, EstimateText.BASIS_THERMOSTAT);
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

    private OptionalDouble conductance(Contact contact) {
        String path = "heatSource.contactConductance";
        return OptionalDouble.of(
                solvedConductance.isPresent()
                        ? book.quantity(path, solvedConductance.getAsDouble(), EstimateText.BASIS_CONDUCTANCE_SOLVED)
                        : book.exactly(path, contact.usualConductance().nominal(), EstimateText.BASIS_CONDUCTANCE));
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
