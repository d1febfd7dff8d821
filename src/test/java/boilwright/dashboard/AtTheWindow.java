package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** What all tests with an open window have in common: they end without a fault and without a warning of the toolkit. */
abstract class AtTheWindow {
    /** Where a window that the tests of a class share remembers things. */
    @TempDir
    static Path sharedFolder;

    private static OpenWindow shared;

    @TempDir
    Path folder;

    final ToolkitLog log = new ToolkitLog();
    final FxRobot robot = new Keyboard();
    /** Opened by each test or before it. */
    OpenWindow open;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    /** The window that the tests of a class share, as if newly opened on a demo. */
    void share(String demo, PageName page) {
        if (shared == null) {
            shared = OpenWindow.on(OpenWindow.demo(demo), Optional.empty(), sharedFolder, page);
        } else {
            shared.renew(OpenWindow.demo(demo), page);
        }
        open = shared;
    }

    /** Ends the window that was shared; the next test that shares one opens another. */
    @AfterAll
    static void endShared() {
        if (shared != null) {
            OpenWindow ending = shared;
            shared = null;
            ending.close();
            assertThat(ending.faults()).isEmpty();
        }
    }

    @AfterEach
    void end() {
        if (open != shared) {
            open.close();
        }
        log.close();
        assertThat(open.faults()).isEmpty();
        assertThat(log.warnings()).isEmpty();
    }

    /** The input of the field with this path. */
    TextInputControl input(String path) {
        return (TextInputControl) open.find(path, VBox.class).lookup(".text-input");
    }

    /** What stands under the field with this path; empty for nothing. */
    String message(String path) {
        return OpenWindow.seen(() -> open.find(path, VBox.class).lookupAll(".field-message").stream()
                .map(node -> ((Label) node).getText())
                .findFirst()
                .orElse(""));
    }

    /** The pixels of the drawing now. */
    int[] drawn() {
        int[][] pixels = new int[1][];
        open.onWindowsThread(() -> {
            WritableImage image = open.window().frame().drawing().snapshot(new SnapshotParameters(), null);
            int w = (int) image.getWidth();
            int h = (int) image.getHeight();
            pixels[0] = new int[w * h];
            image.getPixelReader().getPixels(0, 0, w, h, PixelFormat.getIntArgbInstance(), pixels[0], 0, w);
        });
        return pixels[0];
    }
}
