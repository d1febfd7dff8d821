package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.file.Json.JsonNumber;
import boilwright.rig.file.Json.JsonObject;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Brings a file of an older version of the format to the current one, one step per version, so that old files stay
 * readable. Step n (counted from 0) turns version n + 1 into version n + 2.
 */
final class Migrations {
    /** The steps of this program. */
    static final Migrations CURRENT = new Migrations(List.of(FirstFormat::toSecond, SecondFormat::toThird));

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
}
