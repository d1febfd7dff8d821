package boilwright.sequence;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.files.IoReason;
import boilwright.units.PhysicalConstants;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads a plan that was written as JSON and perhaps changed by hand. Of the object only {@code variant} and {@code steps} are
 * read, of a step only {@code do}, {@code clock}, {@code atS} and, to heat, {@code powerFraction} or {@code holdOilK}.
 */
public final class PlanFile {
    /** Most steps. */
    private static final int MOST_STEPS = 200;

    private static final int MOST_BYTES = 1_000_000;
    /** Nobody plans further ahead than a week, s. */
    private static final double LATEST_S = 7 * 24 * 3600;

    private static final double HOTTEST_K = 1000;
    private static final int LONGEST_SHOWN = 60;

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final String name;
    private final List<Message> faults = new ArrayList<>();

    private PlanFile(String name) {
        this.name = name;
    }

    /**
     * Reads a file.
     *
     * @param file UTF-8 text of at most 1 MB
     * @throws InputRefusedException with every fault found, or when it can't be read
     */
    public static Plan read(Path file) {
        String name = file.toString();
        try {
            if (Files.isDirectory(file)) {
                throw refused(Message.of(MessageKey.PLAN_UNREADABLE, name, "it is a folder"));
            }
            if (Files.size(file) > MOST_BYTES) {
                throw refused(Message.of(MessageKey.PLAN_TOO_LARGE, name, "1 MB"));
            }
            return readText(name, Files.readString(file));
        } catch (java.nio.charset.CharacterCodingException e) {
            throw refused(Message.of(MessageKey.PLAN_UNREADABLE, name, "it is no text in UTF-8"));
        } catch (IOException e) {
            throw refused(Message.of(MessageKey.PLAN_UNREADABLE, name, IoReason.of(e)));
        }
    }

    /**
     * Reads the text of a file.
     *
     * @param name what messages call it
     * @throws InputRefusedException with every fault found
     */
    static Plan readText(String name, String text) {
        return new PlanFile(name).plan(tree(name, text));
    }

    private static JsonNode tree(String name, String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JacksonException e) {
            TokenStreamLocation at = e.getLocation();
            String place = at == null ? "somewhere" : "line " + at.getLineNr() + ", column " + at.getColumnNr();
            throw refused(Message.of(
                    MessageKey.PLAN_NOT_JSON,
                    name,
                    place,
                    e.getOriginalMessage().replaceAll("\\p{Cntrl}", " ")));
        }
    }

    private static InputRefusedException refused(Message fault) {
        return new InputRefusedException(fault);
    }

    private Plan plan(JsonNode root) {
        Optional<Variant> variant = Variant.of(text(root.path("variant")));
        if (variant.isEmpty()) {
            fault("variant", root.path("variant"), String.join(", ", Variant.ids()));
        }
        JsonNode list = root.path("steps");
        List<PlanStep> steps = new ArrayList<>();
        if (!list.isArray() || list.isEmpty() || list.size() > MOST_STEPS) {
            fault("steps", list, "a list of 1 to " + MOST_STEPS + " steps");
        } else {
            for (int i = 0; i < list.size(); i++) {
                step(list.get(i), "steps[" + i + "]").ifPresent(steps::add);
            }
        }
        if (!faults.isEmpty()) {
            throw new InputRefusedException(faults);
        }
        return new Plan(variant.orElseThrow(), steps);
    }

    private Optional<PlanStep> step(JsonNode node, String at) {
        int before = faults.size();
        Optional<Action> action = Action.of(text(node.path("do")));
        if (action.isEmpty()) {
            fault(at + ".do", node.path("do"), "one of " + String.join(", ", Action.ids()));
        }
        Optional<Clock> clock = Arrays.stream(Clock.values())
                .filter(c -> c.id().equals(text(node.path("clock"))))
                .findFirst();
        if (clock.isEmpty()) {
            fault(at + ".clock", node.path("clock"), "from-cold or from-hot");
        }
        double seconds = number(node.path("atS"), at + ".atS", 0, LATEST_S);
        HeatLevel level = action.filter(a -> a == Action.HEAT).isPresent() ? level(node, at) : HeatLevel.OFF;
        if (faults.size() > before) {
            return Optional.empty();
        }
        PlanStep.Words words = new PlanStep.Words(
                text(node.path("what")),
                text(node.path("hold")),
                text(node.path("otherwise")),
                text(node.path("why")),
                text(node.path("caution")));
        return Optional.of(new PlanStep(
                action.orElseThrow(), new Moment(clock.orElseThrow(), seconds), level, OptionalDouble.empty(), words));
    }

    private HeatLevel level(JsonNode node, String at) {
        JsonNode hold = node.path("holdOilK");
        if (!hold.isMissingNode() && !hold.isNull()) {
            return new HeatLevel(
                    1, OptionalDouble.of(number(hold, at + ".holdOilK", PhysicalConstants.ZERO_CELSIUS_K, HOTTEST_K)));
        }
        return new HeatLevel(number(node.path("powerFraction"), at + ".powerFraction", 0, 1), OptionalDouble.empty());
    }

    private double number(JsonNode node, String at, double least, double most) {
        double value = node.isNumber() ? node.asDouble() : Double.NaN;
        if (!(value >= least && value <= most)) {
            fault(at, node, "a number from " + plain(least) + " to " + plain(most));
        }
        return value;
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    private static String text(JsonNode node) {
        return node.isString() ? node.asString().replaceAll("\\p{Cntrl}", " ") : "";
    }

    private void fault(String at, JsonNode found, String accepted) {
        String shown = found.isMissingNode() ? "nothing" : found.toString().replaceAll("\\p{Cntrl}", " ");
        faults.add(Message.of(
                MessageKey.PLAN_FIELD,
                name,
                at,
                shown.length() > LONGEST_SHOWN ? shown.substring(0, LONGEST_SHOWN) + " ..." : shown,
                accepted));
    }
}
