package boilwright.answers;

import boilwright.gasflow.Gas;
import boilwright.outgassing.MaterialLibrary;
import boilwright.outgassing.MaterialRecord;
import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Rig;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.vacuum.BuiltInRates;
import boilwright.vacuum.JetAction;
import boilwright.vacuum.SteadyVacuum;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Every single change that may bring the gauge down, tried on the rig, the best first. */
final class VacuumFixes {
    private static final double WIDER = 2;
    private static final double DAY_S = 86_400;
    /** Changes that gain less than this are not worth a line. */
    private static final double LEAST_FACTOR = 1.01;

    private static final String CLEAN = "borosilicate";
    private static final String BEST_SEAL = "fkm";

    private final Rig rig;
    private final GasSide side;
    private final JetAction jets;
    private final double sinceAirS;
    private final Gas gas;
    private final double nowPa;
    private final List<Fix> fixes = new ArrayList<>();

    private VacuumFixes(Rig rig, JetAction jets, double sinceAirS, Gas gas, double nowPa) {
        this.rig = rig;
        this.jets = jets;
        this.sinceAirS = sinceAirS;
        this.gas = gas;
        this.nowPa = nowPa;
        side = rig.vacuum().orElseThrow();
    }

    static List<Fix> of(Rig rig, JetAction jets, double sinceAirS, Gas gas, double nowPa) {
        VacuumFixes fixes = new VacuumFixes(rig, jets, sinceAirS, gas, nowPa);
        fixes.line();
        fixes.chamber();
        fixes.backing();
        fixes.fixes.sort(Comparator.comparingDouble(Fix::gaugePa));
        return List.copyOf(fixes.fixes);
    }

    private void line() {
        for (int i = 0; i < side.line().size(); i++) {
            LinePiece piece = side.line().get(i);
            String path = "vacuum.line[" + i + "]";
            double wide = Math.min(
                    Math.max(rig.body().innerDiameterM(), piece.shape().inletDiameterM()),
                    WIDER * piece.shape().inletDiameterM());
            String bore = QuantityWriter.writeAuto(wide, Dimension.LENGTH);
            int at = i;
            if (piece.kind() == PieceKind.HOSE) {
                tryPiece("clean:" + path, VacuumText.FIX_CLEAN.say(piece.name()), at, VacuumFixes::clean);
                tryPiece(
                        "clean-wide:" + path,
                        VacuumText.FIX_CLEAN_WIDE.say(piece.name(), bore),
                        at,
                        p -> clean(wider(p, wide)));
            }
            if (!piece.kind().isBaffle() && wide > piece.shape().inletDiameterM()) {
                tryPiece("wide:" + path, VacuumText.FIX_WIDE.say(piece.name(), bore), at, p -> wider(p, wide));
            }
            piece.shape()
                    .withLength(piece.shape().lengthM() / 2)
                    .ifPresent(half -> tryPiece(
                            "short:" + path, VacuumText.FIX_SHORT.say(piece.name()), at, p -> shaped(p, half)));
            if (piece.kind() == PieceKind.APERTURE) {
                List<LinePiece> less = new ArrayList<>(side.line());
                less.remove(i);
                attempt("without:" + path, VacuumText.FIX_WITHOUT.say(piece.name()), withLine(less));
            }
            if (piece.leakPaM3PerS() > 0) {
                tryPiece("leak:" + path, VacuumText.FIX_LEAK.say(piece.name()), at, VacuumFixes::tight);
            }
        }
    }

    private void tryPiece(String id, String title, int at, UnaryOperator<LinePiece> change) {
        List<LinePiece> line = new ArrayList<>(side.line());
        line.set(at, change.apply(line.get(at)));
        attempt(id, title, withLine(line));
    }

    private static LinePiece clean(LinePiece piece) {
        return new LinePiece(PieceKind.TUBE, piece.name(), piece.shape(), Optional.of(CLEAN), piece.leakPaM3PerS());
    }

    private static LinePiece tight(LinePiece piece) {
        return new LinePiece(piece.kind(), piece.name(), piece.shape(), piece.material(), 0);
    }

    private static LinePiece wider(LinePiece piece, double bore) {
        return shaped(piece, piece.shape().withBore(bore));
    }

    private static LinePiece shaped(LinePiece piece, LinePiece.Shape shape) {
        return new LinePiece(piece.kind(), piece.name(), shape, piece.material(), piece.leakPaM3PerS());
    }

    private Rig withLine(List<LinePiece> line) {
        return rig.withVacuum(new GasSide(side.chamber(), line, side.gauge(), side.roughing(), side.targetPa()));
    }

    private void chamber() {
        GasSide.Chamber c = side.chamber();
        if (c.leakPaM3PerS() > 0) {
            attempt(
                    "leak:vacuum.chamber",
                    VacuumText.FIX_LEAK.say("chamber"),
                    with(c.sinceAirS(), c.exposure(), c.surfaces(), c.seals(), 0));
        }
        if (c.exposure() == GasSide.Exposure.HUMID_AIR) {
            attempt(
                    "dry:vacuum.chamber.filledWith",
                    VacuumText.FIX_DRY.say(),
                    with(c.sinceAirS(), GasSide.Exposure.DRY_GAS, c.surfaces(), c.seals(), c.leakPaM3PerS()));
        }
        // a day more counts for everything that gives off gas, whatever the time of the question
        attempt(
                Fix.WAITING + "vacuum.chamber.sinceAir",
                VacuumText.FIX_WAIT.say(),
                with(c.sinceAirS() + DAY_S, c.exposure(), c.surfaces(), c.seals(), c.leakPaM3PerS()));
        for (int i = 0; i < c.seals().size(); i++) {
            GasSide.Seal seal = c.seals().get(i);
            if (!seal.material().equals(BEST_SEAL)) {
                List<GasSide.Seal> seals = new ArrayList<>(c.seals());
                seals.set(i, new GasSide.Seal(BEST_SEAL, seal.ringDiameterM(), seal.cordDiameterM()));
                attempt(
                        "seal:vacuum.chamber.seals[" + i + "]",
                        VacuumText.FIX_SEAL.say(title(seal.material())),
                        with(c.sinceAirS(), c.exposure(), c.surfaces(), seals, c.leakPaM3PerS()));
            }
        }
        for (int i = 0; i < c.surfaces().size(); i++) {
            GasSide.Surface surface = c.surfaces().get(i);
            MaterialRecord material = MaterialLibrary.builtIn().find(surface.material());
            if (!surface.baked() && material.baked().isPresent()) {
                List<GasSide.Surface> surfaces = new ArrayList<>(c.surfaces());
                surfaces.set(i, new GasSide.Surface(surface.material(), surface.areaM2(), true));
                attempt(
                        "bake:vacuum.chamber.surfaces[" + i + "]",
                        VacuumText.FIX_BAKE.say(title(surface.material())),
                        with(c.sinceAirS(), c.exposure(), surfaces, c.seals(), c.leakPaM3PerS()));
            }
        }
    }

    private static String title(String material) {
        return MaterialLibrary.builtIn().find(material).inWords();
    }

    private Rig with(
            double since,
            GasSide.Exposure exposure,
            List<GasSide.Surface> surfaces,
            List<GasSide.Seal> seals,
            double leak) {
        GasSide.Chamber chamber =
                new GasSide.Chamber(side.chamber().volumeM3(), since, exposure, surfaces, seals, leak);
        return rig.withVacuum(new GasSide(chamber, side.line(), side.gauge(), side.roughing(), side.targetPa()));
    }

    private void backing() {
        rig.foreline().backing().ifPresent(backing -> {
            Foreline.BackingPump pump = backing.pump();
            List<Foreline.SpeedPoint> curve = pump.curve().stream()
                    .map(point -> new Foreline.SpeedPoint(point.pressurePa(), 2 * point.speedM3PerS()))
                    .toList();
            attempt(
                    "backing:foreline.pump",
                    VacuumText.FIX_BACKING.say(),
                    rig.withForeline(new Foreline.Backing(
                            backing.line(),
                            backing.volumeM3(),
                            new Foreline.BackingPump(
                                    curve, pump.ultimatePa() / 2, pump.gasBallast(), pump.ballastUltimatePa() / 2))));
        });
    }

    private void attempt(String id, String title, Rig changed) {
        double more = changed.vacuum().orElseThrow().chamber().sinceAirS()
                - side.chamber().sinceAirS();
        double then = SteadyVacuum.of(changed, jets, sinceAirS + more, BuiltInRates.INSTANCE, gas)
                .gaugePa();
        if (nowPa / then > LEAST_FACTOR) {
            fixes.add(new Fix(id, title, changed, then, nowPa / then));
        }
    }
}
