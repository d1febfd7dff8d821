package boilwright.dashboard.work;

import boilwright.answers.Asked;
import boilwright.answers.CheckQuestion;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.Model;
import boilwright.answers.RunAnswer;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.errors.OutputNotWrittenException;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * Has every rig answered: first the check, which the person waits for, then the cool-down. A newer rig overtakes an older
 * one. The last good answer stays until there is a newer good one.
 */
public final class Answering {
    private final ReadOnlyObjectWrapper<RigAnswer> answer = new ReadOnlyObjectWrapper<>(this, "answer");
    private final ReadOnlyBooleanWrapper computing = new ReadOnlyBooleanWrapper(this, "computing");
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper(this, "refusal", "");
    private final BackgroundWork work;
    private final Supplier<FluidLibrary> shelf;
    private final Model model;

    /**
     * @param work where it is computed
     * @param shelf where fluids are found at the moment
     * @param model who answers
     */
    public Answering(BackgroundWork work, Supplier<FluidLibrary> shelf, Model model) {
        this.work = work;
        this.shelf = shelf;
        this.model = model;
    }

    /** Has this rig answered in place of every earlier one. */
    public void request(Rig rig) {
        computing.set(true);
        FluidLibrary fluids = shelf.get();
        work.request(
                Urgency.QUESTION,
                (cancel, progress) -> new RigAnswer(
                        model.answer(new CheckQuestion(Asked.of(rig, fluids)), cancel, progress), Optional.empty()),
                this::answered,
                this::refused);
    }

    private void answered(RigAnswer found) {
        computing.set(false);
        refusal.set("");
        answer.set(found);
        work.request(
                Urgency.AFTERWARDS,
                (cancel, progress) -> model.answer(new CooldownQuestion(found.asked()), cancel, progress),
                (RunAnswer run) -> answer.set(found.with(run)),
                why -> refusal.set(words(why)));
    }

    private void refused(RuntimeException why) {
        computing.set(false);
        refusal.set(words(why));
    }

    /** A refusal in words. */
    public static String words(RuntimeException why) {
        if (why instanceof InputRefusedException input) {
            return input.faults().get(0).text();
        }
        if (why instanceof ComputationException computation) {
            return computation.reason().text();
        }
        return why instanceof OutputNotWrittenException output
                ? output.reason().text()
                : WindowText.say("frame.answer-failed");
    }

    /** The last good answer; null until there is one. */
    public ReadOnlyObjectProperty<RigAnswer> answerProperty() {
        return answer.getReadOnlyProperty();
    }

    /** Whether a newer answer is on its way. */
    public ReadOnlyBooleanProperty computingProperty() {
        return computing.getReadOnlyProperty();
    }

    /** Why the last rig has no answer; empty when it has. */
    public ReadOnlyStringProperty refusalProperty() {
        return refusal.getReadOnlyProperty();
    }
}
