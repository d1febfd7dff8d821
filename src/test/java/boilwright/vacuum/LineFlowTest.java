package boilwright.vacuum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.gasflow.Gas;
import boilwright.gasflow.TubeTransmission;
import boilwright.gasflow.ViscousConductance;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LineFlowTest {
    private static final double T = 293.15;

    /** Speed of a pump of this bore and transmission through the line, as a large vessel sees it. */
    private static double speed(List<LinePiece> line, double bore, double ho) {
        double opening = Gas.AIR.aperture(T) * Math.PI / 4 * bore * bore;
        double resistance = 1 / (ho * opening);
        LineFlow flow = LineFlow.of(line, bore, Gas.AIR, T);
        for (int i = 0; i < flow.count(); i++) {
            resistance += 1 / flow.conductance(i, 0);
        }
        return 1 / resistance;
    }

    private static LinePiece piece(LinePiece.Shape shape, PieceKind kind) {
        return new LinePiece(kind, "p", shape, Optional.empty(), 0);
    }

    @Test
    void twoHalvesOfATubeAreTheTubeButForTheBeaming() {
        double whole = speed(List.of(VacuumRigs.tube("a", 0.04, 0.4)), 0.04, 1);
        double halves = speed(List.of(VacuumRigs.tube("a", 0.04, 0.2), VacuumRigs.tube("b", 0.04, 0.2)), 0.04, 1);
        assertThat(halves / whole).isCloseTo(1, within(0.06)).isGreaterThan(1 - 0.06);
    }

    @Test
    void tubeBeforeAPumpAsWideAsItself() {
        double w = TubeTransmission.of(10);
        double opening = Gas.AIR.aperture(T) * Math.PI / 4 * 0.04 * 0.04;
        assertThat(speed(List.of(VacuumRigs.tube("a", 0.04, 0.2)), 0.04, 1)).isCloseTo(opening * w, within(1e-12));
    }

    @Test
    void apertureBeforeAWidePump() {
        double opening = Gas.AIR.aperture(T) * Math.PI / 4 * 0.01 * 0.01;
        double bore = 0.15;
        double wide = Gas.AIR.aperture(T) * Math.PI / 4 * bore * bore;
        double both = speed(List.of(piece(new LinePiece.Aperture(0.01), PieceKind.APERTURE)), bore, 1);
        assertThat(both).isCloseTo(opening, within(1e-12)).isLessThan(wide);
    }

    @Test
    void aPieceMoreNeverRaisesTheSpeed() {
        Random draw = new Random(5101);
        for (int i = 0; i < 400; i++) {
            List<LinePiece> line = new ArrayList<>();
            for (int k = draw.nextInt(4); k >= 0; k--) {
                line.add(random(draw));
            }
            double before = speed(line, 0.08, 0.45);
            List<LinePiece> longer = new ArrayList<>(line);
            longer.add(draw.nextInt(line.size() + 1), random(draw));
            assertThat(speed(longer, 0.08, 0.45)).isLessThanOrEqualTo(before * (1 + 1e-12));
        }
    }

    private static LinePiece random(Random draw) {
        double d = 0.005 * Math.pow(30, draw.nextDouble());
        double length = d * (0.2 + 20 * draw.nextDouble());
        return switch (draw.nextInt(6)) {
            case 0 -> piece(new LinePiece.Aperture(d), PieceKind.APERTURE);
            case 1 -> piece(new LinePiece.Elbow(d, length, draw.nextDouble() * 2), PieceKind.ELBOW);
            case 2 -> piece(new LinePiece.Reducer(d, d * (0.4 + 2 * draw.nextDouble()), length), PieceKind.REDUCER);
            case 3 -> piece(new LinePiece.Baffle(d, d / 8, d / 8, Math.PI / 4), PieceKind.CHEVRON);
            case 4 -> piece(new LinePiece.Valve(d, d, OptionalDouble.empty()), PieceKind.VALVE);
            default -> VacuumRigs.tube("t", d, length);
        };
    }

    @Test
    void pressureBeforeAPieceCarriesTheFlow() {
        LineFlow line = LineFlow.of(List.of(VacuumRigs.tube("a", 0.016, 1.2)), 0.05, Gas.AIR, T);
        for (double flow = 1e-9; flow < 100; flow *= 7) {
            for (double after = 1e-6; after < 1e5; after *= 11) {
                double before = line.before(0, after, flow);
                double carried = line.conductance(0, (before + after) / 2) * (before - after);
                assertThat(carried).isCloseTo(flow, within(flow * 1e-6 + 1e-9 * after));
            }
        }
    }

    @Test
    void viscousLimitIsPoiseuilles() {
        LineFlow line = LineFlow.of(List.of(VacuumRigs.tube("a", 0.016, 1.2)), 0.016, Gas.AIR, T);
        double eta = Gas.AIR.viscosity(T);
        assertThat(line.conductance(0, 1e4) / ViscousConductance.poiseuille(0.016, 1.2, 1e4, eta))
                .isCloseTo(1, within(1e-3));
    }
}
