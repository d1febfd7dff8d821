package boilwright.rig;

import java.util.OptionalDouble;

/**
 * Limits that the user sets in place of the usual ones; empty means the usual one.
 *
 * @param requiredBoilerPressurePa boiler pressure for which the jets are designed, Pa
 * @param heatMargin least ratio of heat available to heat needed
 * @param oilBulkK highest oil temperature, K
 * @param oilFilmK highest oil temperature at the heated wall, K
 * @param glassStressPa highest tensile stress in glass, Pa
 * @param sourceK highest temperature of plate or element, K
 * @param waterOutK highest water outlet temperature, K
 * @param waterInLowK lowest good inlet temperature, K
 * @param waterInHighK highest good inlet temperature, K
 * @param capK highest cap temperature, K
 * @param columnMach highest Mach number at the column's foot
 * @param hydrostaticSuperheatK highest superheat at the bottom of the pool, K
 * @param oilLossKgPerS highest oil flow into the foreline, kg/s
 * @param leastLiquidFraction least share of the charge that must stay in the boiler
 */
public record Limits(
        OptionalDouble requiredBoilerPressurePa,
        OptionalDouble heatMargin,
        OptionalDouble oilBulkK,
        OptionalDouble oilFilmK,
        OptionalDouble glassStressPa,
        OptionalDouble sourceK,
        OptionalDouble waterOutK,
        OptionalDouble waterInLowK,
        OptionalDouble waterInHighK,
        OptionalDouble capK,
        OptionalDouble columnMach,
        OptionalDouble hydrostaticSuperheatK,
        OptionalDouble oilLossKgPerS,
        OptionalDouble leastLiquidFraction) {
    /** No limit overridden. */
    public static final Limits USUAL = new Limits(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty());
}
