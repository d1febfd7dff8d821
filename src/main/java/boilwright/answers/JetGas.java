package boilwright.answers;

import boilwright.fluid.WorkingFluid;
import boilwright.gasflow.Gas;
import boilwright.gasflow.PumpSpeed;
import boilwright.rig.ElementKind;
import boilwright.rig.LinePiece;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.ElementState;
import boilwright.thermal.SteadyState;
import boilwright.vacuum.JetAction;
import java.util.List;

/** What the jets of a rig do with gas, from what heat and vapour do. */
final class JetGas {
    private final Rig rig;
    private final ParameterValues values;
    private final WorkingFluid fluid;
    private final SteadyState steady;

    JetGas(Rig rig, WorkingFluid fluid, ParameterValues values, SteadyState steady) {
        this.rig = rig;
        this.fluid = fluid;
        this.values = values;
        this.steady = steady;
    }

    /** At rest. */
    JetAction atRest() {
        return action(steady.speedM3PerS(), steady.throughputPaM3PerS(), 0);
    }

    /**
     * At some other moment.
     *
     * @param topShare top jet's share of its full flow, 0 while it is dark
     * @param heatW heat delivered, W
     * @param gasOfOil gas that the oil gives off, Pa m3/s
     */
    JetAction at(double topShare, double heatW, double gasOfOil) {
        double bore = rig.body().innerDiameterM();
        double full = PumpSpeed.full(
                values.get(Parameter.SPEED_COEFFICIENT),
                Math.PI / 4 * bore * bore,
                rig.room().temperatureK(),
                Gas.AIR.molarMass());
        return action(
                full * Math.min(1, topShare),
                values.get(Parameter.THROUGHPUT_PER_POWER) * Math.max(0, heatW),
                gasOfOil);
    }

    private JetAction action(double speed, double throughput, double gasOfOil) {
        double foreline = steady.forelinePa();
        double hydrogen = values.get(Parameter.FORELINE_HYDROGEN);
        double back = foreline
                * ((1 - hydrogen) / values.get(Parameter.NITROGEN_COMPRESSION)
                        + hydrogen / values.get(Parameter.HYDROGEN_COMPRESSION));
        return new JetAction(speed, throughput, back, fluid.vapourPressure(seenK()), gasOfOil);
    }

    /** Temperature of the last oily surface that the chamber sees, K: baffle, else cap, else the room's. */
    double seenK() {
        double roomK = rig.room().temperatureK();
        List<LinePiece> line = rig.vacuum().orElseThrow().line();
        if (line.stream().anyMatch(piece -> piece.kind().isBaffle())) {
            return steady.elements().stream()
                    .filter(this::coolsBaffle)
                    .mapToDouble(ElementState::outletK)
                    .findFirst()
                    .orElse(roomK);
        }
        return steady.capK().orElse(roomK);
    }

    private boolean coolsBaffle(ElementState state) {
        return rig.cooling().elements().get(state.element()).kind() == ElementKind.BAFFLE_COIL;
    }
}
