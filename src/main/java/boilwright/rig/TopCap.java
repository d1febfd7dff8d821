package boilwright.rig;

/**
 * The cap or baffle plate over the top jet that catches its spill.
 *
 * @param areaM2 area that catches vapour, m2
 * @param thicknessM plate thickness, m
 * @param material material
 */
public record TopCap(double areaM2, double thicknessM, Material material) {}
