package boilwright.fluid;

import boilwright.fluid.PropertyValue.BeyondRange;
import boilwright.fluid.PropertyValue.Figure;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Turns what a fluid file states into lines for people. */
final class PropertyEntries {
    private PropertyEntries() {}

    static List<PropertyEntry> of(Collection<PropertyValue> values, UnaryOperator<String> citation) {
        List<PropertyEntry> entries = new ArrayList<>();
        for (PropertyValue value : values) {
            value.notAvailable()
                    .ifPresent(reason -> entries.add(new PropertyEntry(
                            value.property().title(), "not available: " + reason, "", "", "", "", false)));
            for (int i = 0; i < value.figures().size(); i++) {
                String title = value.property().title() + (i == 0 ? "" : " (alternative, not used)");
                entries.add(entry(value.property(), title, value.figures().get(i), citation));
            }
        }
        return List.copyOf(entries);
    }

    private static PropertyEntry entry(
            FluidProperty property, String title, Figure figure, UnaryOperator<String> citation) {
        PropertyValue.Provenance provenance = figure.provenance();
        return new PropertyEntry(
                title,
                valueText(property, figure),
                figure.unit().equals("1") ? "" : figure.unit(),
                figure.range().map(range -> rangeText(range, figure.beyond())).orElse(""),
                provenance.uncertainty().map(u -> u.text(property.unit())).orElse(""),
                citation.apply(provenance.source()) + "; " + provenance.where(),
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
