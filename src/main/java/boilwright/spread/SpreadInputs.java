package boilwright.spread;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.estimate.GuessRange;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.FieldTexts;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.RigFields;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is uncertain about a rig: every default that the rig does not set itself, every guessed quantity, and what a person gave a range for. A
 * point of the unit cube makes one rig with its values.
 */
final class SpreadInputs {
    private final Rig rig;
    private final ParameterValues nominal;
    private final Map<String, SpreadRange> given = new LinkedHashMap<>();
    private final List<Part> parts = new ArrayList<>();

    /** One input with what it sets: a default, or fields. */
    private record Part(SpreadInput input, Optional<Parameter> parameter, List<GuessRange> fields) {
        double at(double share, double low, double value, double high) {
            return input.shape().at(share, low, value, high);
        }
    }

    /** A rig as drawn, with the values of its defaults. */
    record Drawn(Rig rig, ParameterValues values) {}

    /** @throws InputRefusedException when a given range makes no sense for this rig */
    SpreadInputs(Rig rig, List<SpreadRange> ranges) {
        this.rig = rig;
        nominal = ParameterValues.of(rig);
        check(ranges);
        for (Parameter parameter : Parameter.values()) {
            if (given.containsKey(parameter.id()) || !rig.parameters().containsKey(parameter.id())) {
                parts.add(part(parameter));
            }
        }
        GuessRange.groups(rig).forEach(this::addGuess);
        given.values().stream()
                .filter(range -> Parameter.find(range.id()).isEmpty())
                .forEach(this::addField);
    }

    /** The inputs, in the order of the coordinates of a point. */
    List<SpreadInput> list() {
        return parts.stream().map(Part::input).toList();
    }

    /**
     * The rig at a point.
     *
     * @param point for each input where it lies in its distribution, 0 to 1
     * @throws InputRefusedException when the values do not fit one another
     */
    Drawn draw(double[] point) {
        ParameterValues values = nominal;
        List<RigEdit> edits = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            SpreadInput input = part.input();
            if (part.parameter().isPresent()) {
                double value = part.at(point[i], input.low(), input.nominal(), input.high());
                values = values.with(part.parameter().get(), value);
            }
            for (GuessRange field : part.fields()) {
                edits.add(RigEdit.of(field.path(), part.at(point[i], field.low(), field.value(), field.high())));
            }
        }
        Rig drawn = edits.isEmpty() ? rig : RigFields.of(rig).with(edits).rig(List.of(rig.fluidId()));
        return new Drawn(drawn, values);
    }

    /** The rig as it stands. */
    Drawn nominal() {
        return new Drawn(rig, nominal);
    }

    private Part part(Parameter parameter) {
        Optional<SpreadRange> range = Optional.ofNullable(given.get(parameter.id()));
        SpreadInput input = new SpreadInput(
                parameter.id(),
                FieldTexts.title(
                        FieldCatalogue.find("parameters." + parameter.id()).orElseThrow()),
                Shape.of(parameter),
                nominal.get(parameter),
                range.map(SpreadRange::low).orElse(parameter.low()),
                range.map(SpreadRange::high).orElse(parameter.high()),
                parameter.dimension(),
                range.isPresent() ? SpreadSentence.SOURCE_GIVEN.say() : parameter.source(),
                List.of());
        return new Part(input, Optional.of(parameter), List.of());
    }

    private void addGuess(String general, List<GuessRange> group) {
        List<GuessRange> left =
                group.stream().filter(field -> !given.containsKey(field.path())).toList();
        if (!left.isEmpty()) {
            parts.add(part(
                    left.size() == 1 ? left.get(0).path() : general,
                    // of unknown throats twice as much is as likely as half
                    general.equals("stages[].throatGap") ? Shape.LOG_UNIFORM : Shape.TRIANGULAR,
                    left,
                    SpreadSentence.SOURCE_GUESS.say()));
        }
    }

    private void addField(SpreadRange range) {
        double value = RigFields.of(rig).quantity(range.id()).orElseThrow();
        GuessRange field = new GuessRange(range.id(), value, range.low(), range.high());
        parts.add(part(range.id(), Shape.UNIFORM, List.of(field), SpreadSentence.SOURCE_GIVEN.say()));
    }

    private static Part part(String id, Shape shape, List<GuessRange> fields, String source) {
        GuessRange last = fields.get(fields.size() - 1);
        Field field = FieldCatalogue.find(id).orElseThrow();
        SpreadInput input = new SpreadInput(
                id,
                FieldTexts.title(field),
                shape,
                last.value(),
                last.low(),
                last.high(),
                field.dimension().orElseThrow(),
                source,
                fields.stream().map(GuessRange::path).toList());
        return new Part(input, Optional.empty(), fields);
    }

    private void check(List<SpreadRange> ranges) {
        List<Message> faults = new ArrayList<>();
        Set<String> paths = new HashSet<>(RigPaths.of(rig));
        for (SpreadRange range : ranges) {
            Optional<Field> field = field(range.id(), paths);
            if (field.isEmpty()) {
                faults.add(Message.of(MessageKey.SPREAD_RANGE_UNKNOWN, shown(range.id())));
                continue;
            }
            Dimension dimension = field.get().dimension().orElseThrow();
            String low = QuantityWriter.writeAuto(range.low(), dimension);
            String high = QuantityWriter.writeAuto(range.high(), dimension);
            if (!(range.low() < range.high())) {
                faults.add(Message.of(MessageKey.SPREAD_RANGE_REVERSED, range.id(), low, high));
            } else if (!field.get().allows(range.low()) || !field.get().allows(range.high())) {
                faults.add(Message.of(
                        MessageKey.SPREAD_RANGE_OUTSIDE,
                        range.id(),
                        low,
                        high,
                        QuantityWriter.writeAuto(field.get().allowedLow(), dimension),
                        QuantityWriter.writeAuto(field.get().allowedHigh(), dimension)));
            } else if (given.put(range.id(), range) != null) {
                faults.add(Message.of(MessageKey.SPREAD_RANGE_TWICE, range.id()));
            }
        }
        if (!faults.isEmpty()) {
            throw new InputRefusedException(faults);
        }
    }

    /** The catalogue's entry of a default or of a quantity that the rig has. */
    private Optional<Field> field(String id, Set<String> paths) {
        if (Parameter.find(id).isPresent()) {
            return FieldCatalogue.find("parameters." + id);
        }
        return paths.contains(id) && RigFields.of(rig).quantity(id).isPresent()
                ? FieldCatalogue.find(id)
                : Optional.empty();
    }

    private static String shown(String text) {
        return text.replaceAll("\\p{Cntrl}", "?");
    }
}
