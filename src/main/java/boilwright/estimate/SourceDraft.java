package boilwright.estimate;

import boilwright.rig.Boiler;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.HeatSource.Thermostat;
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
            case CONTACT_PLATE -> new HeatSource.ContactPlate(rated, plate());
            case HEATING_MANTLE -> new HeatSource.HeatingMantle(rated, mantle());
            case CLAMPED_HEATER -> new HeatSource.ClampedHeater(rated, clamped());
            case IMMERSED_ELEMENT ->
                new HeatSource.ImmersedElement(
                        rated,
                        book.quantity("heatSource.surfaceArea", rated / ELEMENT_LOAD, EstimateText.BASIS_ELEMENT_LOAD));
            case INDUCTION ->
                new HeatSource.Induction(
                        rated,
                        susceptor(),
                        book.quantity("heatSource.efficiency", 0.85, EstimateText.BASIS_EFFICIENCY),
                        susceptorBody());
        };
    }

    /** Least and greatest share of a source's power that reaches the oil of a working pump; engineering judgement. */
    static double[] shares(OutsideMeasurements measured) {
        return switch (measured.source()) {
            case GAS_BURNER -> new double[] {0.15, 0.65};
            case CONTACT_PLATE -> measured.material().isGlass() ? new double[] {0.25, 0.8} : new double[] {0.6, 0.97};
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
                heatCapacity(0.6),
                limit(PLATE_LIMIT_K),
                thermostat(Thermostat.ON_OFF),
                lossArea(),
                lossEmissivity(),
                book.exactly("heatSource.insulationThickness", 0, EstimateText.BASIS_BARE),
                insulationConductivity());
    }

    private ContactBody mantle() {
        return new ContactBody(
                Contact.WRAPPED,
                book.quantity("heatSource.wrappedArea", boiler.heatedAreaM2(), EstimateText.BASIS_HEATED_MANTLE),
                conductance(Contact.WRAPPED),
                heatCapacity(0.8),
                limit(MANTLE_LIMIT_K),
                Thermostat.PROPORTIONAL,
                lossArea(),
                lossEmissivity(),
                insulation(),
                insulationConductivity());
    }

    private ContactBody clamped() {
        return new ContactBody(
                Contact.MACHINED_METAL,
                contactArea(),
                conductance(Contact.MACHINED_METAL),
                heatCapacity(0.5),
                limit(HEATER_LIMIT_K),
                thermostat(Thermostat.PROPORTIONAL),
                lossArea(),
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
                heatCapacity(0.4),
                limit(INDUCTION_LIMIT_K),
                Thermostat.PROPORTIONAL,
                lossArea(),
                lossEmissivity(),
                0,
                1);
    }

    private Thermostat thermostat(Thermostat usual) {
        return book.mark("heatSource.thermostat", usual, EstimateText.BASIS_THERMOSTAT);
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
