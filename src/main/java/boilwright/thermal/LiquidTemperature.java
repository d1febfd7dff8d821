package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.Roots;

/** The inverse of a fluid's liquid enthalpy. */
final class LiquidTemperature {
    private LiquidTemperature() {}

    static double of(TabulatedFluid fluid, double enthalpy) {
        return Roots.bracketed(
                t -> fluid.liquidEnthalpy(t) - enthalpy,
                fluid.lowestTemperature(),
                fluid.highestTemperature(),
                1e-11,
                0,
                "temperature of returning oil");
    }
}
