package boilwright.rig.file;

import boilwright.rig.ContactBody;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Cartridge;
import boilwright.rig.HeatSource.ClampedHeater;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.ContactPlate;
import boilwright.rig.HeatSource.GasBurner;
import boilwright.rig.HeatSource.HeatingMantle;
import boilwright.rig.HeatSource.ImmersedElement;
import boilwright.rig.HeatSource.Induction;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.HeatSource.Thermostat;
import boilwright.rig.SourceKind;
import boilwright.rig.SourceKind.Figures;
import boilwright.rig.TypicalValues;
import java.util.Optional;

/** Reads and writes the heat source, whose fields depend on its kind. */
final class HeatSourceFields {
    private HeatSourceFields() {}

    /** The heat source; null when it is missing or of no known kind. */
    static HeatSource read(Section in) {
        SourceKind kind = in.choice("kind", SourceKind.values(), SourceKind::id);
        in.reportUnknown(kind == null ? null : kind.id());
        if (kind == null) {
            return null;
        }
        double ratedW = in.quantity("ratedPower");
        return switch (kind) {
            case GAS_BURNER -> new GasBurner(ratedW, cartridge(in));
            case CONTACT_PLATE -> new ContactPlate(ratedW, body(in, kind, standing(in)));
            case HEATING_MANTLE -> new HeatingMantle(ratedW, body(in, kind, Contact.WRAPPED));
            case CLAMPED_HEATER -> new ClampedHeater(ratedW, body(in, kind, Contact.MACHINED_METAL));
            case IMMERSED_ELEMENT -> new ImmersedElement(ratedW, in.quantity("surfaceArea"));
            case INDUCTION ->
                new Induction(ratedW, susceptor(in), in.quantity("efficiency"), body(in, kind, standing(in)));
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

    private static Susceptor susceptor(Section in) {
        Susceptor susceptor = in.choice("susceptor", Susceptor.values(), FieldCatalogue::id);
        // a file without one is refused; as a plate the rest of it can be judged too
        return susceptor == null ? Susceptor.PLATE : susceptor;
    }

    private static Contact standing(Section in) {
        return in.choice("contact", Contact.ofPlates(), FieldCatalogue::id);
    }

    private static ContactBody body(Section in, SourceKind kind, Contact contact) {
        boolean insulated = kind.has(Figures.INSULATION);
        return new ContactBody(
                contact,
                in.quantity(area(kind)),
                in.optionalQuantity("contactConductance"),
                in.quantity("heatCapacity"),
                in.quantity("limit"),
                kind.has(Figures.THERMOSTAT)
                        ? in.choice("thermostat", Thermostat.values(), FieldCatalogue::id)
                        : Thermostat.PROPORTIONAL,
                in.quantity("lossArea"),
                in.quantityOr("lossEmissivity", TypicalValues.LOSS_EMISSIVITY),
                insulated ? in.quantityOr("insulationThickness", 0) : 0,
                insulated ? in.quantityOr("insulationConductivity", TypicalValues.HEATER_INSULATION_CONDUCTIVITY) : 1);
    }

    /** The field in which a kind of source names the area that it touches. */
    static String area(SourceKind kind) {
        return kind.has(Figures.WRAPPED_AREA) ? "wrappedArea" : "contactArea";
    }

    /** Every field of a source, every default written out. */
    static void write(FieldWriter out, HeatSource source) {
        out.text("kind", source.kind().id()).quantity("ratedPower", source.ratedPowerW());
        FieldWriter own = switch (source.kind()) {
            case GAS_BURNER -> cartridge(out, source.cartridge());
            case CONTACT_PLATE, HEATING_MANTLE, CLAMPED_HEATER -> out;
            case IMMERSED_ELEMENT -> out.quantity("surfaceArea", ((ImmersedElement) source).surfaceAreaM2());
            case INDUCTION ->
                out.text("susceptor", FieldCatalogue.id(((Induction) source).susceptor()))
                        .quantity("efficiency", source.efficiency());
        };
        source.body().ifPresent(body -> body(own, source.kind(), body));
    }

    private static FieldWriter cartridge(FieldWriter out, Optional<Cartridge> cartridge) {
        cartridge.ifPresent(one -> out.object("cartridge")
                .quantity("fuelMass", one.fuelMassKg())
                .quantity("metalMass", one.metalMassKg())
                .quantity("airConductance", one.airConductance())
                .quantity("heatReturnFraction", one.heatReturnFraction()));
        return out;
    }

    private static void body(FieldWriter out, SourceKind kind, ContactBody body) {
        if (kind.has(Figures.CONTACT)) {
            out.text("contact", FieldCatalogue.id(body.contact()));
        }
        out.quantity(area(kind), body.areaM2())
                .optional("contactConductance", body.conductance())
                .quantity("heatCapacity", body.heatCapacity())
                .quantity("limit", body.limitK());
        if (kind.has(Figures.THERMOSTAT)) {
            out.text("thermostat", FieldCatalogue.id(body.thermostat()));
        }
        out.quantity("lossArea", body.lossAreaM2()).quantity("lossEmissivity", body.lossEmissivity());
        if (kind.has(Figures.INSULATION)) {
            out.quantity("insulationThickness", body.insulationThicknessM())
                    .quantity("insulationConductivity", body.insulationConductivity());
        }
    }
}
