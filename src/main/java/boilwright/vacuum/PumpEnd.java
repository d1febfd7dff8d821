package boilwright.vacuum;

import java.util.function.DoubleUnaryOperator;

/**
 * The pump as the gas meets it. While the top jet pumps, S = min(S0, Qmax/p) on top of the pressure that comes back through the
 * jets and from the oil; otherwise, and with more gas than the jets can take, gas finds its way through the dark pump to the
 * foreline.
 */
final class PumpEnd {
    private final DoubleUnaryOperator foreline;
    private final LineFlow throughPump;
    /** S0 at the top jet as it runs, m3/s; 0 when dark. */
    private double speed;
    /** Most gas that the jets take, Pa m3/s. */
    private double mostGas;

    private double gasOfOil;
    /** What comes back, Pa. */
    private double ultimatePa;

    /**
     * @param foreline foreline pressure for the gas that arrives there
     * @param throughPump the way through the dark pump
     */
    PumpEnd(DoubleUnaryOperator foreline, LineFlow throughPump) {
        this.foreline = foreline;
        this.throughPump = throughPump;
    }

    /** Sets what the jets do. */
    void jets(JetAction action) {
        speed = action.speedM3PerS();
        mostGas = action.throughput();
        ultimatePa = action.backDiffusionPa() + action.oilVapourPa();
        gasOfOil = action.gasOfOil();
    }

    /** Whether the jets can take this much gas, Pa m3/s. */
    boolean takes(double flow) {
        return speed > 0 && flow <= mostGas;
    }

    /** Pressure at the pump's inlet, Pa, when this much gas arrives, Pa m3/s. */
    double inletPa(double flow) {
        if (takes(flow)) {
            return ultimatePa + Math.max(0, flow) / speed;
        }
        double pressure = foreline.applyAsDouble(Math.max(0, flow) + gasOfOil);
        for (int i = throughPump.count() - 1; i >= 0; i--) {
            pressure = throughPump.before(i, pressure, flow);
        }
        // never better than the jets would be
        return speed > 0 ? Math.max(pressure, ultimatePa + mostGas / speed) : Math.max(pressure, ultimatePa);
    }
}
