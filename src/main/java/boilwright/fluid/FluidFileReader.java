package boilwright.fluid;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.PropertyValue.BeyondRange;
import boilwright.fluid.PropertyValue.Figure;
import boilwright.fluid.PropertyValue.Provenance;
import boilwright.fluid.PropertyValue.Span;
import boilwright.fluid.PropertyValue.Uncertainty;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads one fluid file by walking its tree, so that every fault of the file is found and named at once. */
final class FluidFileReader {
    /** The version of the file format that this program writes about and reads. */
    static final int FORMAT = 1;

    /** Longest file that is read, bytes. */
    static final int LONGEST_FILE = 4_000_000;

    private static final int DEEPEST = 50;
    private static final double COLDEST_K = 150;
    private static final double HOTTEST_K = 2500;
    private static final String ID_PATTERN = "[a-z0-9]+(-[a-z0-9]+)*";
    private static final String WORKING = "working fluid";
    private static final String VALIDATION = "validation only";
    private static final List<String> FAMILIES =
            List.of("silicone", "polyphenyl ether", "hydrocarbon", "ester", "metal", "other");
    private static final String NOT_AVAILABLE = "not-available";
    private static final List<String> PROVENANCE = List.of("source", "where", "uncertainty");
    private static final String FROM_MEMORY = "from memory";

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(DEEPEST)
                            .maxDocumentLength(LONGEST_FILE)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .build();

    private final FileFaults faults;

    private FluidFileReader(String file) {
        faults = new FileFaults(file);
    }

    /**
     * The fluid of a file.
     *
     * @param file the file's name, for messages
     * @param content its bytes
     * @throws InputRefusedException naming every fault
     */
    static FluidRecord read(String file, byte[] content) {
        FluidFileReader reader = new FluidFileReader(file);
        Optional<FluidRecord> fluid = reader.fluid(tree(file, content));
        return fluid.orElseThrow(() -> new InputRefusedException(reader.faults.found()));
    }

    /** The tree of a JSON file, or a refusal that says where it is not JSON. */
    static JsonNode tree(String file, byte[] content) {
        try {
            JsonNode tree = MAPPER.readTree(content);
            if (tree.isMissingNode()) {
                throw new InputRefusedException(Message.of(MessageKey.FLUID_FILE_EMPTY, file));
            }
            return tree;
        } catch (StreamConstraintsException e) {
            throw new InputRefusedException(
                    Message.of(MessageKey.FLUID_FILE_TOO_DEEP, file, Integer.toString(DEEPEST)));
        } catch (JacksonException e) {
            TokenStreamLocation place = e.getLocation();
            String line = place == null ? "1" : Integer.toString(place.getLineNr());
            String column = place == null ? "1" : Integer.toString(place.getColumnNr());
            throw new InputRefusedException(
                    Message.of(MessageKey.FLUID_FILE_NOT_JSON, file, line, column, e.getOriginalMessage()));
        }
    }

    private Optional<FluidRecord> fluid(JsonNode root) {
        if (!faults.object(
                "",
                root,
                List.of("format", "id", "title", "use", "temperatureSpan", "properties"),
                List.of("family", "formula", "cas"))) {
            return Optional.empty();
        }
        format(root);
        Optional<String> id = faults.text("", root, "id");
        if (id.isPresent() && !id.get().matches(ID_PATTERN)) {
            faults.refuse("id", root.get("id"), "small letters, digits and single hyphens, such as 704-type");
        }
        Optional<String> title = faults.text("", root, "title");
        Optional<String> use = faults.choice("", root, "use", List.of(WORKING, VALIDATION));
        Optional<String> family = faults.choice("", root, "family", FAMILIES);
        faults.text("", root, "formula");
        faults.text("", root, "cas");
        Optional<Span> span = faults.span("", root, "temperatureSpan", COLDEST_K, HOTTEST_K);
        Map<FluidProperty, PropertyValue> values = properties(root.get("properties"));
        if (!faults.none()) {
            return Optional.empty();
        }
        PlausibilityCheck.run(values, span.orElseThrow(), faults);
        return faults.none()
                ? Optional.of(new FluidRecord(
                        id.orElseThrow(),
                        title.orElseThrow(),
                        family,
                        use.orElseThrow().equals(VALIDATION),
                        span.orElseThrow(),
                        values))
                : Optional.empty();
    }

    private void format(JsonNode root) {
        JsonNode format = root.get("format");
        if (format != null && !(format.isIntegralNumber() && format.asLong(0) == FORMAT)) {
            faults.refuse("format", format, Integer.toString(FORMAT));
        }
    }

    private Map<FluidProperty, PropertyValue> properties(JsonNode node) {
        Map<FluidProperty, PropertyValue> values = new EnumMap<>(FluidProperty.class);
        List<String> keys =
                Arrays.stream(FluidProperty.values()).map(FluidProperty::key).toList();
        if (node == null || !faults.object("properties", node, keys, List.of())) {
            return values;
        }
        double molarMass = 1;
        for (FluidProperty property : FluidProperty.values()) {
            JsonNode own = node.get(property.key());
            if (own != null) {
                Optional<PropertyValue> value = property(property, own, molarMass);
                value.ifPresent(v -> values.put(property, v));
                if (property == FluidProperty.MOLAR_MASS && value.isPresent()) {
                    molarMass = value.get().figure().orElseThrow().number();
                }
            }
        }
        return values;
    }

    private Optional<PropertyValue> property(FluidProperty property, JsonNode node, double molarMass) {
        String path = "properties." + property.key();
        if (node.isObject() && node.get(NOT_AVAILABLE) != null) {
            return notAvailable(property, path, node);
        }
        Optional<Figure> figure = switch (property.kind()) {
            case FLAG -> flag(path, node);
            case NUMBER -> number(property, path, node, molarMass);
            case RELATION -> relation(property, path, node, molarMass, List.of("alternatives"));
        };
        if (figure.isEmpty()) {
            return Optional.empty();
        }
        List<Figure> figures = new ArrayList<>(List.of(figure.get()));
        JsonNode alternatives = node.get("alternatives");
        if (alternatives != null) {
            if (!alternatives.isArray()) {
                faults.refuse(path + ".alternatives", alternatives, "a list in square brackets");
                return Optional.empty();
            }
            for (int i = 0; i < alternatives.size(); i++) {
                String own = path + ".alternatives[" + i + "]";
                relation(property, own, alternatives.get(i), molarMass, List.of())
                        .ifPresent(figures::add);
            }
        }
        return Optional.of(new PropertyValue(property, Optional.empty(), figures));
    }

    private Optional<PropertyValue> notAvailable(FluidProperty property, String path, JsonNode node) {
        if (property.required()) {
            faults.refuse(path, node, "a figure: the model cannot do without this one");
            return Optional.empty();
        }
        faults.object(path, node, List.of(NOT_AVAILABLE), List.of());
        return faults.text(path, node, NOT_AVAILABLE)
                .map(reason -> new PropertyValue(property, Optional.of(reason), List.of()));
    }

    private Optional<Figure> flag(String path, JsonNode node) {
        if (!faults.object(path, node, List.of("value", "source", "where"), List.of(FROM_MEMORY))) {
            return Optional.empty();
        }
        Optional<Boolean> value = faults.flag(path, node, "value");
        Optional<Provenance> provenance = provenance(path, node, Optional.empty());
        if (value.isEmpty() || provenance.isEmpty()) {
            return Optional.empty();
        }
        double number = value.get() ? 1 : 0;
        return Optional.of(figure(
                FluidProperty.RESISTS_OXIDATION,
                EquationForm.CONSTANT,
                new double[] {number},
                "1",
                1,
                Optional.empty(),
                provenance.get()));
    }

    private Optional<Figure> number(FluidProperty property, String path, JsonNode node, double molarMass) {
        List<String> required = new ArrayList<>(List.of("value", "unit"));
        required.addAll(PROVENANCE);
        boolean withUsual = property == FluidProperty.BOILER_PRESSURE;
        if (withUsual) {
            required.add("usual");
        }
        if (!faults.object(path, node, required, List.of(FROM_MEMORY))) {
            return Optional.empty();
        }
        Optional<Double> value = faults.number(path, node, "value");
        Optional<String> unit = faults.choice(path, node, "unit", property.units());
        Optional<Span> usual =
                withUsual ? faults.span(path, node, "usual", property.lowest(), property.highest()) : Optional.empty();
        Optional<Provenance> provenance = provenance(path, node, uncertainty(path, node));
        if (value.isEmpty() || unit.isEmpty() || provenance.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(figure(
                property,
                EquationForm.CONSTANT,
                new double[] {value.get()},
                unit.get(),
                molarMass,
                usual,
                provenance.get()));
    }

    private static Figure figure(
            FluidProperty property,
            EquationForm form,
            double[] coefficients,
            String unit,
            double molarMass,
            Optional<Span> usual,
            Provenance provenance) {
        return new Figure(
                form,
                Arrays.stream(coefficients).boxed().toList(),
                unit,
                Relation.scaled(form.relation(coefficients), property.factor(unit, molarMass)),
                usual,
                Optional.empty(),
                BeyondRange.EXTRAPOLATE,
                provenance);
    }

    private Optional<Figure> relation(
            FluidProperty property, String path, JsonNode node, double molarMass, List<String> more) {
        List<String> required = new ArrayList<>(List.of("form", "coefficients", "unit", "range", "outside"));
        required.addAll(PROVENANCE);
        List<String> optional = new ArrayList<>(List.of(FROM_MEMORY));
        optional.addAll(more);
        if (!faults.object(path, node, required, optional)) {
            return Optional.empty();
        }
        Optional<EquationForm> form = faults.choice(path, node, "form", EquationForm.texts(property.forms()))
                .flatMap(EquationForm::of);
        Optional<double[]> coefficients = faults.numbers(path, node, "coefficients");
        Optional<String> unit = faults.choice(path, node, "unit", property.units());
        Optional<Span> range = faults.span(path, node, "range", COLDEST_K, HOTTEST_K);
        Optional<BeyondRange> beyond = faults.choice(path, node, "outside", List.of("extrapolate", "refuse"))
                .map(text -> BeyondRange.valueOf(text.toUpperCase(Locale.ROOT)));
        Optional<Provenance> provenance = provenance(path, node, uncertainty(path, node));
        if (form.isPresent() && coefficients.isPresent() && !form.get().takes(coefficients.get().length)) {
            faults.refuse(
                    path + ".coefficients",
                    node.get("coefficients"),
                    form.get().coefficientCount() + " numbers: " + form.get().meaning());
            return Optional.empty();
        }
        if (form.isEmpty()
                || coefficients.isEmpty()
                || unit.isEmpty()
                || range.isEmpty()
                || beyond.isEmpty()
                || provenance.isEmpty()) {
            return Optional.empty();
        }
        double factor = property.factor(unit.get(), molarMass);
        return Optional.of(new Figure(
                form.get(),
                Arrays.stream(coefficients.get()).boxed().toList(),
                unit.get(),
                Relation.scaled(form.get().relation(coefficients.get()), factor),
                Optional.empty(),
                range,
                beyond.get(),
                provenance.get()));
    }

    private Optional<Provenance> provenance(String path, JsonNode node, Optional<Uncertainty> uncertainty) {
        Optional<String> source = faults.text(path, node, "source");
        Optional<String> where = faults.text(path, node, "where");
        boolean fromMemory = faults.flag(path, node, FROM_MEMORY).orElse(false);
        if (source.isEmpty() || where.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Provenance(source.get(), where.get(), uncertainty, fromMemory));
    }

    private Optional<Uncertainty> uncertainty(String path, JsonNode parent) {
        JsonNode node = parent.get("uncertainty");
        String own = path + ".uncertainty";
        if (node == null) {
            return Optional.empty();
        }
        if (!node.isObject() || node.size() != 1) {
            faults.refuse(
                    own,
                    node,
                    "one of: {\"relative\": share}, {\"factor\": number}, {\"absolute\": amount in the SI unit},"
                            + " {\"not-available\": reason}");
            return Optional.empty();
        }
        String name = node.propertyNames().iterator().next();
        if (name.equals(NOT_AVAILABLE)) {
            faults.text(own, node, NOT_AVAILABLE);
            return Optional.empty();
        }
        return faults.number(own, node, name).flatMap(value -> switch (name) {
            case "relative" -> judged(own, node, Uncertainty.Kind.RELATIVE, value, value > 0 && value <= 1);
            case "factor" -> judged(own, node, Uncertainty.Kind.FACTOR, value, value > 1 && value <= 100);
            case "absolute" -> judged(own, node, Uncertainty.Kind.ABSOLUTE, value, value > 0);
            default -> judged(own, node, Uncertainty.Kind.ABSOLUTE, value, false);
        });
    }

    private Optional<Uncertainty> judged(
            String path, JsonNode node, Uncertainty.Kind kind, double value, boolean accepted) {
        if (!accepted) {
            faults.refuse(
                    path, node, "relative above 0 and up to 1, factor above 1 and up to 100, or absolute above 0");
            return Optional.empty();
        }
        return Optional.of(new Uncertainty(kind, value));
    }
}
