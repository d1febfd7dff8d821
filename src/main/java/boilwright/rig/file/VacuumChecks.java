package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.gasflow.Gas;
import boilwright.outgassing.MaterialLibrary;
import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Whether the parts of the gas side fit one another. */
final class VacuumChecks {
    /** Rounding of a data sheet's figure. */
    private static final double ROUNDING = 1.05;

    private final Rig rig;
    private final Findings findings;
    private final Map<String, String> names = new HashMap<>();

    private VacuumChecks(Rig rig, Findings findings) {
        this.rig = rig;
        this.findings = findings;
    }

    static void run(Rig rig, Findings findings) {
        VacuumChecks checks = new VacuumChecks(rig, findings);
        if (rig.foreline() instanceof Foreline.Backing backing) {
            checks.pieces("foreline.line", backing.line());
            checks.pump(backing.pump());
        }
        rig.vacuum().ifPresent(checks::vacuum);
    }

    private void vacuum(GasSide side) {
        pieces("vacuum.line", side.line());
        pieces("vacuum.roughing", side.roughing());
        List<GasSide.Surface> surfaces = side.chamber().surfaces();
        for (int i = 0; i < surfaces.size(); i++) {
            material(
                    "vacuum.chamber.surfaces[" + i + "].material",
                    surfaces.get(i).material());
        }
        List<GasSide.Seal> seals = side.chamber().seals();
        for (int i = 0; i < seals.size(); i++) {
            String at = "vacuum.chamber.seals[" + i + "]";
            material(at + ".material", seals.get(i).material());
            if (seals.get(i).cordDiameterM() >= seals.get(i).ringDiameterM() / 2) {
                String ring = length(seals.get(i).ringDiameterM());
                findings.reportField(
                        at + ".cordDiameter",
                        MessageKey.RIG_CORD_TOO_THICK,
                        findings.found(at + ".cordDiameter"),
                        ring);
            }
        }
        side.gauge().ifPresent(gauge -> gauge(gauge, side));
    }

    private void gauge(GasSide.Gauge gauge, GasSide side) {
        List<String> places = new ArrayList<>(List.of(GasSide.Gauge.AT_CHAMBER, GasSide.Gauge.AT_INLET));
        side.line().stream()
                .map(LinePiece::name)
                .filter(name -> !name.isEmpty())
                .forEach(places::add);
        if (!gauge.at().isEmpty() && !places.contains(gauge.at())) {
            findings.reportChoice("vacuum.gauge.at", gauge.at(), places);
        }
        if (gauge.lowestPa() >= gauge.highestPa()) {
            findings.reportField(
                    "vacuum.gauge.lowest",
                    MessageKey.RIG_GAUGE_RANGE,
                    pressure(gauge.lowestPa()),
                    pressure(gauge.highestPa()));
        }
    }

    private void pump(Foreline.BackingPump pump) {
        double room = rig.room().pressurePa();
        if (pump.ultimatePa() >= room) {
            String path = "foreline.pump.ultimate";
            findings.reportField(path, MessageKey.RIG_FORELINE_ABOVE_ROOM, findings.found(path), pressure(room));
        }
        if (pump.ballastUltimatePa() < pump.ultimatePa()) {
            findings.reportField(
                    "foreline.pump.ballastUltimate",
                    MessageKey.RIG_BALLAST_BETTER,
                    pressure(pump.ballastUltimatePa()),
                    pressure(pump.ultimatePa()));
        }
        for (int i = 1; i < pump.curve().size(); i++) {
            double before = pump.curve().get(i - 1).pressurePa();
            if (pump.curve().get(i).pressurePa() <= before) {
                String path = "foreline.pump.curve[" + i + "].pressure";
                findings.reportField(path, MessageKey.RIG_CURVE_ORDER, findings.found(path), pressure(before));
            }
        }
    }

    private void pieces(String list, List<LinePiece> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            LinePiece piece = pieces.get(i);
            String at = list + "[" + i + "]";
            String other = piece.name().isEmpty() ? null : names.putIfAbsent(piece.name(), at);
            boolean reserved = piece.name().equals(GasSide.Gauge.AT_CHAMBER)
                    || piece.name().equals(GasSide.Gauge.AT_INLET);
            if (other != null || reserved) {
                findings.reportField(
                        at + ".name",
                        MessageKey.RIG_PIECE_NAME_TAKEN,
                        Shown.quoted(piece.name()),
                        reserved ? "a place of every rig" : "the name of " + other);
            }
            piece.material().ifPresent(material -> material(at + ".material", material));
            shape(piece, at);
        }
    }

    private void material(String path, String id) {
        if (!id.isEmpty() && !MaterialLibrary.builtIn().ids().contains(id)) {
            findings.reportChoice(path, id, MaterialLibrary.builtIn().ids());
        }
    }

    private void shape(LinePiece piece, String at) {
        LinePiece.Shape shape = piece.shape();
        if (shape instanceof LinePiece.Tube tube) {
            length(tube.lengthM(), at);
        } else if (shape instanceof LinePiece.Elbow elbow) {
            length(elbow.lengthM(), at);
        } else if (shape instanceof LinePiece.Reducer cone) {
            if (cone.inletDiameterM() == cone.outletDiameterM()) {
                String path = at + ".outletDiameter";
                findings.reportField(path, MessageKey.RIG_REDUCER_STRAIGHT, findings.found(path));
            }
        } else if (shape instanceof LinePiece.Valve valve) {
            valve(valve, at);
        } else if (shape instanceof LinePiece.Baffle baffle) {
            baffle(piece.kind(), baffle, at);
        }
    }

    private void length(double metres, String at) {
        if (metres == 0) {
            findings.reportField(at + ".length", MessageKey.RIG_TUBE_WITHOUT_LENGTH, findings.found(at + ".length"));
        }
    }

    private void valve(LinePiece.Valve valve, String at) {
        OptionalDouble given = valve.conductanceM3PerS();
        double opening = Gas.AIR.aperture(TypicalValues.DATA_SHEET_K)
                * Math.PI
                / 4
                * valve.innerDiameterM()
                * valve.innerDiameterM();
        if (given.isPresent() && given.getAsDouble() > ROUNDING * opening) {
            String path = at + ".conductance";
            String most = QuantityWriter.writeAuto(opening, Dimension.VOLUME_FLOW);
            findings.reportField(path, MessageKey.RIG_VALVE_TOO_GOOD, findings.found(path), most);
        }
        if (given.isEmpty()) {
            length(valve.lengthM(), at);
        }
    }

    /**
     * Nothing may go straight through: a row of vanes hides what lies behind it while its pitch is no more than depth times the
     * tangent of its angle, and two rows that meet in an edge twice that.
     */
    private void baffle(PieceKind kind, LinePiece.Baffle baffle, String at) {
        int rows = kind == PieceKind.CHEVRON ? 2 : 1;
        double widest = rows * baffle.depthM() * Math.tan(baffle.angleRad());
        if (baffle.pitchM() > widest * (1 + 1e-9)) {
            String path = at + ".vanePitch";
            findings.reportField(path, MessageKey.RIG_BAFFLE_OPEN, findings.found(path), length(widest));
        }
    }

    private static String length(double metres) {
        return QuantityWriter.writeAuto(metres, Dimension.LENGTH);
    }

    private static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }
}
