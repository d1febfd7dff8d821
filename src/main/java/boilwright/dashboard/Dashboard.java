package boilwright.dashboard;

import boilwright.answers.RememberingModel;
import boilwright.dashboard.session.StateFolder;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.CancelToken;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The window as the program starts it: shown on a screen, or drawn to a picture without one. */
public final class Dashboard {
    private static final double SHARE_OF_SCREEN = 0.9;
    /** Answers that a window keeps: those of the last few rigs with all that the pages ask of them. */
    private static final int ANSWERS = 64;

    private static final long LOOK_MS = 100;
    private static final String NATIVE_CACHE = "javafx.cachedir";
    /** Held on to: the logging system forgets loggers that nobody holds. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private Dashboard() {}

    /**
     * Shows a window and returns when it is closed or the program is told to stop; in the second case a copy of unsaved edits
     * stays, to be offered at the next start.
     *
     * @param stop raised when the program is told to stop
     * @throws InputRefusedException when there is no screen to show it on
     */
    public static void show(Opening opening, CancelToken stop) {
        CountDownLatch closed = new CountDownLatch(1);
        CompletableFuture<Void> shown = new CompletableFuture<>();
        startToolkit(() -> {
            try {
                show(opening, closed);
                shown.complete(null);
            } catch (RuntimeException | Error fault) {
                shown.completeExceptionally(fault);
            }
        });
        await(shown);
        try {
            while (!stop.isCancelled() && !closed.await(LOOK_MS, TimeUnit.MILLISECONDS)) {
                // Nothing to do but to look again whether the program is told to stop.
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Platform.exit();
    }

    /**
     * Draws a window, once everything in it is answered, without a screen.
     *
     * @return the picture as a PNG file's bytes
     */
    public static byte[] picture(Opening opening) {
        withoutScreen(Picture.width(opening), Picture.height(opening));
        CompletableFuture<byte[]> picture = new CompletableFuture<>();
        startToolkit(() -> {
            try {
                Picture.take(opening, new RememberingModel(ANSWERS), picture);
            } catch (RuntimeException | Error fault) {
                picture.completeExceptionally(fault);
            }
        });
        byte[] bytes = await(picture);
        Platform.exit();
        return bytes;
    }

    private static void show(Opening opening, CountDownLatch closed) {
        Stage stage = new Stage();
        Window window = new Window(opening, new RememberingModel(ANSWERS), new SystemDialogues(stage));
        Thread.setDefaultUncaughtExceptionHandler(window.faults());
        Thread.currentThread().setUncaughtExceptionHandler(window.faults());
        stage.setScene(window.scene());
        stage.titleProperty().bind(window.title());
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        stage.setWidth(opening.width() > 0 ? opening.width() : SHARE_OF_SCREEN * screen.getWidth());
        stage.setHeight(opening.height() > 0 ? opening.height() : SHARE_OF_SCREEN * screen.getHeight());
        stage.setMinWidth(Opening.LEAST_WIDTH);
        stage.setMinHeight(Opening.LEAST_HEIGHT);
        stage.setOnCloseRequest(event -> {
            event.consume();
            window.act(Action.CLOSE);
        });
        stage.setOnHidden(event -> closed.countDown());
        stage.show();
    }

    private static void startToolkit(Runnable what) {
        // The class path is this program's way, and nobody who runs it needs to be told.
        TOOLKIT.setFilter(
                record -> record.getMessage() == null || !record.getMessage().contains("Unsupported JavaFX"));
        keepNativesWritable();
        try {
            Platform.setImplicitExit(false);
            Platform.startup(what);
        } catch (UnsupportedOperationException noScreen) {
            throw new InputRefusedException(Message.of(MessageKey.NO_SCREEN));
        } catch (IllegalStateException running) {
            Platform.runLater(what);
        }
    }

    /** JavaFX unpacks its native parts into the home; where that can't be written to, elsewhere. */
    private static void keepNativesWritable() {
        Path home = Path.of(System.getProperty("user.home", ""));
        if (System.getProperty(NATIVE_CACHE) == null && !Files.isWritable(home)) {
            Path fallback = StateFolder.find().orElse(Path.of(System.getProperty("java.io.tmpdir")));
            System.setProperty(NATIVE_CACHE, fallback.resolve("javafx").toString());
        }
    }

    private static <T> T await(CompletableFuture<T> outcome) {
        try {
            return outcome.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            throw e;
        }
    }

    /** Has the toolkit draw without a screen, into memory of at least this size, pixels. Must come before the toolkit starts. */
    static void withoutScreen(int width, int height) {
        System.setProperty("java.awt.headless", "true");
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("prism.order", "sw");
        System.setProperty("prism.text", "t2k");
        System.setProperty("headless.geometry", width + "x" + height + "-32");
    }
}
