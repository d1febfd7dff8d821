package boilwright.dashboard.drawing;

import java.util.Map;
import javafx.geometry.Bounds;

/** The part to which an arrow key goes. */
final class NearestPart {
    /** How much a step aside counts against a step ahead. */
    private static final double ASIDE = 2.5;

    private NearestPart() {}

    /** The nearest in a direction, or null when none lies there. */
    static Part of(Map<Part, Bounds> places, Part from, double dx, double dy) {
        Bounds here = places.get(from);
        Part best = null;
        double least = Double.MAX_VALUE;
        for (Map.Entry<Part, Bounds> entry : places.entrySet()) {
            double x = entry.getValue().getCenterX() - here.getCenterX();
            double y = entry.getValue().getCenterY() - here.getCenterY();
            double ahead = x * dx + y * dy;
            double aside = Math.abs(x * dy - y * dx);
            double cost = ahead + ASIDE * aside;
            if (!entry.getKey().equals(from) && ahead > 1 && cost < least) {
                least = cost;
                best = entry.getKey();
            }
        }
        return best;
    }
}
