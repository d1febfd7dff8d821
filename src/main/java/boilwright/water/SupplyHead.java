package boilwright.water;

import boilwright.rig.Supply;
import boilwright.units.PhysicalConstants;

/** Pressure that a supply gives at a flow; never rises with it and falls without end. */
sealed interface SupplyHead {
    /** Pressure at the circuit's inlet above that at its outlet, Pa. */
    double pressurePa(double massFlow);

    /** A flow of the size that it can move, kg/s; above 0. */
    double usualFlow();

    /** Flow up to which its data go, kg/s. */
    double knownFlow();

    /**
     * What drives the water of a supply that has a pump or is a tap.
     *
     * @throws IllegalArgumentException for any other supply
     */
    static SupplyHead of(Supply supply, double density) {
        if (supply instanceof Supply.Pumped pumped) {
            return new ByPump(PumpCurve.of(pumped.pump()), density);
        }
        if (supply instanceof Supply.Tap tap) {
            double line = tap.lineFlowAtOneBarM3PerS();
            return new ByMains(tap.staticPressurePa(), Resistance.ratedSquare(line, density), density * line);
        }
        throw new IllegalArgumentException("no head of its own: " + supply);
    }

    /** A pump. */
    record ByPump(PumpCurve curve, double density) implements SupplyHead {
        @Override
        public double pressurePa(double massFlow) {
            return density * PhysicalConstants.STANDARD_GRAVITY * curve.headM(massFlow / density);
        }

        @Override
        public double usualFlow() {
            return knownFlow();
        }

        @Override
        public double knownFlow() {
            return density * curve.lastFlowM3PerS();
        }
    }

    /** The mains through line and cock, whose loss rises with the square of the flow. */
    record ByMains(double staticPa, double square, double flowAtOneBar) implements SupplyHead {
        @Override
        public double pressurePa(double massFlow) {
            return staticPa - square * massFlow * massFlow;
        }

        @Override
        public double usualFlow() {
            return flowAtOneBar;
        }

        @Override
        public double knownFlow() {
            return Double.POSITIVE_INFINITY;
        }
    }
}
