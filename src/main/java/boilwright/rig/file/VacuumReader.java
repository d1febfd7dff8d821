package boilwright.rig.file;

import boilwright.rig.FieldCatalogue;
import boilwright.rig.Foreline;
import boilwright.rig.ForelineKind;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Protection;
import boilwright.rig.TypicalValues;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the gas side: foreline, chamber, line, gauge; and what protects the pump. */
final class VacuumReader {

    private VacuumReader() {}

    /** The foreline; null when it is of no known kind. */
    static Foreline foreline(Section in) {
        ForelineKind kind = in.choice("kind", ForelineKind.values(), FieldCatalogue::id);
        in.reportUnknown(kind == null ? null : kind.id());
        if (kind == null) {
            return null;
        }
        if (kind == ForelineKind.GIVEN_PRESSURE) {
            return new Foreline.GivenPressure(in.quantity("pressure"));
        }
        Section pump = in.object("pump");
        double ultimate = pump.quantity("ultimate");
        boolean ballast = pump.has("gasBallast")
                && pump.choice("gasBallast", Foreline.Ballast.values(), FieldCatalogue::id) == Foreline.Ballast.OPEN;
        return new Foreline.Backing(
                pieces(in, "line"),
                in.quantity("volume"),
                new Foreline.BackingPump(
                        pump.list("curve").stream()
                                .map(point ->
                                        new Foreline.SpeedPoint(point.quantity("pressure"), point.quantity("speed")))
                                .toList(),
                        ultimate,
                        ballast,
                        pump.quantityOr("ballastUltimate", TypicalValues.BALLAST_FACTOR * ultimate)));
    }

    /** Chamber, line and gauge. */
    static GasSide vacuum(Section in) {
        return new GasSide(
                chamber(in.object("chamber")),
                pieces(in, "line"),
                in.has("gauge") ? Optional.of(gauge(in.object("gauge"))) : Optional.empty(),
                in.has("roughing") ? pieces(in, "roughing") : List.of(),
                in.optionalQuantity("target"));
    }

    private static GasSide.Chamber chamber(Section in) {
        return new GasSide.Chamber(
                in.quantity("volume"),
                in.quantity("sinceAir"),
                in.choice("filledWith", GasSide.Exposure.values(), FieldCatalogue::id),
                in.list("surfaces").stream().map(VacuumReader::surface).toList(),
                in.has("seals")
                        ? in.list("seals").stream()
                                .map(seal -> new GasSide.Seal(
                                        seal.text("material"),
                                        seal.quantity("ringDiameter"),
                                        seal.quantity("cordDiameter")))
                                .toList()
                        : List.of(),
                in.quantityOr("leak", 0));
    }

    private static GasSide.Surface surface(Section in) {
        boolean baked = in.has("treatment")
                && in.choice("treatment", GasSide.Treatment.values(), FieldCatalogue::id) == GasSide.Treatment.BAKED;
        return new GasSide.Surface(in.text("material"), in.quantity("area"), baked);
    }

    private static GasSide.Gauge gauge(Section in) {
        GasSide.GaugeKind kind = in.choice("kind", GasSide.GaugeKind.values(), FieldCatalogue::id);
        return new GasSide.Gauge(
                in.text("at"),
                kind,
                in.quantityOr("lowest", kind == null ? Double.NaN : kind.lowestPa()),
                in.quantityOr("highest", kind == null ? Double.NaN : kind.highestPa()),
                in.quantityOr("gasFactor", 1));
    }

    private static List<LinePiece> pieces(Section in, String list) {
        return in.listOfKinds(list).stream().map(VacuumReader::piece).toList();
    }

    /** A piece; one of no known kind was reported and only keeps its place. */
    private static LinePiece piece(Section in) {
        PieceKind kind = in.choice("kind", PieceKind.values(), PieceKind::id);
        in.reportUnknown(kind == null ? null : kind.id());
        String name = in.text("name");
        LinePiece.Shape shape =
                kind == null ? new LinePiece.Aperture(Double.NaN) : shape(kind, in, in.quantity("innerDiameter"));
        return new LinePiece(
                kind == null ? PieceKind.APERTURE : kind,
                name,
                shape,
                in.has("material") ? Optional.of(in.text("material")) : Optional.empty(),
                in.quantityOr("leak", 0));
    }

    private static LinePiece.Shape shape(PieceKind kind, Section in, double bore) {
        return switch (kind) {
            case TUBE, HOSE -> new LinePiece.Tube(bore, in.quantity("length"));
            case ELBOW -> new LinePiece.Elbow(bore, in.quantity("length"), in.quantity("angle"));
            case APERTURE -> new LinePiece.Aperture(bore);
            case REDUCER -> new LinePiece.Reducer(bore, in.quantity("outletDiameter"), in.quantity("length"));
            case VALVE -> new LinePiece.Valve(bore, in.quantity("length"), in.optionalQuantity("conductance"));
            case OPAQUE_COIL, CHEVRON, LOUVRE ->
                new LinePiece.Baffle(
                        bore,
                        in.quantity("vaneDepth"),
                        in.quantity("vanePitch"),
                        in.quantityOr("vaneAngle", TypicalValues.VANE_ANGLE));
        };
    }

    /** What protects the pump. */
    static Protection protection(Section in) {
        return new Protection(
                in.listOfKinds("trips").stream().map(VacuumReader::trip).toList(),
                in.has("battery") ? battery(in.object("battery")) : Protection.NONE.battery());
    }

    private static Protection.Trip trip(Section in) {
        Protection.TripKind kind = in.choice("kind", Protection.TripKind.values(), FieldCatalogue::id);
        in.reportUnknown(kind == null ? null : FieldCatalogue.id(kind));
        double setPoint = kind == null ? Double.NaN : in.quantity(setPointField(kind));
        return new Protection.Trip(
                kind == null ? Protection.TripKind.BOILER_TEMPERATURE : kind, setPoint, in.quantityOr("delay", 0));
    }

    /** Name of the field that holds a trip's set point. */
    static String setPointField(Protection.TripKind kind) {
        return switch (kind) {
            case WATER_FLOW -> "flow";
            case FORELINE_PRESSURE -> "pressure";
            default -> "temperature";
        };
    }

    private static Protection.Battery battery(Section in) {
        Set<Protection.Load> keeps = new HashSet<>();
        List<String> texts = in.texts("keeps");
        List<String> accepted =
                Arrays.stream(Protection.Load.values()).map(FieldCatalogue::id).toList();
        for (int i = 0; i < texts.size(); i++) {
            int which = accepted.indexOf(texts.get(i));
            if (which >= 0) {
                keeps.add(Protection.Load.values()[which]);
            } else if (!texts.get(i).isEmpty()) {
                in.reportChoice(in.path("keeps") + "[" + i + "]", texts.get(i), accepted);
            }
        }
        return new Protection.Battery(keeps, in.quantity("lasts"));
    }
}
