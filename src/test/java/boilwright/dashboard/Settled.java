package boilwright.dashboard;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.testfx.util.WaitForAsyncUtils;

/** Waits for the window's thread by what it has done: on a busy machine no sleep is long enough, on an idle one each is too long. */
public final class Settled {
    private static final int LONGEST_S = 60;

    private Settled() {}

    /**
     * Returns when the windows were laid out once more after all that their thread had to do, and what that put off is done
     * too. Where no window is shown, or it is closed meanwhile, there is nothing to lay out.
     */
    public static void windows() {
        CountDownLatch laidOut = new CountDownLatch(1);
        Platform.runLater(() -> shown().ifPresentOrElse(
                        scene -> {
                            scene.addPostLayoutPulseListener(new Runnable() {
                                @Override
                                public void run() {
                                    scene.removePostLayoutPulseListener(this);
                                    laidOut.countDown();
                                }
                            });
                            // a window that is closed meanwhile is laid out no more
                            scene.getWindow()
                                    .showingProperty()
                                    .addListener((property, before, now) -> laidOut.countDown());
                            Platform.requestNextPulse();
                        },
                        laidOut::countDown));
        try {
            if (!laidOut.await(LONGEST_S, TimeUnit.SECONDS)) {
                throw new AssertionError("the window was not laid out within " + LONGEST_S + " s");
            }
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
        WaitForAsyncUtils.waitForFxEvents(1);
    }

    /** All windows are laid out in one go, so that any of them tells. */
    private static Optional<Scene> shown() {
        return Window.getWindows().stream()
                .filter(window -> window instanceof Stage && window.isShowing() && window.getScene() != null)
                .map(Window::getScene)
                .findFirst();
    }
}
