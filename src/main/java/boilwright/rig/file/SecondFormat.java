package boilwright.rig.file;

import boilwright.rig.ForelineKind;
import boilwright.rig.file.Json.JsonObject;
import boilwright.rig.file.Json.JsonText;

/**
 * Version 2 of the format. It knew the foreline by a pressure only; since version 3 a foreline has a kind, and a rig may have
 * chamber, line, gauge and what protects it.
 */
final class SecondFormat {
    private static final String FORELINE = "foreline";
    private static final String KIND = "kind";

    private SecondFormat() {}

    /** A file of version 2 as one of version 3. What is not of the shape that version 2 asks for stays and is refused later. */
    static JsonObject toThird(JsonObject file) {
        boolean plain = file.members().get(FORELINE) instanceof JsonObject foreline
                && !foreline.members().containsKey(KIND);
        if (!plain) {
            return file;
        }
        JsonObject foreline = (JsonObject) file.members().get(FORELINE);
        return file.with(FORELINE, foreline.with(KIND, new JsonText(ForelineKind.GIVEN_PRESSURE.id(), foreline.at())));
    }
}
