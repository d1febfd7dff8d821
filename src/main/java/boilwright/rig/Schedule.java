package boilwright.rig;

import java.util.List;

/**
 * What the source is told to do: levels that each hold from their time until the next.
 *
 * @param steps in order of time; the first at 0 s
 */
public record Schedule(List<Step> steps) {
    public Schedule {
        steps = List.copyOf(steps);
    }

    /** One level. */
    public sealed interface Step {
        /** When it begins, s after the backing pump has the foreline down. */
        double atS();
    }

    /**
     * A fixed power.
     *
     * @param atS when it begins, s
     * @param fraction share of the rated power, 0 to 1
     */
    public record Power(double atS, double fraction) implements Step {}

    /**
     * The oil held at a temperature by turning the power down over the 10 K below it.
     *
     * @param atS when it begins, s
     * @param oilK temperature to hold, K
     */
    public record HoldOil(double atS, double oilK) implements Step {}
}
