package boilwright.fluid;

import boilwright.fluid.PropertyValue.BeyondRange;
import boilwright.fluid.PropertyValue.Figure;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Turns what a fluid file states into lines for people. */
final class PropertyEntries {
    private PropertyEntries() {}

    static List<PropertyLine> of(
            Collection<PropertyValue> values, PropertyValue.Span evaluated, UnaryOperator<String> citation) {
        List<PropertyLine> lines = new ArrayList<>();
        for (PropertyValue value : values) {
            value.notAvailable()
                    .ifPresent(reason -> lines.add(new PropertyLine(
                            new PropertyEntry(
                                    value.property().title(), "not available: " + reason, "", "", "", "", false),
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

    private static PropertyEntry entry(FluidProperty property, String title, Figure figure, String cited) {
        PropertyValue.Provenance provenance = figure.provenance();
        return new PropertyEntry(
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
                figure.coefficients().stream().map(PropertyEntries::coefficient).collect(Collectors.joining(", "));
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
}
