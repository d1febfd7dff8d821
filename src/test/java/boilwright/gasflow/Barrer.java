package boilwright.gasflow;

import boilwright.units.PhysicalConstants;

/** The unit in which permeabilities of polymers are published: 1e-10 cm3(STP) cm/(cm2 s cmHg). */
public final class Barrer {
    /** One barrer, mol m/(s m2 Pa): a cubic centimetre at 0 C and one atmosphere is 1/22413.97 mol (CODATA 2018). */
    public static final double SI = 1e-10 / 22413.969545 * 1e-2 / (1e-4 * 1333.22387415);

    private Barrer() {}

    /**
     * Permeability as a flow of gas, p V, instead of an amount.
     *
     * @param barrer in barrer
     * @param temperatureK temperature at which the volume is counted, K
     * @return m2/s: Pa m3/s through 1 m2 of 1 m thickness at 1 Pa
     */
    public static double asThroughput(double barrer, double temperatureK) {
        return barrer * SI * PhysicalConstants.MOLAR_GAS_CONSTANT * temperatureK;
    }
}
