package boilwright.rig.file;

import boilwright.rig.FieldCatalogue;
import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.Protection;
import java.util.Arrays;
import java.util.List;

/** Lays the gas side, and what protects the pump, out as objects of a rig's file. */
final class VacuumTree {
    private VacuumTree() {}

    static void foreline(FieldWriter out, Foreline foreline) {
        out.text("kind", foreline.kind().id());
        if (foreline instanceof Foreline.GivenPressure given) {
            out.quantity("pressure", given.pressurePa());
        } else if (foreline instanceof Foreline.Backing backing) {
            pieces(out, "line", backing.line());
            out.quantity("volume", backing.volumeM3());
            FieldWriter pump = out.object("pump");
            Foreline.Ballast ballast = backing.pump().gasBallast() ? Foreline.Ballast.OPEN : Foreline.Ballast.CLOSED;
            pump.quantity("ultimate", backing.pump().ultimatePa())
                    .text("gasBallast", FieldCatalogue.id(ballast))
                    .quantity("ballastUltimate", backing.pump().ballastUltimatePa());
            backing.pump()
                    .curve()
                    .forEach(point -> pump.entry("curve")
                            .quantity("pressure", point.pressurePa())
                            .quantity("speed", point.speedM3PerS()));
        }
    }

    static void vacuum(FieldWriter out, GasSide side) {
        GasSide.Chamber chamber = side.chamber();
        FieldWriter in = out.object("chamber");
        in.quantity("volume", chamber.volumeM3())
                .quantity("sinceAir", chamber.sinceAirS())
                .text("filledWith", FieldCatalogue.id(chamber.exposure()));
        in.list("surfaces");
        chamber.surfaces()
                .forEach(surface -> in.entry("surfaces")
                        .text("material", surface.material())
                        .quantity("area", surface.areaM2())
                        .text(
                                "treatment",
                                FieldCatalogue.id(
                                        surface.baked() ? GasSide.Treatment.BAKED : GasSide.Treatment.UNBAKED)));
        chamber.seals()
                .forEach(seal -> in.entry("seals")
                        .text("material", seal.material())
                        .quantity("ringDiameter", seal.ringDiameterM())
                        .quantity("cordDiameter", seal.cordDiameterM()));
        in.quantity("leak", chamber.leakPaM3PerS());
        pieces(out, "line", side.line());
        side.gauge()
                .ifPresent(gauge -> out.object("gauge")
                        .text("at", gauge.at())
                        .text("kind", FieldCatalogue.id(gauge.kind()))
                        .quantity("lowest", gauge.lowestPa())
                        .quantity("highest", gauge.highestPa())
                        .quantity("gasFactor", gauge.gasFactor()));
        if (!side.roughing().isEmpty()) {
            pieces(out, "roughing", side.roughing());
        }
        out.optional("target", side.targetPa());
    }

    private static void pieces(FieldWriter out, String list, List<LinePiece> pieces) {
        out.list(list);
        pieces.forEach(piece -> piece(out.entry(list), piece));
    }

    private static void piece(FieldWriter out, LinePiece piece) {
        LinePiece.Shape shape = piece.shape();
        out.text("kind", piece.kind().id())
                .text("name", piece.name())
                .quantity("innerDiameter", shape.inletDiameterM());
        if (shape instanceof LinePiece.Tube tube) {
            out.quantity("length", tube.lengthM());
        } else if (shape instanceof LinePiece.Elbow elbow) {
            out.quantity("length", elbow.lengthM()).quantity("angle", elbow.angleRad());
        } else if (shape instanceof LinePiece.Reducer cone) {
            out.quantity("length", cone.lengthM()).quantity("outletDiameter", cone.outletDiameterM());
        } else if (shape instanceof LinePiece.Valve valve) {
            out.quantity("length", valve.lengthM()).optional("conductance", valve.conductanceM3PerS());
        } else if (shape instanceof LinePiece.Baffle baffle) {
            out.quantity("vaneDepth", baffle.depthM())
                    .quantity("vanePitch", baffle.pitchM())
                    .quantity("vaneAngle", baffle.angleRad());
        }
        piece.material().ifPresent(material -> out.text("material", material));
        out.quantity("leak", piece.leakPaM3PerS());
    }

    static void protection(FieldWriter out, Protection protection) {
        out.list("trips");
        protection
                .trips()
                .forEach(trip -> out.entry("trips")
                        .text("kind", FieldCatalogue.id(trip.kind()))
                        .quantity(VacuumReader.setPointField(trip.kind()), trip.setPoint())
                        .quantity("delay", trip.delayS()));
        if (protection.battery().forS() > 0) {
            out.object("battery")
                    .texts(
                            "keeps",
                            Arrays.stream(Protection.Load.values())
                                    .filter(protection.battery().keeps()::contains)
                                    .map(FieldCatalogue::id)
                                    .toList())
                    .quantity("lasts", protection.battery().forS());
        }
    }
}
