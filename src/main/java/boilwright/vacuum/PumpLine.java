package boilwright.vacuum;

import boilwright.gasflow.Gas;
import boilwright.rig.Column;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ways of the gas in one rig: chamber to pump, through the dark pump, around it, and the foreline. */
final class PumpLine {
    final GasSide side;
    final Gas gas;
    final LineFlow line;
    final LineFlow throughPump;
    final LineFlow roughing;
    final BackingSide backing;
    final SurfaceRates rates;
    private final Rig rig;

    PumpLine(Rig rig, SurfaceRates rates, Gas gas) {
        this.rig = rig;
        this.rates = rates;
        this.gas = gas;
        side = rig.vacuum().orElseThrow();
        double roomK = rig.room().temperatureK();
        line = LineFlow.of(side.line(), rig.body().innerDiameterM(), gas, roomK);
        double equal = throughDiameter(rig);
        LinePiece body = new LinePiece(
                PieceKind.TUBE, "", new LinePiece.Tube(equal, rig.column().heightM()), Optional.empty(), 0);
        throughPump = LineFlow.of(List.of(body), equal, gas, roomK);
        List<LinePiece> around = side.roughing();
        double last =
                around.isEmpty() ? 1 : around.get(around.size() - 1).shape().outletDiameterM();
        roughing = LineFlow.of(around, last, gas, roomK);
        backing = BackingSide.of(rig, rates);
    }

    /**
     * Bore of the tube that stands for the ring between column and body: as much area; engineering judgement, the dark pump
     * is never what costs most.
     */
    private static double throughDiameter(Rig rig) {
        double body = rig.body().innerDiameterM();
        double column = 0;
        for (Column.Segment segment : rig.column().segments()) {
            column = Math.max(column, segment.innerDiameterM() + 2 * segment.wallThicknessM());
        }
        return Math.sqrt(body * body - column * column);
    }

    /** Number of the junction at which the gauge sits: 0 for the chamber. */
    int gaugeJunction() {
        String at = side.gauge().map(GasSide.Gauge::at).orElse(GasSide.Gauge.AT_CHAMBER);
        if (at.equals(GasSide.Gauge.AT_CHAMBER)) {
            return 0;
        }
        if (at.equals(GasSide.Gauge.AT_INLET)) {
            return side.line().size();
        }
        List<String> names = new ArrayList<>();
        side.line().forEach(piece -> names.add(piece.name()));
        return names.indexOf(at);
    }

    /** Gas of the sources in the chamber, Pa m3/s. */
    static double ofChamber(List<GasSource> sources) {
        return sources.stream()
                .filter(source -> source.piece() < 0)
                .mapToDouble(GasSource::flow)
                .sum();
    }

    /** Gas of the sources along each piece, Pa m3/s. */
    double[] ofPieces(List<GasSource> sources) {
        double[] flows = new double[line.count()];
        for (GasSource source : sources) {
            if (source.piece() >= 0) {
                flows[source.piece()] += source.flow();
            }
        }
        return flows;
    }

    Rig rig() {
        return rig;
    }
}
