package boilwright.rig.file;

import boilwright.rig.Cooling;
import boilwright.rig.Cooling.Place;
import boilwright.rig.ElementKind;
import boilwright.rig.TypicalValues;
import java.util.List;

/** Reads the cooling and its elements, whose fields depend on their kind. */
final class CoolingReader {

    private CoolingReader() {}

    /** The cooling; its supply is null when that is missing or of no known kind. */
    static Cooling read(Section in, double roomK) {
        return new Cooling(
                SupplyReader.read(in.objectOfKinds("supply"), roomK),
                in.listOfKinds("elements").stream().map(CoolingReader::element).toList());
    }

    /** One element; one of no known kind was reported and only keeps its place, so that later ones keep their number. */
    private static Cooling.Element element(Section in) {
        ElementKind kind = in.choice("kind", ElementKind.values(), ElementKind::id);
        in.reportUnknown(kind == null ? null : kind.id());
        Place place = new Place(in.text("name"), in.text("branch"));
        if (kind == null) {
            return new Cooling.Jacket(List.of(), Double.NaN, Double.NaN, place);
        }
        return switch (kind) {
            case JACKET ->
                new Cooling.Jacket(in.texts("covers"), in.quantity("gap"), in.quantity("shellThickness"), place);
            case SOLDERED_COIL ->
                new Cooling.SolderedCoil(
                        in.texts("covers"),
                        in.quantity("tubeInnerDiameter"),
                        in.quantity("tubeLength"),
                        in.quantityOr("bondConductance", TypicalValues.BOND_CONDUCTANCE),
                        place);
            case CAP_COIL ->
                new Cooling.CapCoil(
                        in.quantity("tubeInnerDiameter"),
                        in.quantity("tubeLength"),
                        in.quantityOr("bondConductance", TypicalValues.BOND_CONDUCTANCE),
                        place);
            case BAFFLE_COIL -> part(Cooling.Part.BAFFLE, in, place);
            case FORELINE_TRAP -> part(Cooling.Part.FORELINE_TRAP, in, place);
            case HOSE ->
                new Cooling.Hose(
                        in.quantity("tubeInnerDiameter"),
                        in.quantity("tubeLength"),
                        in.quantityOr("airConductancePerMetre", TypicalValues.HOSE_TO_AIR),
                        place);
            case VALVE -> new Cooling.Valve(in.quantity("flowAtOneBar"), place);
            case RISE -> new Cooling.Rise(in.quantity("height"), place);
        };
    }

    private static Cooling.CooledPart part(Cooling.Part what, Section in, Place place) {
        return new Cooling.CooledPart(
                what,
                in.quantity("tubeInnerDiameter"),
                in.quantity("tubeLength"),
                in.quantityOr("heatLoad", 0),
                in.quantityOr("airConductance", TypicalValues.PART_TO_AIR),
                place);
    }
}
