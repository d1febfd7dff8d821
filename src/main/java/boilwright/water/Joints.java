package boilwright.water;

import boilwright.heattransfer.MinorLoss;

/**
 * What the ends of a passage cost, K rho v^2/2 with the speed v in the narrower one. Into a wider passage K = (1 - A1/A2)^2 (Borda
 * and Carnot, the balance of momentum); into a narrower one with a sharp edge K = 0.5 (1 - A2/A1) (I. E. Idelchik, Handbook of
 * Hydraulic Resistance, diagram 4-9, from memory). Tanks, taps and the places where branches part and meet count as wide
 * chambers: K = 0.5 into a passage, 1 out of it. Both K are those of turbulent flow and are used for any.
 */
final class Joints {
    private static final double SHARP_EDGE = 0.5;

    private Joints() {}

    /** Pressure drop over the square of the mass flow where water goes from one passage into the next, Pa s2/kg2. */
    static double between(Passage before, Passage after, double density) {
        return between(before.areaM2(), after.areaM2(), density);
    }

    /** The same from a wide chamber into a passage. */
    static double entry(Passage into, double density) {
        return between(Double.POSITIVE_INFINITY, into.areaM2(), density);
    }

    /** The same from a passage into a wide chamber. */
    static double exit(Passage from, double density) {
        return between(from.areaM2(), Double.POSITIVE_INFINITY, density);
    }

    private static double between(double before, double after, double density) {
        double narrow = Math.min(before, after);
        double shrunk = 1 - narrow / Math.max(before, after);
        double k = after > before ? shrunk * shrunk : SHARP_EDGE * shrunk;
        return MinorLoss.pressureDrop(k, density, 1 / (density * narrow));
    }
}
