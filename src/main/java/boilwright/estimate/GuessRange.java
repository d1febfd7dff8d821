package boilwright.estimate;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.rig.file.RigFields;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far a guessed quantity may be from the truth.
 *
 * @param path path of the field
 * @param value the guess, SI
 * @param low least value believed, SI
 * @param high greatest value believed, SI
 */
public record GuessRange(String path, double value, double low, double high) {
    /** Least and greatest over the guess; engineering judgement, from memory. */
    private static final Map<String, double[]> FACTORS = Map.ofEntries(
            Map.entry("stages[].throatGap", new double[] {0.5, 2}),
            Map.entry("stages[].throatDiameter", new double[] {0.9, 1.15}),
            Map.entry("stages[].height", new double[] {0.8, 1.1}),
            Map.entry("boiler.wallThickness", new double[] {0.7, 1.5}),
            Map.entry("boiler.heatedArea", new double[] {0.8, 1.3}),
            Map.entry("boiler.wettedArea", new double[] {0.7, 1.7}),
            Map.entry("boiler.outsideArea", new double[] {0.7, 1.4}),
            Map.entry("body.uncooledLowerHeight", new double[] {0.4, 1.6}),
            Map.entry("column.segments[].wallThickness", new double[] {0.6, 1.6}),
            Map.entry("heatSource.contactArea", new double[] {0.6, 1.07}),
            Map.entry("heatSource.surfaceArea", new double[] {0.6, 1.7}),
            Map.entry("heatSource.heatCapacity", new double[] {0.5, 2}),
            Map.entry("heatSource.efficiency", new double[] {0.85, 1.1}),
            Map.entry("heatSource.insulationThickness", new double[] {0.4, 2}),
            Map.entry("foreline.pressure", new double[] {0.3, 3}),
            Map.entry("cooling.supply.flow", new double[] {0.5, 2}),
            Map.entry("cooling.elements[].gap", new double[] {0.6, 1.7}),
            Map.entry("cooling.elements[].bondConductance", new double[] {0.4, 2.5}),
            Map.entry("room.pressure", new double[] {0.85, 1.03}));

    /** For a quantity of which nothing else is said. */
    private static final double[] OTHERS = {0.75, 1.35};

    /** How far a guessed temperature may be off, K; those of sources are known worst. */
    private static final double SOURCE_LIMIT_K = 60;

    private static final double TEMPERATURE_K = 8;
    /** A boiler taken as bare may be wrapped this thick, m. */
    private static final double WRAPPED_M = 0.025;

    private static final double BLACK = 0.98;

    /** The range of one field; empty when it is no quantity that the rig has, or has no range. */
    public static Optional<GuessRange> of(Rig rig, String path) {
        OptionalDouble value = RigFields.of(rig).quantity(path);
        if (value.isEmpty()) {
            return Optional.empty();
        }
        Field field = FieldCatalogue.find(path).orElseThrow();
        double[] ends = ends(rig, field, value.getAsDouble());
        double low = Math.max(field.allowedLow(), ends[0]);
        double high = Math.min(field.allowedHigh(), ends[1]);
        return low < high ? Optional.of(new GuessRange(path, value.getAsDouble(), low, high)) : Optional.empty();
    }

    /**
     * The ranges of all guessed quantities of a rig, in the order of the file. Marked fields of all entries of a list (all throat gaps,
     * say) rest on one guess and stand together under the path with {@code []}.
     */
    public static Map<String, List<GuessRange>> groups(Rig rig) {
        Map<String, List<GuessRange>> groups = new LinkedHashMap<>();
        RigPaths.of(rig).stream()
                .filter(rig.guesses()::contains)
                .map(path -> of(rig, path))
                .flatMap(Optional::stream)
                .forEach(
                        range -> groups.computeIfAbsent(FieldCatalogue.general(range.path()), path -> new ArrayList<>())
                                .add(range));
        return groups;
    }

    private static double[] ends(Rig rig, Field field, double value) {
        String path = field.path();
        if ("heatSource.contactConductance".equals(path)) {
            Optional<Parameter> parameter = rig.heatSource().contact().map(HeatSource.Contact::usualConductance);
            if (parameter.isPresent()) {
                return new double[] {parameter.get().low(), parameter.get().high()};
            }
        }
        if (field.dimension().orElseThrow() == Dimension.TEMPERATURE) {
            double off = "heatSource.limit".equals(path) ? SOURCE_LIMIT_K : TEMPERATURE_K;
            return new double[] {value - off, value + off};
        }
        if (value == 0 && path.endsWith("insulationThickness")) {
            return new double[] {0, WRAPPED_M};
        }
        double[] factors = FACTORS.getOrDefault(path, OTHERS);
        double most = path.toLowerCase(Locale.ROOT).contains("emissivity") ? BLACK : Double.MAX_VALUE;
        // A height that goes down is negative: the larger factor is its lower end.
        double one = factors[0] * value;
        double other = Math.min(most, factors[1] * value);
        return new double[] {Math.min(one, other), Math.max(one, other)};
    }

    /** One end, moved towards the guess. */
    double towards(double end, double share) {
        return value + share * (end - value);
    }
}
