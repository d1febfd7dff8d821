package boilwright.dashboard.fluids;

import boilwright.fluid.FluidRecord;
import boilwright.fluid.PropertyLine;
import boilwright.units.Dimension;
import boilwright.units.PhysicalConstants;
import java.util.List;
import java.util.Optional;

/**
 * The vapour pressure of one fluid against temperature, with how far off it may be.
 *
 * @param id which fluid
 * @param temperaturesK K, rising; none when the fluid is not evaluated anywhere near a pump
 * @param pressuresPa Pa, one for each
 * @param lowPa lowest that it may be, Pa; the same as the pressure where that is not stated
 * @param highPa highest that it may be, Pa
 */
record VapourCurve(String id, double[] temperaturesK, double[] pressuresPa, double[] lowPa, double[] highPa) {
    /** Freezing water: no pump is colder. */
    static final double COLDEST_K = PhysicalConstants.ZERO_CELSIUS_K;
    /** Hotter than any boiler. */
    static final double HOTTEST_K = 623.15;

    private static final int STEPS = 140;

    /**
     * The curve of a fluid where it is evaluated and a pump may be.
     *
     * @param lines what is recorded of it
     */
    static VapourCurve of(FluidRecord fluid, List<PropertyLine> lines) {
        double low = Math.max(COLDEST_K, fluid.lowestTemperature());
        double high = Math.min(HOTTEST_K, fluid.highestTemperature());
        int count = low < high ? STEPS + 1 : 0;
        // The figure in use comes first; alternatives follow it.
        Optional<PropertyLine> line = lines.stream()
                .filter(one -> one.dependsOnTemperature() && one.dimension() == Dimension.PRESSURE)
                .findFirst();
        VapourCurve curve =
                new VapourCurve(fluid.id(), new double[count], new double[count], new double[count], new double[count]);
        for (int i = 0; i < count; i++) {
            double t = i == STEPS ? high : low + (high - low) * i / STEPS;
            double p = fluid.vapourPressure(t);
            Optional<PropertyLine.Range> range = line.flatMap(one -> one.within(t));
            curve.temperaturesK[i] = t;
            curve.pressuresPa[i] = p;
            curve.lowPa[i] = range.map(PropertyLine.Range::low).orElse(p);
            curve.highPa[i] = range.map(PropertyLine.Range::high).orElse(p);
        }
        return curve;
    }
}
