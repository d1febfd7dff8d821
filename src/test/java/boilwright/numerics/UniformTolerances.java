package boilwright.numerics;

import java.util.Arrays;

/** Tolerances that are the same for every component. */
public final class UniformTolerances {
    private UniformTolerances() {}

    /** The same absolute tolerance for each of {@code size} components. */
    public static Tolerances of(int size, double relative, double absolute) {
        double[] all = new double[size];
        Arrays.fill(all, absolute);
        return new Tolerances(relative, all);
    }
}
