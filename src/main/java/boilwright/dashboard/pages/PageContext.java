package boilwright.dashboard.pages;

import boilwright.dashboard.session.FluidShelf;
import boilwright.dashboard.session.RigFields;
import boilwright.dashboard.session.RigSession;
import boilwright.dashboard.text.FormWords;
import boilwright.dashboard.work.Answering;
import boilwright.fluid.FluidLibrary;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What every page works with.
 *
 * @param session the rig and its edits
 * @param answering the answers
 * @param shelf the fluids that may be named
 */
public record PageContext(RigSession session, Answering answering, FluidShelf shelf) {
    /** The fluids that may be named now. */
    public FluidLibrary fluids() {
        return shelf.library();
    }

    /**
     * Changes fields of the rig as one edit.
     *
     * @param name what the edit is called
     * @return false when the change was refused; {@link #refusal} then has the words
     */
    public boolean change(String name, UnaryOperator<RigFields> change) {
        return session.edit(name, rig -> change.apply(RigFields.of(rig)).rig(fluids().workingFluids()));
    }

    /** Why the last change was refused, in words for a form. */
    public String refusal() {
        return session.refusalProperty().get().stream().map(FormWords::of).collect(Collectors.joining("\n"));
    }
}
