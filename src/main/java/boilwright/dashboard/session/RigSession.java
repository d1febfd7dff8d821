package boilwright.dashboard.session;

import boilwright.dashboard.session.RigFiles.Stored;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.rig.Rig;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * The rig that a person works on: the rig as it is now, the named edits that led to it, and what its file holds. Belongs to
 * the window's thread; touches no disk.
 */
public final class RigSession {
    private static final int MOST_EDITS = 500;

    /** One step back or forward: what it was called and the rig that it leads to. */
    private record Step(String name, Rig rig) {}

    private final ReadOnlyObjectWrapper<Rig> rig = new ReadOnlyObjectWrapper<>(this, "rig");
    private final ReadOnlyObjectWrapper<Stored> stored = new ReadOnlyObjectWrapper<>(this, "stored");
    private final ReadOnlyBooleanWrapper dirty = new ReadOnlyBooleanWrapper(this, "dirty");
    private final ReadOnlyStringWrapper undoName = new ReadOnlyStringWrapper(this, "undoName", "");
    private final ReadOnlyStringWrapper redoName = new ReadOnlyStringWrapper(this, "redoName", "");
    private final ReadOnlyObjectWrapper<List<Message>> refusal =
            new ReadOnlyObjectWrapper<>(this, "refusal", List.of());
    private final Deque<Step> back = new ArrayDeque<>();
    private final Deque<Step> forward = new ArrayDeque<>();

    /** A session with this rig. */
    public RigSession(Stored start) {
        begin(start);
    }

    /** Goes on with another rig; its edits begin anew. */
    public void begin(Stored start) {
        back.clear();
        forward.clear();
        stored.set(start);
        refusal.set(List.of());
        become(start.rig());
    }

    /**
     * Goes on with a rig that a crash had left unsaved: it counts as an edit of what its file holds.
     *
     * @param name what the edit is called
     */
    public void resume(Stored start, String name, Rig unsaved) {
        begin(start);
        edit(name, before -> unsaved);
    }

    /**
     * Changes the rig. An edit that changes nothing leaves no step behind.
     *
     * @param name what the edit is called, in a few words
     * @param change from the rig as it is to the rig as it shall be
     * @return false when the change was refused: then the rig is as before and {@link #refusalProperty} has the reasons
     */
    public boolean edit(String name, UnaryOperator<Rig> change) {
        Rig before = rig.get();
        Rig after;
        try {
            after = change.apply(before);
        } catch (InputRefusedException refused) {
            refusal.set(refused.faults());
            return false;
        }
        refusal.set(List.of());
        if (!after.equals(before)) {
            back.push(new Step(name, before));
            if (back.size() > MOST_EDITS) {
                back.removeLast();
            }
            forward.clear();
            become(after);
        }
        return true;
    }

    /** Takes the last edit back, if there is one. */
    public void undo() {
        move(back, forward);
    }

    /** Does the edit again that was taken back last, if there is one. */
    public void redo() {
        move(forward, back);
    }

    private void move(Deque<Step> from, Deque<Step> to) {
        if (from.isEmpty()) {
            return;
        }
        Step step = from.pop();
        to.push(new Step(step.name(), rig.get()));
        refusal.set(List.of());
        become(step.rig());
    }

    /** The rig was written to a file as it stands there now. */
    public void saved(Stored now) {
        stored.set(now);
        dirty.set(!now.rig().equals(rig.get()));
    }

    private void become(Rig next) {
        // The rig comes last: whoever hears of it may look at everything else.
        dirty.set(!next.equals(stored.get().rig()));
        undoName.set(back.isEmpty() ? "" : back.peek().name());
        redoName.set(forward.isEmpty() ? "" : forward.peek().name());
        rig.set(next);
    }

    /** The rig as it is now. */
    public Rig rig() {
        return rig.get();
    }

    /** The rig as it is now. */
    public ReadOnlyObjectProperty<Rig> rigProperty() {
        return rig.getReadOnlyProperty();
    }

    /** The file that the rig belongs to. */
    public Optional<Path> file() {
        return stored.get().file();
    }

    /** What the file held when it was last read or written. */
    public Stored stored() {
        return stored.get();
    }

    /** What the file held when it was last read or written. */
    public ReadOnlyObjectProperty<Stored> storedProperty() {
        return stored.getReadOnlyProperty();
    }

    /** Whether the rig differs from what its file holds. */
    public boolean isDirty() {
        return dirty.get();
    }

    /** Whether the rig differs from what its file holds. */
    public ReadOnlyBooleanProperty dirtyProperty() {
        return dirty.getReadOnlyProperty();
    }

    /** The edit that undo takes back; empty when there is none. */
    public ReadOnlyStringProperty undoNameProperty() {
        return undoName.getReadOnlyProperty();
    }

    /** The edit that redo does again; empty when there is none. */
    public ReadOnlyStringProperty redoNameProperty() {
        return redoName.getReadOnlyProperty();
    }

    /** Why the last change was refused; empty when it was not. */
    public ReadOnlyObjectProperty<List<Message>> refusalProperty() {
        return refusal.getReadOnlyProperty();
    }
}
