package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.ForelineKind;
import boilwright.rig.SupplyKind;
import boilwright.rig.file.Json.JsonArray;
import boilwright.rig.file.Json.JsonNumber;
import boilwright.rig.file.Json.JsonObject;
import boilwright.rig.file.Json.JsonText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Brings a file of an older version of the format to the current one, one step per version, so that old files stay
 * readable. Step n (counted from 0) turns version n + 1 into version n + 2.
 */
final class Migrations {
    /** The steps of this program. */
    static final Migrations CURRENT = new Migrations(List.of(Migrations::toSecond, Migrations::toThird));

    private static final String COOLING = "cooling";
    private static final String SUPPLY = "supply";
    private static final String FORELINE = "foreline";
    private static final List<String> MOVED_TO_SUPPLY = List.of("inletTemperature", "flow", "chillerCapacity");

    private final List<UnaryOperator<JsonObject>> steps;

    Migrations(List<UnaryOperator<JsonObject>> steps) {
        this.steps = List.copyOf(steps);
    }

    /** The version that this program writes. */
    int newest() {
        return steps.size() + 1;
    }

    /**
     * The file in the newest version.
     *
     * @return empty when its version is missing, unknown or newer; the fault is reported then
     */
    Optional<JsonObject> toNewest(JsonObject file, Findings findings) {
        Json format = file.members().get("format");
        String newest = Integer.toString(newest());
        if (format == null) {
            findings.reportAt(file.at(), MessageKey.RIG_FORMAT_MISSING, newest);
            return Optional.empty();
        }
        if (!(format instanceof JsonNumber number) || !number.literal().matches("\\d{1,9}")) {
            findings.reportAt(format.at(), MessageKey.RIG_FORMAT_UNKNOWN, format.shown(), newest);
            return Optional.empty();
        }
        int version = Integer.parseInt(number.literal());
        if (version > newest()) {
            findings.reportAt(format.at(), MessageKey.RIG_FORMAT_NEWER, number.literal(), newest);
            return Optional.empty();
        }
        if (version < 1) {
            findings.reportAt(format.at(), MessageKey.RIG_FORMAT_UNKNOWN, number.literal(), newest);
            return Optional.empty();
        }
        JsonObject migrated = file;
        for (UnaryOperator<JsonObject> step : steps.subList(version - 1, steps.size())) {
            migrated = step.apply(migrated);
        }
        return Optional.of(migrated.with("format", new JsonNumber(newest, format.at())));
    }

    /** Where a field stands now whose path was this in version 1; empty when it is no field that moved. */
    static Optional<String> pathNow(String path) {
        return MOVED_TO_SUPPLY.stream()
                .filter(name -> path.equals(COOLING + "." + name))
                .findFirst()
                .map(name -> COOLING + "." + SUPPLY + "." + name);
    }

    /**
     * A file of version 1 as one of version 2. Version 1 knew cooling by a measured flow only, whose fields stood in the cooling
     * itself; since version 2 they are those of a supply of the kind given-flow. What is not of the shape that version 1 asks for stays and is refused later.
     */
    static JsonObject toSecond(JsonObject file) {
        JsonObject second = file;
        if (file.members().get(COOLING) instanceof JsonObject cooling
                && !cooling.members().containsKey(SUPPLY)) {
            second = second.with(COOLING, cooling(cooling));
        }
        if (file.members().get("guesses") instanceof JsonArray guesses) {
            second = second.with(
                    "guesses",
                    new JsonArray(
                            guesses.items().stream().map(Migrations::guess).toList(), guesses.at()));
        }
        return second;
    }

    private static JsonObject cooling(JsonObject cooling) {
        Map<String, Json> supply = new LinkedHashMap<>();
        supply.put("kind", new JsonText(SupplyKind.GIVEN_FLOW.id(), cooling.at()));
        JsonObject rest = cooling;
        for (String name : MOVED_TO_SUPPLY) {
            if (cooling.members().containsKey(name)) {
                supply.put(name, cooling.members().get(name));
                rest = rest.without(name);
            }
        }
        return rest.with(SUPPLY, new JsonObject(supply, cooling.at()));
    }

    private static Json guess(Json guess) {
        return guess instanceof JsonText text
                ? new JsonText(pathNow(text.value()).orElse(text.value()), text.at())
                : guess;
    }

    /**
     * A file of version 2 as one of version 3. Version 2 knew the foreline by a pressure only; since version 3 a foreline has a
     * kind, and a rig may have chamber, line, gauge and what protects it. What is not of the shape that version 2 asks for stays and is refused later.
     */
    static JsonObject toThird(JsonObject file) {
        boolean plain = file.members().get(FORELINE) instanceof JsonObject foreline
                && !foreline.members().containsKey("kind");
        if (!plain) {
            return file;
        }
        JsonObject foreline = (JsonObject) file.members().get(FORELINE);
        return file.with(
                FORELINE, foreline.with("kind", new JsonText(ForelineKind.GIVEN_PRESSURE.id(), foreline.at())));
    }
}
