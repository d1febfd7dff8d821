package boilwright.rig.file;

import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Cartridge;
import boilwright.rig.SourceKind;
import boilwright.rig.TypicalValues;
import java.util.Optional;

/** Reads the heat source, whose fields depend on its kind. */
final class HeatSourceReader {

    private HeatSourceReader() {}

    /** The heat source; null when it is missing or of no known kind. */
    static HeatSource read(Section in) {
        SourceKind kind = in.choice("kind", SourceKind.values(), SourceKind::id);
        in.reportUnknown(kind == null ? null : kind.id());
        if (kind == null) {
            return null;
        }
        return switch (kind) {
            case GAS_BURNER -> new HeatSource.GasBurner(in.quantity("ratedPower"), cartridge(in));
            case CONTACT_PLATE -> plate(in);
            case HEATING_MANTLE -> mantle(in);
            case CLAMPED_HEATER -> clamped(in);
            case IMMERSED_ELEMENT ->
                new HeatSource.ImmersedElement(in.quantity("ratedPower"), in.quantity("surfaceArea"));
            case INDUCTION -> induction(in);
        };
    }

    private static Optional<Cartridge> cartridge(Section in) {
        if (!in.has("cartridge")) {
            return Optional.empty();
        }
        Section cartridge = in.object("cartridge");
        return Optional.of(new Cartridge(
                cartridge.quantity("fuelMass"),
                cartridge.quantity("metalMass"),
                cartridge.quantity("airConductance"),
                cartridge.quantityOr("heatReturnFraction", 0)));
    }

    private static HeatSource plate(Section in) {
        return new HeatSource.ContactPlate(
                in.quantity("ratedPower"),
                contact(in),
                in.quantity("contactArea"),
                in.optionalQuantity("contactConductance"),
                in.quantity("heatCapacity"),
                in.quantity("limit"),
                thermostat(in),
                in.quantity("lossArea"),
                lossEmissivity(in),
                in.quantityOr("insulationThickness", 0),
                insulationConductivity(in));
    }

    private static HeatSource mantle(Section in) {
        return new HeatSource.HeatingMantle(
                in.quantity("ratedPower"),
                in.quantity("wrappedArea"),
                in.optionalQuantity("contactConductance"),
                in.quantity("heatCapacity"),
                in.quantity("limit"),
                in.quantity("lossArea"),
                lossEmissivity(in),
                in.quantityOr("insulationThickness", 0),
                insulationConductivity(in));
    }

    private static HeatSource clamped(Section in) {
        return new HeatSource.ClampedHeater(
                in.quantity("ratedPower"),
                in.quantity("contactArea"),
                in.optionalQuantity("contactConductance"),
                in.quantity("heatCapacity"),
                in.quantity("limit"),
                thermostat(in),
                in.quantity("lossArea"),
                lossEmissivity(in),
                in.quantityOr("insulationThickness", 0),
                insulationConductivity(in));
    }

    private static HeatSource induction(Section in) {
        return new HeatSource.Induction(
                in.quantity("ratedPower"),
                in.choice("susceptor", HeatSource.Susceptor.values(), FieldCatalogue::id),
                in.quantity("efficiency"),
                contact(in),
                in.quantity("contactArea"),
                in.optionalQuantity("contactConductance"),
                in.quantity("heatCapacity"),
                in.quantity("limit"),
                in.quantity("lossArea"),
                lossEmissivity(in));
    }

    private static HeatSource.Contact contact(Section in) {
        return in.choice("contact", HeatSource.Contact.values(), FieldCatalogue::id);
    }

    private static HeatSource.Thermostat thermostat(Section in) {
        return in.choice("thermostat", HeatSource.Thermostat.values(), FieldCatalogue::id);
    }

    private static double lossEmissivity(Section in) {
        return in.quantityOr("lossEmissivity", TypicalValues.LOSS_EMISSIVITY);
    }

    private static double insulationConductivity(Section in) {
        return in.quantityOr("insulationConductivity", TypicalValues.HEATER_INSULATION_CONDUCTIVITY);
    }
}
