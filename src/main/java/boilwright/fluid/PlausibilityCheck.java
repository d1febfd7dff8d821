package boilwright.fluid;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.FluidProperty.Kind;
import boilwright.fluid.FluidProperty.Trend;
import boilwright.fluid.PropertyValue.BeyondRange;
import boilwright.fluid.PropertyValue.Figure;
import boilwright.fluid.PropertyValue.Span;
import boilwright.units.PhysicalConstants;
import java.util.Map;

/**
 * Whether the figures of a file can belong to a liquid: every relation over the whole temperature span, and the latent
 * heat against the slope of the vapour pressure. Finds wrong units and exchanged coefficients.
 */
final class PlausibilityCheck {
    private static final int STEPS = 64;
    /** The latent heat may lie this far from the slope of the vapour pressure, Clausius and Clapeyron's relation. */
    private static final double LOWEST_LATENT_RATIO = 0.75;

    private static final double HIGHEST_LATENT_RATIO = 1.15;

    private final Map<FluidProperty, PropertyValue> values;
    private final Span span;
    private final FileFaults faults;

    private PlausibilityCheck(Map<FluidProperty, PropertyValue> values, Span span, FileFaults faults) {
        this.values = values;
        this.span = span;
        this.faults = faults;
    }

    static void run(Map<FluidProperty, PropertyValue> values, Span span, FileFaults faults) {
        PlausibilityCheck check = new PlausibilityCheck(values, span, faults);
        for (PropertyValue value : values.values()) {
            for (int i = 0; i < value.figures().size(); i++) {
                check.figure(value.property(), i, value.figures().get(i));
            }
        }
        if (faults.none()) {
            check.latentHeat();
        }
    }

    private void figure(FluidProperty property, int index, Figure figure) {
        String path = "properties." + property.key() + (index == 0 ? "" : ".alternatives[" + (index - 1) + "]");
        if (property.kind() == Kind.NUMBER) {
            inBounds(property, path, figure.number(), "");
        } else if (property.kind() == Kind.RELATION) {
            Span own = index == 0 ? span : figure.range().orElseThrow();
            if (figure.beyond() == BeyondRange.REFUSE
                    && !figure.range().orElseThrow().contains(own)) {
                faults.add(Message.of(
                        MessageKey.FLUID_RANGE_TOO_SHORT,
                        faults.file(),
                        path,
                        text(figure.range().orElseThrow()),
                        text(own)));
            }
            relation(property, path, figure.relation(), own);
        }
    }

    private void relation(FluidProperty property, String path, Relation relation, Span own) {
        double before = 0;
        for (int i = 0; i <= STEPS; i++) {
            double t = own.low() + (own.high() - own.low()) * i / STEPS;
            double y = relation.value(t);
            if (!inBounds(property, path, y, " (" + Numbers.text(t) + " K)")) {
                return;
            }
            boolean turned =
                    property.trend() == Trend.RISES && y <= before || property.trend() == Trend.FALLS && y >= before;
            if (i > 0 && turned) {
                MessageKey key = property.trend() == Trend.RISES
                        ? MessageKey.FLUID_PROPERTY_MUST_RISE
                        : MessageKey.FLUID_PROPERTY_MUST_FALL;
                faults.add(Message.of(key, faults.file(), path, Numbers.text(t)));
                return;
            }
            before = y;
        }
    }

    private boolean inBounds(FluidProperty property, String path, double value, String where) {
        if (value >= property.lowest() && value <= property.highest()) {
            return true;
        }
        String unit = property.unit().equals("1") ? "" : " " + property.unit();
        faults.add(Message.of(
                MessageKey.FLUID_PROPERTY_IMPLAUSIBLE,
                faults.file(),
                path,
                Numbers.text(value) + unit + where,
                Numbers.text(property.lowest()) + unit,
                Numbers.text(property.highest()) + unit));
        return false;
    }

    private void latentHeat() {
        Relation pressure = main(FluidProperty.VAPOUR_PRESSURE).relation();
        double molarMass = main(FluidProperty.MOLAR_MASS).number();
        double usual = main(FluidProperty.BOILER_PRESSURE).number();
        double t = span.low();
        while (t < span.high() && pressure.value(t) < usual) {
            t += 1;
        }
        double slope = PhysicalConstants.MOLAR_GAS_CONSTANT / molarMass * t * t * pressure.slope(t) / pressure.value(t);
        double ratio = main(FluidProperty.LATENT_HEAT).relation().value(t) / slope;
        if (!(ratio >= LOWEST_LATENT_RATIO && ratio <= HIGHEST_LATENT_RATIO)) {
            faults.add(Message.of(
                    MessageKey.FLUID_LATENT_HEAT,
                    faults.file(),
                    Numbers.text(t),
                    Numbers.text(ratio),
                    Numbers.text(LOWEST_LATENT_RATIO),
                    Numbers.text(HIGHEST_LATENT_RATIO)));
        }
    }

    private Figure main(FluidProperty property) {
        return values.get(property).figure().orElseThrow();
    }

    private static String text(Span span) {
        return Numbers.text(span.low()) + " to " + Numbers.text(span.high()) + " K";
    }
}
