package boilwright.thermal;

/** The smooth smaller of what is wanted and what there is, so that nothing can take more than arrives. */
final class SmoothLimit {
    private SmoothLimit() {}

    /** Smooth smaller of what is wanted and what there is: w a / (w^8 + a^8)^(1/8). */
    static double take(double want, double available) {
        if (available <= 0 || want <= 0) {
            return 0;
        }
        // beyond this ratio the eighth power is below the last digit
        if (want < 0.01 * available) {
            return want;
        } else if (available < 0.01 * want) {
            return available;
        }
        double small = Math.min(want, available);
        double r = small / Math.max(want, available);
        double r2 = r * r;
        double r4 = r2 * r2;
        double r8 = r4 * r4;
        // binomial series: below 1e-3 five terms are exact to the last digit, and cheaper than three roots
        return r8 < 1e-3
                ? small * (1 - r8 * (1.0 / 8 - r8 * (9.0 / 128 - r8 * (153.0 / 3072 - r8 * (3825.0 / 98304)))))
                : small / Math.sqrt(Math.sqrt(Math.sqrt(1 + r8)));
    }

    /** Derivative of {@link #take} in what is available. */
    static double share(double take, double available) {
        if (available <= 0) {
            return 1;
        }
        double r = take / available;
        double r2 = r * r;
        double r4 = r2 * r2;
        return Math.min(1, r4 * r4 * r);
    }
}
