package boilwright.fluid;

import boilwright.fluid.PropertyValue.BeyondRange;
import boilwright.fluid.PropertyValue.Figure;
import boilwright.fluid.PropertyValue.Span;
import boilwright.fluid.PropertyValue.Uncertainty;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** One line of what is known of a fluid: the words for people, and the figure itself at any temperature. */
public final class PropertyLine {
    private final Words entry;
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
    PropertyLine(Words entry, FluidProperty property, Optional<Figure> figure, String citation, Span evaluated) {
        this.entry = entry;
        this.property = property;
        this.figure = figure;
        this.citation = citation;
        this.evaluated = evaluated;
    }

    /** The words. */
    public Words entry() {
        return entry;
    }

    /** What kind of quantity the figure is. */
    public Dimension dimension() {
        return property.dimension();
    }

    /** Whether there is a figure, a yes or a no; if not, {@link Words#valueText} says why. */
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

    /** What a fluid file states, as lines in its order; alternatives that are not used follow the figure that is. */
    static List<PropertyLine> of(
            Collection<PropertyValue> values, PropertyValue.Span evaluated, UnaryOperator<String> citation) {
        List<PropertyLine> lines = new ArrayList<>();
        for (PropertyValue value : values) {
            value.notAvailable()
                    .ifPresent(reason -> lines.add(new PropertyLine(
                            new Words(value.property().title(), "not available: " + reason, "", "", "", "", false),
                            value.property(),
                            Optional.empty(),
                            "",
                            evaluated)));
            for (int i = 0; i < value.figures().size(); i++) {
                String title = value.property().title() + (i == 0 ? "" : " (alternative, not used)");
                Figure figure = value.figures().get(i);
                String cited = citation.apply(figure.provenance().source());
                lines.add(new PropertyLine(
                        entry(value.property(), title, figure, cited),
                        value.property(),
                        Optional.of(figure),
                        cited,
                        evaluated));
            }
        }
        return List.copyOf(lines);
    }

    private static Words entry(FluidProperty property, String title, Figure figure, String cited) {
        PropertyValue.Provenance provenance = figure.provenance();
        return new Words(
                title,
                valueText(property, figure),
                figure.unit().equals("1") ? "" : figure.unit(),
                figure.range().map(range -> rangeText(range, figure.beyond())).orElse(""),
                provenance.uncertainty().map(u -> u.text(property.unit())).orElse(""),
                cited + "; " + provenance.where(),
                provenance.fromMemory());
    }

    private static String valueText(FluidProperty property, Figure figure) {
        if (property.kind() == FluidProperty.Kind.FLAG) {
            return figure.number() != 0 ? "yes" : "no";
        }
        if (figure.form() == EquationForm.CONSTANT) {
            String usual = figure.usual()
                    .map(span -> ", usually " + Numbers.text(span.low()) + " to " + Numbers.text(span.high()) + " "
                            + property.unit())
                    .orElse("");
            return coefficient(figure.coefficients().get(0)) + usual;
        }
        String coefficients =
                figure.coefficients().stream().map(PropertyLine::coefficient).collect(Collectors.joining(", "));
        return figure.form().meaning() + " = " + coefficients;
    }

    /** Coefficients are shown with every digit, because an equation can be sensitive to the last. */
    private static String coefficient(double value) {
        String text = Double.toString(value).replace('E', 'e');
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private static String rangeText(PropertyValue.Span range, BeyondRange beyond) {
        return Numbers.text(range.low()) + " to " + Numbers.text(range.high()) + " K, "
                + (beyond == BeyondRange.REFUSE ? "refused beyond" : "extrapolated beyond");
    }

    /**
     * One line of what is known of a fluid, as text for people.
     *
     * @param title which property; an alternative that is recorded but not used says so
     * @param valueText the figure or the equation with its coefficients, or that and why no figure is available
     * @param unit unit of the figure as the source gives it; empty for a yes-or-no or a ratio
     * @param range temperatures between which the source vouches for it, and what is done outside; empty when not stated
     * @param uncertainty how far off it may be; empty when not known
     * @param source citation with table or page; empty when no figure is available
     * @param fromMemory true when the source was not seen by those who wrote the figure down
     */
    public record Words(
            String title,
            String valueText,
            String unit,
            String range,
            String uncertainty,
            String source,
            boolean fromMemory) {}
}
