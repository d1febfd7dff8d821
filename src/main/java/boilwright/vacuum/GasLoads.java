package boilwright.vacuum;

import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.Rig;
import java.util.List;

/** How much gas the parts of a rig give off. */
final class GasLoads {
    private GasLoads() {}

    /** Gas of chamber and line that arrives at the foreline when the run begins, Pa m3/s. */
    static double arriving(Rig rig) {
        if (rig.vacuum().isEmpty()) {
            return 0;
        }
        GasSide side = rig.vacuum().get();
        return side.chamber().leakPaM3PerS()
                + ofPieces(side.line(), side.chamber().sinceAirS());
    }

    /** Gas of pieces, Pa m3/s, this long after they stood in air. */
    static double ofPieces(List<LinePiece> pieces, double sinceAirS) {
        return pieces.stream().mapToDouble(LinePiece::leakPaM3PerS).sum();
    }
}
