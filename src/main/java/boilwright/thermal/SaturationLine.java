package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;

/**
 * Saturation temperature, kinetic condensation limit p/sqrt(2 pi Rs Ts) and what the resistance of the liquid's surface needs
 * (its coefficient is p/sqrt(2 pi Rs Ts) hfg^2/(Rs Ts^2): the Hertz-Knudsen flux linearised with Clausius-Clapeyron, V. P. Carey,
 * Liquid-Vapor Phase-Change Phenomena, ch. 4; good within a few kelvin of saturation) against pressure, for the innermost loop: cubic
 * Hermite pieces found from the leading bits of the pressure, which spares the logarithm and the root. Within 1e-7 K of the
 * fluid's own answer, which is asked outside the table.
 */
final class SaturationLine {
    /** Pieces to each doubling of the pressure: two to this power. */
    private static final int PIECES_LOG2 = 6;

    private static final int SHIFT = 52 - PIECES_LOG2;
    private static final int COLUMNS = 12;
    private static final double HIGHEST_PA = 1e5;

    private final TabulatedFluid fluid;
    private final double gasConstant;
    private final double lowestPa;
    private final long first;
    private final int pieces;
    private final double[] table;

    /** Temperature at the pressure asked last, K. */
    double temperatureK;
    /** Kinetic limit at the pressure asked last, kg/(m2 s). */
    double kineticFlux;
    /** Ts squared over the kinetic limit: the resistance of the surface times latent heat squared over Rs, m2 s K2/kg. */
    double interfaceResistance;

    SaturationLine(TabulatedFluid fluid, double forelinePa) {
        this.fluid = fluid;
        gasConstant = fluid.specificGasConstant();
        lowestPa = fluid.vapourPressure(fluid.lowestTemperature()) * (1 + 1e-9);
        double lowest = Math.max(forelinePa / 8, fluid.vapourPressure(fluid.lowestTemperature()) * 1.1);
        double highest = Math.min(HIGHEST_PA, fluid.vapourPressure(fluid.highestTemperature()) / 1.1);
        first = (Double.doubleToRawLongBits(lowest) >>> SHIFT) + 1;
        pieces = (int) Math.max(0, (Double.doubleToRawLongBits(highest) >>> SHIFT) - first);
        table = new double[COLUMNS * pieces];
        for (int i = 0; i < pieces; i++) {
            double left = Double.longBitsToDouble((first + i) << SHIFT);
            double right = Double.longBitsToDouble((first + i + 1) << SHIFT);
            fill(COLUMNS * i, left, right);
        }
    }

    private void fill(int at, double left, double right) {
        double step = right - left;
        double t0 = fluid.saturationTemperature(left);
        double t1 = fluid.saturationTemperature(right);
        double t0Slope = step / fluid.vapourPressureSlope(t0);
        double t1Slope = step / fluid.vapourPressureSlope(t1);
        double k0 = flux(left, t0);
        double k1 = flux(right, t1);
        double k0Slope = k0 * (step / left - t0Slope / (2 * t0));
        double k1Slope = k1 * (step / right - t1Slope / (2 * t1));
        double r0 = t0 * t0 / k0;
        double r1 = t1 * t1 / k1;
        piece(at, t0, t1, t0Slope, t1Slope);
        piece(at + 4, k0, k1, k0Slope, k1Slope);
        piece(at + 8, r0, r1, r0 * (2 * t0Slope / t0 - k0Slope / k0), r1 * (2 * t1Slope / t1 - k1Slope / k1));
    }

    private void piece(int at, double left, double right, double leftSlope, double rightSlope) {
        double rise = right - left;
        table[at] = left;
        table[at + 1] = leftSlope;
        table[at + 2] = 3 * rise - 2 * leftSlope - rightSlope;
        table[at + 3] = leftSlope + rightSlope - 2 * rise;
    }

    private double flux(double pressurePa, double saturationK) {
        return pressurePa / Math.sqrt(2 * Math.PI * gasConstant * saturationK);
    }

    /** Saturation temperature, but not below the fluid's table: at such a pressure no wall in the table condenses anything. */
    double temperature(double pressurePa) {
        return pressurePa <= lowestPa ? fluid.lowestTemperature() : fluid.saturationTemperature(pressurePa);
    }

    /** Looks both up. */
    void at(double pressurePa) {
        long bits = Double.doubleToRawLongBits(pressurePa);
        long i = (bits >>> SHIFT) - first;
        if (i < 0 || i >= pieces) {
            temperatureK = temperature(pressurePa);
            kineticFlux = flux(pressurePa, temperatureK);
            interfaceResistance = temperatureK * temperatureK / kineticFlux;
            return;
        }
        // the remaining bits are the place within the piece
        long within = bits & ((1L << SHIFT) - 1);
        double d = within * (1.0 / (1L << SHIFT));
        int k = COLUMNS * (int) i;
        double d2 = d * d;
        temperatureK = table[k] + d * table[k + 1] + d2 * (table[k + 2] + d * table[k + 3]);
        kineticFlux = table[k + 4] + d * table[k + 5] + d2 * (table[k + 6] + d * table[k + 7]);
        interfaceResistance = table[k + 8] + d * table[k + 9] + d2 * (table[k + 10] + d * table[k + 11]);
    }
}
