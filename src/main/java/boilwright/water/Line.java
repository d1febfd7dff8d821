package boilwright.water;

import boilwright.numerics.Roots;
import boilwright.water.OperatingPoint.ElementFlow;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Elements that the same water passes one after the other. */
final class Line {
    /** Step in the flow's logarithm by which a bracket is widened until it holds the root. */
    private static final double STEP = 0.2;
    /** Accepted width of the last bracket as a fraction of the flow. */
    private static final double EXACT = 1e-13;
    /** Power of the flow with which a loss usually rises, between 1 (laminar) and 2 (fittings); a start, no more. */
    private static final double USUAL_POWER = 1.75;

    private final String name;
    private final Resistance[] elements;
    private final double liftPa;
    private final DoubleUnaryOperator excess = this::excess;
    private double logLossWanted;

    Line(String name, List<Resistance> elements) {
        this.name = name;
        this.elements = elements.toArray(new Resistance[0]);
        double sum = 0;
        for (Resistance element : this.elements) {
            sum += element.liftPa();
        }
        liftPa = sum;
    }

    /** Name of the branch; empty where all water passes. */
    String name() {
        return name;
    }

    /** Pressure that the water's weight takes, Pa. */
    double liftPa() {
        return liftPa;
    }

    /** What friction and fittings take, Pa; strictly rising, zero at no flow. */
    double lossPa(double massFlow) {
        double sum = 0;
        for (Resistance element : elements) {
            sum += element.lossPa(massFlow);
        }
        return sum;
    }

    /**
     * Flow at which friction and fittings take this much, kg/s. In logarithms the loss is nearly straight, so that the root
     * takes a few steps.
     *
     * @param lossPa above 0
     * @param flow any flow, above 0, from which the search starts, kg/s
     * @param lossAtFlow loss at that flow, Pa
     */
    double flowAt(double lossPa, double flow, double lossAtFlow) {
        logLossWanted = Math.log(lossPa);
        double low = Math.log(flow) + (logLossWanted - Math.log(lossAtFlow)) / USUAL_POWER;
        double high = low;
        if (excess(low) < 0) {
            do {
                low = high;
                high += STEP;
            } while (excess(high) < 0);
        } else {
            do {
                high = low;
                low -= STEP;
            } while (excess(low) > 0);
        }
        return Math.exp(Roots.bracketed(excess, low, high, 0, EXACT, "the flow through a branch"));
    }

    private double excess(double logFlow) {
        return Math.log(lossPa(Math.exp(logFlow))) - logLossWanted;
    }

    /** Writes the water of each element to its place. */
    void report(double massFlow, ElementFlow[] into) {
        for (Resistance element : elements) {
            into[element.element()] = element.at(massFlow);
        }
    }
}
