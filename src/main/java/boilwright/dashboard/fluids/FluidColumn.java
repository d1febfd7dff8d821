package boilwright.dashboard.fluids;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.Comparator;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The figures of the table, in their order. */
enum FluidColumn {
    MOLAR_MASS(Dimension.MOLAR_MASS, row -> OptionalDouble.of(row.molarMass())),
    BOILS(Dimension.TEMPERATURE, FluidRow::boilsK),
    VAPOUR(Dimension.PRESSURE, FluidRow::vapourPressurePa),
    LATENT_HEAT(Dimension.SPECIFIC_ENERGY, FluidRow::latentHeat),
    BULK(Dimension.TEMPERATURE, FluidRow::bulkLimitK),
    AIR(Dimension.TEMPERATURE, FluidRow::airLimitK);

    private final Dimension dimension;
    private final Function<FluidRow, OptionalDouble> figure;

    FluidColumn(Dimension dimension, Function<FluidRow, OptionalDouble> figure) {
        this.dimension = dimension;
        this.figure = figure;
    }

    /** Its name in the bundle. */
    String key() {
        return "fluids.column." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The figure of a fluid, SI. */
    OptionalDouble of(FluidRow row) {
        return figure.apply(row);
    }

    /** A figure with its unit, or the words for none. */
    String text(OptionalDouble si, String none) {
        return si.isPresent() ? QuantityWriter.writeAuto(si.getAsDouble(), dimension) : none;
    }

    /** Orders figures so that, once turned round if it has to be, fluids without one come last. */
    static Comparator<OptionalDouble> order(boolean turnedRound) {
        double none = turnedRound ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        return Comparator.comparingDouble(si -> si.orElse(none));
    }
}
