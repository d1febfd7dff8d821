package boilwright.vacuum;

import boilwright.numerics.OdeSystem;
import java.util.function.DoubleUnaryOperator;

/**
 * Gas in the chamber: V dp/dt = given off - leaving, in the logarithm of the pressure, with both flows summed. Gas in the line
 * is little against that in the chamber and follows at once.
 */
final class ChamberSystem implements OdeSystem {
    /** What stands at the end of the line at a time: pressure there for the gas that arrives. */
    interface End {
        DoubleUnaryOperator at(double timeS);
    }

    static final int LOG_PRESSURE = 0;
    static final int GIVEN_OFF = 1;
    static final int LEFT = 2;

    private final double volumeM3;
    private final double airAtZeroS;
    private final GasHistory gas;
    private final LinePressures line;
    private final End end;
    private final boolean alongLine;
    private final double[] nothing;

    /**
     * @param volumeM3 volume of the chamber, m3
     * @param airAtZeroS time since air at time 0, s
     * @param gas what is given off
     * @param line the line through which it leaves
     * @param end what stands at its end
     * @param alongLine whether the gas of the pieces of the line goes with it
     */
    ChamberSystem(double volumeM3, double airAtZeroS, GasHistory gas, LinePressures line, End end, boolean alongLine) {
        this.volumeM3 = volumeM3;
        this.airAtZeroS = airAtZeroS;
        this.gas = gas;
        this.line = line;
        this.end = end;
        this.alongLine = alongLine;
        nothing = new double[line.conductance.length];
    }

    @Override
    public int size() {
        return 3;
    }

    @Override
    public boolean isAdmissible(double t, double[] y) {
        return y[LOG_PRESSURE] < 14 && y[LOG_PRESSURE] > -60;
    }

    @Override
    public void derivative(double t, double[] y, double[] dydt) {
        double pressure = Math.exp(y[LOG_PRESSURE]);
        double given = gas.chamber(airAtZeroS + t);
        double left = leaving(t, pressure);
        dydt[LOG_PRESSURE] = (given - left) / (volumeM3 * pressure);
        dydt[GIVEN_OFF] = given;
        dydt[LEFT] = left;
    }

    /** Gas that leaves the chamber at a pressure, Pa m3/s; the line's pressures are then those that belong to it. */
    double leaving(double t, double pressurePa) {
        return line.leaving(pressurePa, end.at(t), along(t));
    }

    private double[] along(double t) {
        return alongLine ? gas.pieces(airAtZeroS + t) : nothing;
    }

    /** Gas of the whole line at a time, Pa m3/s. */
    double ofLine(double t) {
        double sum = 0;
        for (double own : along(t)) {
            sum += own;
        }
        return sum;
    }

    LinePressures line() {
        return line;
    }

    DoubleUnaryOperator endAt(double t) {
        return end.at(t);
    }
}
