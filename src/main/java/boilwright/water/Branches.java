package boilwright.water;

import boilwright.numerics.Roots;
import boilwright.water.OperatingPoint.ElementFlow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A stretch of the circuit: one line, or several side by side with the same pressure across each, whose flows add up. A branch whose
 * rise that pressure does not overcome carries nothing; water does not run back through it.
 */
final class Branches {
    /** By how much the bracket is wider than it need be, so that rounding can't put the root outside. */
    private static final double SLACK = 1e-6;
    /** Accepted width of the last bracket as a fraction of the pressure. */
    private static final double EXACT = 1e-12;

    private final Line[] lines;
    private final double[] flows;
    private final double[] lossOfAll;
    private final double lowestLiftPa;
    private final DoubleUnaryOperator excess = this::excess;
    private double wanted;
    private double settledLossPa;

    Branches(List<Line> lines) {
        this.lines = lines.toArray(new Line[0]);
        flows = new double[this.lines.length];
        lossOfAll = new double[this.lines.length];
        double lowest = Double.POSITIVE_INFINITY;
        for (Line line : this.lines) {
            lowest = Math.min(lowest, line.liftPa());
        }
        lowestLiftPa = lowest;
    }

    /** The least pressure at which any water flows, Pa. */
    double liftPa() {
        return lowestLiftPa;
    }

    /** What the stretch takes beyond {@link #liftPa} when this much flows through all its branches together, Pa. */
    double lossPa(double massFlow) {
        if (lines.length == 1 || massFlow <= 0) {
            return lines[0].lossPa(massFlow);
        }
        wanted = massFlow;
        double high = Double.POSITIVE_INFINITY;
        double low = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lines.length; i++) {
            double above = lines[i].liftPa() - lowestLiftPa;
            lossOfAll[i] = lines[i].lossPa(massFlow * (1 + SLACK));
            // No branch carries more than all, and one at least carries its share.
            high = Math.min(high, above + lossOfAll[i]);
            low = Math.min(low, above + lines[i].lossPa(massFlow / lines.length * (1 - SLACK)));
        }
        return Math.exp(
                Roots.bracketed(excess, Math.log(low), Math.log(high), 0, EXACT, "the pressure across the branches"));
    }

    private double excess(double logPa) {
        return Math.log(split(Math.exp(logPa)) / wanted);
    }

    /** Sets the flow of every branch at this pressure beyond the lowest lift; their sum. */
    private double split(double pressurePa) {
        double sum = 0;
        for (int i = 0; i < lines.length; i++) {
            double left = pressurePa - (lines[i].liftPa() - lowestLiftPa);
            flows[i] = left > 0 ? lines[i].flowAt(left, wanted * (1 + SLACK), lossOfAll[i]) : 0;
            sum += flows[i];
        }
        return sum;
    }

    /** Lets this much flow through all branches together; what follows tells how. */
    void settle(double massFlow) {
        settledLossPa = lossPa(massFlow);
        if (lines.length == 1) {
            flows[0] = massFlow;
        } else if (massFlow > 0) {
            split(settledLossPa);
        } else {
            Arrays.fill(flows, 0);
        }
    }

    /** Pressure across the stretch, Pa, rises included. */
    double settledDropPa() {
        return lowestLiftPa + settledLossPa;
    }

    /** Writes the water of each element to its place. */
    void report(ElementFlow[] into) {
        for (int i = 0; i < lines.length; i++) {
            lines[i].report(flows[i], into);
        }
    }

    /** The lines that stay without water. */
    List<Line> idle() {
        List<Line> idle = new ArrayList<>();
        for (int i = 0; i < lines.length; i++) {
            if (flows[i] == 0) {
                idle.add(lines[i]);
            }
        }
        return idle;
    }
}
