package boilwright.spread;

import java.util.Locale;

/** Shares as people read them. */
public final class Percent {
    private Percent() {}

    /** Whole per cent; what is not quite none or all says so. */
    public static String of(double share) {
        if (share <= 0 || share >= 1) {
            return share <= 0 ? "0 %" : "100 %";
        }
        double percent = 100 * share;
        if (percent < 1) {
            return percent < 0.1 ? "<0.1 %" : String.format(Locale.ROOT, "%.1f %%", percent);
        }
        if (percent > 99) {
            return percent > 99.9 ? ">99.9 %" : String.format(Locale.ROOT, "%.1f %%", percent);
        }
        return Math.round(percent) + " %";
    }
}
