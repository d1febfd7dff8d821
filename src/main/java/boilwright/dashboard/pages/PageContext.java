package boilwright.dashboard.pages;

import boilwright.answers.Model;
import boilwright.dashboard.session.FluidShelf;
import boilwright.dashboard.session.RigSession;
import boilwright.dashboard.text.FormWords;
import boilwright.dashboard.work.Answering;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.RigFields;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What every page works with.
 *
 * @param session the rig and its edits
 * @param answering the answers
 * @param shelf the fluids that may be named
 * @param model answers the pages' own questions
 */
public record PageContext(RigSession session, Answering answering, FluidShelf shelf, Model model) {
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

    /**
     * Changes fields of the rig to what a person typed, as one edit; a value that looks like a slip is refused.
     *
     * @param name what the edit is called
     * @param accepted paths of fields whose unusual values are meant
     * @return false when the change was refused; {@link #refusal} then has the words
     */
    public boolean change(String name, List<RigEdit> edits, Set<String> accepted) {
        return session.edit(name, rig -> RigFields.of(rig).with(edits).rig(fluids().workingFluids(), "", accepted));
    }

    /** Why the last change was refused, in words for a form. */
    public String refusal() {
        return session.refusalProperty().get().stream().map(FormWords::of).collect(Collectors.joining("\n"));
    }
}
