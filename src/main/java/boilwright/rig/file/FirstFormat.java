package boilwright.rig.file;

import boilwright.rig.SupplyKind;
import boilwright.rig.file.Json.JsonArray;
import boilwright.rig.file.Json.JsonObject;
import boilwright.rig.file.Json.JsonText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Version 1 of the format. It knew cooling by a measured flow only, whose fields stood in the cooling itself; since version 2
 * they are those of a supply of the kind given-flow.
 */
final class FirstFormat {
    private static final String COOLING = "cooling";
    private static final String SUPPLY = "supply";
    private static final String GUESSES = "guesses";
    private static final List<String> MOVED = List.of("inletTemperature", "flow", "chillerCapacity");

    private FirstFormat() {}

    /** Where a field stands now whose path was this in version 1; empty when it is no field that moved. */
    static Optional<String> pathNow(String path) {
        return MOVED.stream()
                .filter(name -> path.equals(COOLING + "." + name))
                .findFirst()
                .map(name -> COOLING + "." + SUPPLY + "." + name);
    }

    /** A file of version 1 as one of version 2. What is not of the shape that version 1 asks for stays and is refused later. */
    static JsonObject toSecond(JsonObject file) {
        JsonObject second = file;
        if (file.members().get(COOLING) instanceof JsonObject cooling
                && !cooling.members().containsKey(SUPPLY)) {
            second = second.with(COOLING, cooling(cooling));
        }
        if (file.members().get(GUESSES) instanceof JsonArray guesses) {
            second = second.with(
                    GUESSES,
                    new JsonArray(
                            guesses.items().stream().map(FirstFormat::guess).toList(), guesses.at()));
        }
        return second;
    }

    private static JsonObject cooling(JsonObject cooling) {
        Map<String, Json> supply = new LinkedHashMap<>();
        supply.put("kind", new JsonText(SupplyKind.GIVEN_FLOW.id(), cooling.at()));
        JsonObject rest = cooling;
        for (String name : MOVED) {
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
}
