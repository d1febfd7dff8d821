package boilwright.rig;

import static boilwright.units.Dimension.FRACTION;
import static boilwright.units.Dimension.MASS_FLOW;
import static boilwright.units.Dimension.PRESSURE;
import static boilwright.units.Dimension.TEMPERATURE;
import static boilwright.units.Dimension.TEMPERATURE_DIFFERENCE;
import static boilwright.units.PhysicalConstants.ZERO_CELSIUS_K;

import boilwright.units.Dimension;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The limits that a user may set and the uncertain defaults that a user may know better. */
final class LimitFields {
    private LimitFields() {}

    static List<Field> limits() {
        return new FieldSet("limits")
                .quantityFrom(FieldSet.JUDGEMENT, "requiredBoilerPressure", PRESSURE, "Pa", 1, 2e4, 20, 5000)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "heatMargin", FRACTION, "1", 1, 5, 1, 3)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "oilBulk", TEMPERATURE, "degC", 350, 750, 400, 650)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "oilFilm", TEMPERATURE, "degC", 350, 800, 400, 700)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "glassStress", PRESSURE, "MPa", 1e5, 2e8, 1e6, 1e8)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "source", TEMPERATURE, "degC", 350, 1800, 400, 1500)
                .optional()
                .quantityFrom(
                        "water between freezing and boiling", "waterOut", TEMPERATURE, "degC", 280, 373.15, 290, 370)
                .optional()
                .quantityFrom(
                        "water between freezing and boiling",
                        "waterInLow",
                        TEMPERATURE,
                        "degC",
                        ZERO_CELSIUS_K,
                        333,
                        275,
                        313)
                .optional()
                .quantityFrom(
                        "water between freezing and boiling", "waterInHigh", TEMPERATURE, "degC", 274.15, 343, 280, 323)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "cap", TEMPERATURE, "degC", 280, 500, 290, 450)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "columnMach", FRACTION, "1", 0.05, 1, 0.05, 1)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "hydrostaticSuperheat", TEMPERATURE_DIFFERENCE, "K", 1, 150, 5, 100)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "oilLoss", MASS_FLOW, "g/h", 1e-13, 1e-4, 1e-12, 1e-6)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "leastLiquidFraction", FRACTION, "1", 0.01, 0.99, 0.01, 0.99)
                .optional()
                .fields();
    }

    /** One field for each entry of the registry, so that files are checked against its ranges. */
    static List<Field> parameters() {
        return Arrays.stream(Parameter.values())
                .map(p -> new Field(
                        "parameters." + p.id(),
                        Field.Kind.QUANTITY,
                        Optional.of(p.dimension()),
                        p.dimension() == Dimension.FRACTION
                                ? "1"
                                : p.dimension().siUnit(),
                        p.low(),
                        p.high(),
                        p.low(),
                        p.high(),
                        false,
                        p.source(),
                        "parameters." + p.id(),
                        List.of(),
                        List.of()))
                .toList();
    }
}
