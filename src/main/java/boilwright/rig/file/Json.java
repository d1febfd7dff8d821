package boilwright.rig.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A JSON value that knows where in the file it began, so that a fault can name the line. */
sealed interface Json {
    /** Where it began. */
    Position at();

    /** What it is, as a fault message shows it. */
    String shown();

    /**
     * A place in a file, both counted from 1.
     *
     * @param line line
     * @param column column
     */
    record Position(int line, int column) {}

    /** Members in the order of the file. */
    record JsonObject(Map<String, Json> members, Position at) implements Json {
        public JsonObject {
            members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
        }

        /** The same object with one member set, at its old place or at the end. */
        JsonObject with(String name, Json value) {
            Map<String, Json> changed = new LinkedHashMap<>(members);
            changed.put(name, value);
            return new JsonObject(changed, at);
        }

        /** The same object without one member. */
        JsonObject without(String name) {
            Map<String, Json> changed = new LinkedHashMap<>(members);
            changed.remove(name);
            return new JsonObject(changed, at);
        }

        @Override
        public String shown() {
            return "an object in braces";
        }
    }

    /** Items in order. */
    record JsonArray(List<Json> items, Position at) implements Json {
        public JsonArray {
            items = List.copyOf(items);
        }

        @Override
        public String shown() {
            return items.isEmpty() ? "[]" : "a list in brackets";
        }
    }

    /** A text, without its quotation marks. */
    record JsonText(String value, Position at) implements Json {
        @Override
        public String shown() {
            return Shown.quoted(value);
        }
    }

    /** A number, as it is written. */
    record JsonNumber(String literal, Position at) implements Json {
        @Override
        public String shown() {
            return Shown.plain(literal);
        }
    }

    /** true, false or null. */
    record JsonWord(String word, Position at) implements Json {
        @Override
        public String shown() {
            return word;
        }
    }
}
