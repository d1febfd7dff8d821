package boilwright.dashboard;

import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.session.RigSession;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import java.nio.file.Path;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.util.Duration;
import org.controlsfx.control.StatusBar;

/**
 * The foot of the window: whether the answers are those of the rig as it is, what is being computed and how far it is, what was
 * done last, and at the right the file of the rig.
 */
final class WindowStatus extends StatusBar {
    /** Work that takes less is over before anybody has read that it goes on. */
    static final Duration PATIENCE = Duration.millis(400);

    private final PageContext context;
    private final BackgroundWork work;
    private final PauseTransition patience = new PauseTransition(PATIENCE);
    private final Tooltip whole = new Tooltip();
    private String told = "";

    /**
     * A bar that follows the session, the answers and the work behind them.
     *
     * @param work what is being computed
     */
    WindowStatus(PageContext context, BackgroundWork work) {
        this.context = context;
        this.work = work;
        setId("status");
        setTooltip(whole);
        whole.textProperty().bind(textProperty());
        accessibleTextProperty().bind(textProperty());
        getRightItems().add(file(context.session()));
        Answering answering = context.answering();
        for (Observable one : new Observable[] {
            context.session().refusalProperty(),
            answering.answerProperty(),
            answering.refusalProperty(),
            answering.computingProperty()
        }) {
            one.addListener(changed -> say());
        }
        context.session().rigProperty().addListener((property, before, now) -> told = "");
        work.busyProperty().addListener((property, before, now) -> {
            if (now) {
                patience.playFromStart();
            } else {
                patience.stop();
                say();
            }
        });
        patience.setOnFinished(event -> say());
        work.progressProperty().addListener((property, before, now) -> showProgress());
        say();
    }

    /** Tells what was done; it stays until the rig is changed or more is told. */
    void tell(String words) {
        told = words;
        say();
    }

    private boolean isWorking() {
        return work.busyProperty().get() && patience.getStatus() != Animation.Status.RUNNING;
    }

    private void say() {
        setText(words());
        showProgress();
    }

    /** Without work the place of the progress is empty; the start of a job shows nothing of it yet. */
    private void showProgress() {
        setProgress(isWorking() ? work.progressProperty().get() : 0);
    }

    private String words() {
        Answering answering = context.answering();
        boolean none = answering.answerProperty().get() == null;
        if (!context.session().refusalProperty().get().isEmpty()) {
            return WindowText.say("frame.status.refused");
        }
        if (answering.computingProperty().get() && (none || isWorking())) {
            return WindowText.say(none ? "frame.status.first" : "frame.status.newer");
        }
        if (!answering.refusalProperty().get().isEmpty()) {
            return WindowText.say(none ? "frame.status.none" : "frame.status.no-answer");
        }
        if (!told.isEmpty()) {
            return told;
        }
        return WindowText.say(isWorking() ? "frame.status.more" : "frame.status.current");
    }

    private static Label file(RigSession session) {
        Label file = new Label();
        file.setId("file-state");
        file.setMinWidth(USE_PREF_SIZE);
        file.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> state(session), session.dirtyProperty(), session.storedProperty()));
        Tooltip path = new Tooltip();
        path.textProperty()
                .bind(session.storedProperty()
                        .map(stored -> stored.file()
                                .map(Path::toString)
                                .orElseGet(() -> WindowText.say("frame.status.no-file-yet"))));
        file.setTooltip(path);
        return file;
    }

    private static String state(RigSession session) {
        Optional<String> name = session.file().map(path -> path.getFileName().toString());
        if (name.isEmpty()) {
            return WindowText.say("frame.status.not-saved");
        }
        return session.isDirty() ? WindowText.say("frame.status.unsaved", name.get()) : name.get();
    }
}
