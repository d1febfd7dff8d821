package boilwright.heattransfer;

/**
 * Pressure lost in a fitting, dp = K rho v^2/2 (any hydraulics text). K is a number of the fitting in turbulent flow; below a
 * Reynolds number of about 1000 real fittings lose more, which is not followed here.
 */
public final class MinorLoss {
    private MinorLoss() {}

    /**
     * Loss of pressure along the flow, Pa; it has the sign of the velocity.
     *
     * @param coefficient K, at least 0, counted on the velocity given
     * @param density kg/m3
     * @param velocity m/s
     */
    public static double pressureDrop(double coefficient, double density, double velocity) {
        return coefficient * density * velocity * Math.abs(velocity) / 2;
    }
}
