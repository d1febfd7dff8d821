package boilwright.rig.file;

import boilwright.rig.Cooling;
import boilwright.rig.ElementKind;
import java.util.List;

/** Reads the cooling and its elements, whose fields depend on their kind. */
final class CoolingReader {
    /** Conductance of a soldered joint when none is given, W/(m K): a fillet a few mm wide; engineering judgement. */
    static final double USUAL_BOND = 20;

    private CoolingReader() {}

    static Cooling read(Section in) {
        return new Cooling(
                in.quantity("inletTemperature"),
                in.quantity("flow"),
                in.listOfKinds("elements").stream().map(CoolingReader::element).toList(),
                in.optionalQuantity("chillerCapacity"));
    }

    /** One element; one of no known kind was reported and only keeps its place, so that later ones keep their number. */
    private static Cooling.Element element(Section in) {
        ElementKind kind = in.choice("kind", ElementKind.values(), ElementKind::id);
        in.reportUnknown(kind == null ? null : kind.id());
        if (kind == null) {
            return new Cooling.Jacket(List.of(), Double.NaN, Double.NaN);
        }
        return switch (kind) {
            case JACKET -> new Cooling.Jacket(in.texts("covers"), in.quantity("gap"), in.quantity("shellThickness"));
            case SOLDERED_COIL ->
                new Cooling.SolderedCoil(
                        in.texts("covers"),
                        in.quantity("tubeInnerDiameter"),
                        in.quantity("tubeLength"),
                        in.quantityOr("bondConductance", USUAL_BOND));
            case CAP_COIL ->
                new Cooling.CapCoil(
                        in.quantity("tubeInnerDiameter"),
                        in.quantity("tubeLength"),
                        in.quantityOr("bondConductance", USUAL_BOND));
            default -> throw new IllegalStateException();
        };
    }
}
