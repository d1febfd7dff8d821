package boilwright.rig.file;

import boilwright.rig.Rig;
import java.util.List;

/**
 * One change of a rig: what shall stand at a path. A value; {@link RigFields} applies it, and reading the changed rig checks it like
 * a file.
 *
 * @param path path of a field, with the numbers of list entries, such as {@code stages[1].throatGap}
 * @param value what shall stand there
 */
public record RigEdit(String path, Value value) {
    /** What an edit puts in the place of what a rig has. */
    public sealed interface Value {}

    /** What a person writes there in a file, without quotation marks: a number with its unit, a choice, a text. */
    public record Text(String text) implements Value {}

    /** A quantity, SI. */
    public record Quantity(double si) implements Value {}

    /** A list of texts. */
    public record Texts(List<String> texts) implements Value {
        public Texts {
            texts = List.copyOf(texts);
        }
    }

    /** A change of what there is instead of what it holds. */
    public enum Change implements Value {
        /** What stands at the path is taken away, an entry of a list included. */
        REMOVED,
        /** The list at the path, made when it is not there, gets one more entry at its end, empty. */
        APPENDED,
        /** The entry at the path stands once more after itself, in full. */
        REPEATED,
        /** The entry at the path goes before the one that it followed; the first one stays where it is. */
        EARLIER
    }

    /** A quantity changed to a value, SI. */
    public static RigEdit of(String path, double si) {
        return new RigEdit(path, new Quantity(si));
    }

    /** A field changed to what a person writes there. */
    public static RigEdit of(String path, String text) {
        return new RigEdit(path, new Text(text));
    }

    /**
     * The rig with this one edit; whoever edits by program means the value.
     *
     * @throws boilwright.errors.InputRefusedException when the value is not accepted or does not fit the rest of the rig
     * @throws IllegalArgumentException when a rig has no such field
     */
    public Rig applied(Rig rig) {
        return RigFields.of(rig).with(List.of(this)).rig(List.of(rig.fluidId()));
    }
}
