package boilwright.dashboard.water;

import boilwright.answers.WaterQuestion;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.dashboard.work.RigAnswer;
import boilwright.rig.TypicalValues;
import boilwright.water.CircuitSolver;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** Has the question about the water answered for each rig that was checked. Belongs to the window's thread. */
final class WaterAnswering {

    private static final int POINTS = 80;

    private final ReadOnlyObjectWrapper<WaterFound> found = new ReadOnlyObjectWrapper<>(this, "found");
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper(this, "refusal", "");
    private final BackgroundWork work;

    WaterAnswering(BackgroundWork work) {
        this.work = work;
    }

    /** Has this rig's water answered, unless it is already; a newer rig stops the question. */
    void want(RigAnswer checked) {
        if (found.get() != null && found.get().checked().check() == checked.check()) {
            return;
        }
        work.ask(
                Urgency.AFTERWARDS,
                (cancel, progress) -> new WaterFound(
                        checked,
                        WaterQuestion.of(checked.check(), checked.fluid(), TypicalValues.SESSION_S, cancel),
                        CircuitSolver.curves(checked.check().rig(), POINTS)),
                now -> {
                    refusal.set("");
                    found.set(now);
                },
                why -> refusal.set(Answering.words(why)));
    }

    /** The last good answer; null until there is one. */
    ReadOnlyObjectProperty<WaterFound> foundProperty() {
        return found.getReadOnlyProperty();
    }

    /** Why the last rig has no answer; empty when it has. */
    ReadOnlyStringProperty refusalProperty() {
        return refusal.getReadOnlyProperty();
    }
}
