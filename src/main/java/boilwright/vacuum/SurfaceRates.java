package boilwright.vacuum;

/** How much gas the materials of a rig give off and let through. */
public interface SurfaceRates {
    /**
     * A rate with its range.
     *
     * @param value Pa m3/s per m2
     * @param low low end of what was published, Pa m3/s per m2
     * @param high high end, Pa m3/s per m2
     */
    record Rate(double value, double low, double high) {}

    /**
     * Gas given off.
     *
     * @param material id in the outgassing data
     * @param baked whether it was baked under vacuum since it stood in air
     * @param humid whether it stood in humid air, or in dry gas for a short time
     * @param sinceAirS time since then, s, at least 0
     * @throws boilwright.errors.InputRefusedException when the material is not known
     */
    Rate of(String material, boolean baked, boolean humid, double sinceAirS);

    /**
     * Air let through, permeability, m2/s: flow over area times length over pressure difference.
     *
     * @param material id in the outgassing data
     * @return value and range; zero when the material lets nothing through that was measured
     */
    Rate permeability(String material);
}
