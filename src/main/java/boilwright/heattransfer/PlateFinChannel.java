package boilwright.heattransfer;

/**
 * Forced laminar flow of air between flat parallel fins, P. Teertstra, M. M. Yovanovich and J. R. Culham, J. Electronics
 * Manufacturing 10 (2000) 253: Nu = ((Re* Pr/2)^-3 + (0.664 sqrt(Re*) Pr^(1/3) sqrt(1 + 3.65/sqrt(Re*)))^-3)^(-1/3), Re* = (U
 * b/nu)(b/L). Published for 0.1 to 100, air. The coefficient counts on the difference between fin and INCOMING air: warming
 * along the fin is contained, so it must not be counted again.
 */
public final class PlateFinChannel {
    private PlateFinChannel() {}

    /**
     * Modified Reynolds number of the channel.
     *
     * @param velocity of the air between the fins, m/s
     * @param gapM clear distance between two fins, m
     * @param lengthM length of the fins along the flow, m
     * @param kinematicViscosity m2/s
     */
    public static double channelReynolds(double velocity, double gapM, double lengthM, double kinematicViscosity) {
        return velocity * gapM * gapM / (kinematicViscosity * lengthM);
    }

    /**
     * Nusselt number on the gap, h b/k; 0 when nothing flows.
     *
     * @param channelReynolds from {@link #channelReynolds}, 0.1 to 100
     * @param prandtl that of air, about 0.7
     */
    public static double nusselt(double channelReynolds, double prandtl) {
        if (channelReynolds == 0) {
            return 0;
        }
        double root = Math.sqrt(channelReynolds);
        double warmed = channelReynolds * prandtl / 2;
        double plate = 0.664 * root * Math.cbrt(prandtl) * Math.sqrt(1 + 3.65 / root);
        double ratio = warmed / plate;
        return warmed / Math.cbrt(1 + ratio * ratio * ratio);
    }
}
