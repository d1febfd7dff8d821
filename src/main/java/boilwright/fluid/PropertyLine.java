package boilwright.fluid;

import boilwright.fluid.PropertyValue.BeyondRange;
import boilwright.fluid.PropertyValue.Figure;
import boilwright.fluid.PropertyValue.Span;
import boilwright.fluid.PropertyValue.Uncertainty;
import boilwright.units.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/** One line of what is known of a fluid: the words for people, and the figure itself at any temperature. */
public final class PropertyLine {
    private final PropertyEntry entry;
    private final FluidProperty property;
    private final Optional<Figure> figure;
    private final String citation;
    private final Span evaluated;

    /**
     * A closed interval.
     *
     * @param low lower end, SI
     * @param high upper end, SI
     */
    public record Range(double low, double high) {
        private static Range of(Span span) {
            return new Range(span.low(), span.high());
        }

        /** Whether it reaches that far. */
        public boolean contains(double value) {
            return value >= low && value <= high;
        }
    }

    /**
     * @param entry the words
     * @param property which property
     * @param figure the figure; empty when none is available
     * @param citation its source without the place; empty when none is available
     * @param evaluated temperatures at which the fluid is evaluated at all, K
     */
    PropertyLine(
            PropertyEntry entry, FluidProperty property, Optional<Figure> figure, String citation, Span evaluated) {
        this.entry = entry;
        this.property = property;
        this.figure = figure;
        this.citation = citation;
        this.evaluated = evaluated;
    }

    /** The words. */
    public PropertyEntry entry() {
        return entry;
    }

    /** What kind of quantity the figure is. */
    public Dimension dimension() {
        return property.dimension();
    }

    /** Whether there is a figure, a yes or a no; if not, {@link PropertyEntry#valueText} says why. */
    public boolean isAvailable() {
        return figure.isPresent();
    }

    /** Its source without the place in it; empty when no figure is available. */
    public String citation() {
        return citation;
    }

    /** Table, page or equation in the source, and what was done to get the figure; empty when none is available. */
    public String place() {
        return figure.map(known -> known.provenance().where()).orElse("");
    }

    /** Whether it is a yes or a no, not a quantity. */
    public boolean isYesOrNo() {
        return property.kind() == FluidProperty.Kind.FLAG;
    }

    /** Whether the figure changes with temperature. */
    public boolean dependsOnTemperature() {
        return property.kind() == FluidProperty.Kind.RELATION;
    }

    /** Temperatures between which the source vouches for the figure, K; empty when that is not stated. */
    public Optional<Range> vouchedK() {
        return figure.flatMap(Figure::range).map(Range::of);
    }

    /** What is usual for the figure, SI; empty when that is not stated. */
    public Optional<Range> usual() {
        return figure.flatMap(Figure::usual).map(Range::of);
    }

    /**
     * The figure, SI; one that does not depend on temperature is the same at each. Beyond the range in which its source vouches
     * for it, it is extrapolated, unless the file refuses that.
     *
     * @param temperatureK temperature, K
     * @return empty when no figure is available, for a yes or a no, where the file refuses and where the fluid is not evaluated
     */
    public OptionalDouble valueAt(double temperatureK) {
        if (figure.isEmpty() || isYesOrNo()) {
            return OptionalDouble.empty();
        }
        Figure known = figure.get();
        if (!dependsOnTemperature()) {
            return OptionalDouble.of(known.number());
        }
        boolean refused = known.beyond() == BeyondRange.REFUSE
                && !known.range().map(Range::of).orElseThrow().contains(temperatureK);
        return refused || !Range.of(evaluated).contains(temperatureK)
                ? OptionalDouble.empty()
                : OptionalDouble.of(known.relation().value(temperatureK));
    }

    /** Between which values the figure lies by its uncertainty, SI; empty when there is no figure or no uncertainty is stated. */
    public Optional<Range> within(double temperatureK) {
        OptionalDouble value = valueAt(temperatureK);
        return value.isEmpty()
                ? Optional.empty()
                : figure.flatMap(known -> known.provenance().uncertainty())
                        .map(uncertainty -> around(value.getAsDouble(), uncertainty));
    }

    private static Range around(double value, Uncertainty uncertainty) {
        double by = uncertainty.value();
        return switch (uncertainty.kind()) {
            case RELATIVE -> new Range(value - by * Math.abs(value), value + by * Math.abs(value));
            case FACTOR -> new Range(value / by, value * by);
            case ABSOLUTE -> new Range(value - by, value + by);
        };
    }
}
