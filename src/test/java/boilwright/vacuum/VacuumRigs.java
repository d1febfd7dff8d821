package boilwright.vacuum;

import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Rig;
import boilwright.thermal.TestRigs;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Rigs with chamber, line and backing pump for tests; invented data. */
public final class VacuumRigs {
    private VacuumRigs() {}

    /** A rotary pump of 4 m3/h behind a metre of 25 mm tube. */
    public static Foreline.Backing backing() {
        return new Foreline.Backing(
                List.of(tube("foreline", 0.025, 1.0)),
                1e-3,
                new Foreline.BackingPump(
                        List.of(new Foreline.SpeedPoint(10, 0.9e-3), new Foreline.SpeedPoint(1e5, 1.1e-3)),
                        0.5,
                        false,
                        5));
    }

    /** A straight tube whose own gas is not counted. */
    public static LinePiece tube(String name, double diameterM, double lengthM) {
        return new LinePiece(PieceKind.TUBE, name, new LinePiece.Tube(diameterM, lengthM), Optional.empty(), 0);
    }

    /** A PVC hose. */
    public static LinePiece hose(double diameterM, double lengthM) {
        return new LinePiece(PieceKind.HOSE, "hose", new LinePiece.Tube(diameterM, lengthM), Optional.of("pvc"), 0);
    }

    /** A five-litre glass chamber, two hours under vacuum. */
    public static GasSide.Chamber chamber() {
        return new GasSide.Chamber(
                5e-3,
                7200,
                GasSide.Exposure.HUMID_AIR,
                List.of(new GasSide.Surface("borosilicate", 0.2, false)),
                List.of(new GasSide.Seal("fkm", 0.08, 0.005)),
                0);
    }

    /** That chamber over a line, with a gauge on it. */
    public static GasSide side(LinePiece... line) {
        return new GasSide(
                chamber(),
                List.of(line),
                Optional.of(new GasSide.Gauge("chamber", GasSide.GaugeKind.COLD_CATHODE, 1e-6, 1, 1)),
                List.of(),
                OptionalDouble.of(1e-3));
    }

    /** A good 150 mm pump whose chamber hangs on a metre of narrow plastic hose. */
    public static Rig hoseCase() {
        return TestRigs.metal150(2200).withForeline(backing()).withVacuum(side(hose(0.008, 1)));
    }
}
