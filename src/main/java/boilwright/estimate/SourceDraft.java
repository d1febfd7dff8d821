package boilwright.estimate;

import boilwright.rig.Boiler;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.HeatSource.Thermostat;
import boilwright.rig.Parameter;
import java.util.Optional;
import java.util.OptionalDouble;

/** The heat source as such sources usually are; all of it is from memory. */
final class SourceDraft {
    /** Area of contact over the heated area. */
    private static final double CONTACT_SHARE = 0.93;
    /** Area that loses heat over the heated area. */
    private static final double LOSS_SHARE = 1.75;

    private static final double LOSS_EMISSIVITY = 0.8;
    private static final double INSULATED_M = 0.025;
    /** Surface load of elements in oil, W/m2. */
    private static final double ELEMENT_LOAD = 3e4;

    private static final double PLATE_LIMIT_K = 723.15;
    private static final double MANTLE_LIMIT_K = 723.15;
    private static final double HEATER_LIMIT_K = 693.15;
    private static final double INDUCTION_LIMIT_K = 573.15;

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
                        book.quantity("heatSource.surfaceArea", rated / ELEMENT_LOAD, EstimateText.BASIS_ELEMENT_LOAD));
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
                heatCapacity(0.6),
                limit(PLATE_LIMIT_K),
                book.mark("heatSource.thermostat", Thermostat.ON_OFF, EstimateText.BASIS_THERMOSTAT),
                lossArea(),
                lossEmissivity(),
                book.exactly("heatSource.insulationThickness", 0, EstimateText.BASIS_BARE),
                insulationConductivity());
    }

    private HeatSource mantle(double rated) {
        return new HeatSource.HeatingMantle(
                rated,
                book.quantity("heatSource.wrappedArea", boiler.heatedAreaM2(), EstimateText.BASIS_HEATED_MANTLE),
                conductance(Parameter.CONTACT_MANTLE),
                heatCapacity(0.8),
                limit(MANTLE_LIMIT_K),
                lossArea(),
                lossEmissivity(),
                insulation(),
                insulationConductivity());
    }

    private HeatSource clamped(double rated) {
        return new HeatSource.ClampedHeater(
                rated,
                contactArea(),
                conductance(Parameter.CONTACT_MACHINED_METAL),
                heatCapacity(0.5),
                limit(HEATER_LIMIT_K),
                book.mark("heatSource.thermostat", Thermostat.PROPORTIONAL, EstimateText.BASIS_THERMOSTAT),
                lossArea(),
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
                book.quantity("heatSource.efficiency", 0.85, EstimateText.BASIS_EFFICIENCY),
                contact,
                contactArea(),
                conductance(Contacts.parameter(contact)),
                heatCapacity(0.4),
                limit(INDUCTION_LIMIT_K),
                lossArea(),
                lossEmissivity());
    }

    private Contact contact() {
        Contact usual = measured.material().isGlass() ? Contact.DOMED_GLASS : Contact.MACHINED_METAL;
        return measured.known()
                .contact()
                .orElseGet(() -> book.mark("heatSource.contact", usual, EstimateText.BASIS_CONTACT));
    }

    private double contactArea() {
        return book.quantity(
                "heatSource.contactArea", CONTACT_SHARE * boiler.heatedAreaM2(), EstimateText.BASIS_CONTACT_AREA);
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

    private double lossArea() {
        return book.quantity("heatSource.lossArea", LOSS_SHARE * boiler.heatedAreaM2(), EstimateText.BASIS_LOSS_AREA);
    }

    private double lossEmissivity() {
        return book.exactly("heatSource.lossEmissivity", LOSS_EMISSIVITY, EstimateText.BASIS_EMISSIVITY);
    }

    private double insulation() {
        return book.exactly("heatSource.insulationThickness", INSULATED_M, EstimateText.BASIS_INSULATION);
    }

    private double insulationConductivity() {
        return book.exactly(
                "heatSource.insulationConductivity", VesselDraft.MINERAL_WOOL, EstimateText.BASIS_INSULATION);
    }
}
