package boilwright.water;

import boilwright.heattransfer.FlowCoefficient;
import boilwright.rig.Cooling;
import boilwright.units.PhysicalConstants;
import boilwright.water.OperatingPoint.ElementFlow;
import java.util.OptionalDouble;

/**
 * What one element costs: wall friction, joints and fittings with the square of the flow, and the weight of a rise. Apart from
 * the weight it is nothing at no flow and rises strictly with it.
 */
final class Resistance {
    private static final double SECONDS_PER_HOUR = 3600;

    private final int element;
    private final Friction friction;
    private final double square;
    private final double liftPa;

    private Resistance(int element, Friction friction, double square, double liftPa) {
        this.element = element;
        this.friction = friction;
        this.square = square;
        this.liftPa = liftPa;
    }

    /** A tube or gap, with what its joints cost at a flow of 1 kg/s. */
    static Resistance passage(int element, Passage passage, double jointSquare, double density, double viscosity) {
        return new Resistance(element, new Friction(passage, density, viscosity), jointSquare, 0);
    }

    /** A valve or a rise. */
    static Resistance fitting(int element, Cooling.Element fitting, double density) {
        if (fitting instanceof Cooling.Valve valve) {
            return new Resistance(element, null, ratedSquare(valve.flowAtOneBarM3PerS(), density), 0);
        }
        double height = ((Cooling.Rise) fitting).heightM();
        return new Resistance(element, null, 0, density * PhysicalConstants.STANDARD_GRAVITY * height);
    }

    /** Pressure drop over the square of the mass flow, Pa s2/kg2, of what passes this flow at 1 bar. */
    static double ratedSquare(double flowAtOneBarM3PerS, double density) {
        return FlowCoefficient.pressureDrop(SECONDS_PER_HOUR * flowAtOneBarM3PerS, density, 1 / density);
    }

    /** Index of the element in the cooling. */
    int element() {
        return element;
    }

    /** Pressure that the water's weight takes, Pa; negative downward. */
    double liftPa() {
        return liftPa;
    }

    /** What friction and fittings take, Pa. */
    double lossPa(double massFlow) {
        double fittings = square * massFlow * massFlow;
        return friction == null ? fittings : fittings + friction.dropPa(massFlow);
    }

    /** The water in the element at this flow. */
    ElementFlow at(double massFlow) {
        OptionalDouble reynolds =
                friction == null ? OptionalDouble.empty() : OptionalDouble.of(friction.reynolds(massFlow));
        return new ElementFlow(massFlow, reynolds, lossPa(massFlow) + liftPa);
    }
}
