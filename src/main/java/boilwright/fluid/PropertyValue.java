package boilwright.fluid;

import java.util.List;
import java.util.Optional;

/**
 * One property as a fluid file states it.
 *
 * @param property which
 * @param notAvailable why there is no figure; empty when there is one
 * @param figures the figure itself first, then alternatives that the program does not use; none when not available
 */
record PropertyValue(FluidProperty property, Optional<String> notAvailable, List<Figure> figures) {
    PropertyValue {
        figures = List.copyOf(figures);
    }

    /** The figure in use, if there is one. */
    Optional<Figure> figure() {
        return figures.stream().findFirst();
    }

    /** What is done outside the range in which the source vouches for a relation. */
    enum BeyondRange {
        EXTRAPOLATE,
        REFUSE
    }

    /**
     * A figure or equation with where it comes from.
     *
     * @param form equation form; a plain number is a constant
     * @param coefficients as printed, in the unit of the file; a yes is 1 and a no is 0
     * @param unit unit of the file
     * @param relation the equation, giving SI
     * @param usual low and high end of what is usual, SI; empty when not stated
     * @param range temperatures between which the source vouches for it, K; empty for a figure without a range
     * @param beyond what is done outside that range
     * @param provenance where it comes from
     */
    record Figure(
            EquationForm form,
            List<Double> coefficients,
            String unit,
            Relation relation,
            Optional<Span> usual,
            Optional<Span> range,
            BeyondRange beyond,
            Provenance provenance) {
        Figure {
            coefficients = List.copyOf(coefficients);
        }

        /** The figure when it does not depend on temperature, SI. */
        double number() {
            return relation.value(0);
        }
    }

    /** A closed interval. */
    record Span(double low, double high) {
        boolean contains(Span other) {
            return low <= other.low && other.high <= high;
        }
    }

    /**
     * Where a figure comes from and how far it can be trusted.
     *
     * @param source key of sources.bib, or the citation itself in a user's file
     * @param where table, page or equation in the source; what was done to get the figure
     * @param uncertainty how far off it may be; empty when the source does not say and nobody has judged it
     * @param fromMemory true when the source was not seen
     */
    record Provenance(String source, String where, Optional<Uncertainty> uncertainty, boolean fromMemory) {}

    /**
     * A stated or judged uncertainty.
     *
     * @param kind how the value is meant
     * @param value positive; a share of the figure, a factor above 1 up or down, or an amount in SI
     */
    record Uncertainty(Kind kind, double value) {
        enum Kind {
            RELATIVE,
            FACTOR,
            ABSOLUTE
        }

        /** For people. */
        String text(String unit) {
            return switch (kind) {
                case RELATIVE -> "+/- " + Numbers.text(100 * value) + " %";
                case FACTOR -> "a factor of " + Numbers.text(value);
                case ABSOLUTE -> "+/- " + Numbers.text(value) + (unit.equals("1") ? "" : " " + unit);
            };
        }
    }
}
