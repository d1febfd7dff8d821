package boilwright.dashboard.session;

import boilwright.fluid.FluidFile;
import boilwright.fluid.FluidLibrary;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * The fluids that rigs may name while this window is open: those it began with and files of the person's own added since.
 * Changed on the window's thread only.
 */
public final class FluidShelf {
    private final ReadOnlyObjectWrapper<FluidLibrary> library;
    private volatile FluidLibrary now;

    /** A shelf that begins with these fluids. */
    public FluidShelf(FluidLibrary start) {
        now = start;
        library = new ReadOnlyObjectWrapper<>(this, "library", start);
    }

    /** The fluids as they are now; may be asked on any thread. */
    public FluidLibrary library() {
        return now;
    }

    /** The fluids as they are now. */
    public ReadOnlyObjectProperty<FluidLibrary> libraryProperty() {
        return library.getReadOnlyProperty();
    }

    /**
     * Adds a fluid, in place of an earlier file's with the same id.
     *
     * @throws boilwright.errors.InputRefusedException when its id is that of a fluid that comes with the program
     */
    public void add(FluidFile file) {
        now = now.with(file);
        library.set(now);
    }
}
