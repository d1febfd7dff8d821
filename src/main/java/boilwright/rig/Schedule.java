package boilwright.rig;

import java.util.List;
import java.util.OptionalDouble;

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

        /** The most that it asks of the source, a share of the rated power, 0 to 1. */
        double level();

        /** The oil temperature that it holds, K; empty for a fixed power. */
        OptionalDouble holdK();

        /** The same level from another time, s. */
        Step at(double s);
    }

    /** When the source is first told to heat, s; 0 when never. */
    public double heatOnS() {
        return steps.stream()
                .filter(step -> step.level() > 0)
                .mapToDouble(Step::atS)
                .findFirst()
                .orElse(0);
    }

    /** The level that holds to the end. */
    public Step last() {
        return steps.get(steps.size() - 1);
    }

    /**
     * A fixed power.
     *
     * @param atS when it begins, s
     * @param fraction share of the rated power, 0 to 1
     */
    public record Power(double atS, double fraction) implements Step {
        @Override
        public double level() {
            return fraction;
        }

        @Override
        public OptionalDouble holdK() {
            return OptionalDouble.empty();
        }

        @Override
        public Power at(double s) {
            return new Power(s, fraction);
        }
    }

    /**
     * The oil held at a temperature by turning the power down over the 10 K below it.
     *
     * @param atS when it begins, s
     * @param oilK temperature to hold, K
     */
    public record HoldOil(double atS, double oilK) implements Step {
        @Override
        public double level() {
            return 1;
        }

        @Override
        public OptionalDouble holdK() {
            return OptionalDouble.of(oilK);
        }

        @Override
        public HoldOil at(double s) {
            return new HoldOil(s, oilK);
        }
    }
}
