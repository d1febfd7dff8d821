package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.RunTimeline;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** The time band leads drawing and charts through the run. */
class WindowBandTest {
    @TempDir
    Path folder;

    private final ToolkitLog log = new ToolkitLog();
    private final FxRobot robot = new FxRobot();
    private OpenWindow open;
    private RunTimeline line;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @BeforeEach
    void begin() {
        open = OpenWindow.on(OpenWindow.demo("mirror-club"), Optional.empty(), folder, PageName.TIME);
        open.answer();
        line = open.window().frame().timelineShown();
    }

    @AfterEach
    void end() {
        open.close();
        log.close();
        assertThat(open.faults()).isEmpty();
        assertThat(log.warnings()).isEmpty();
    }

    @Test
    void draggingMovesDrawingAndCharts() {
        Node track = open.find("band-track", Node.class);
        Bounds on = track.localToScreen(track.getBoundsInLocal());
        double y = on.getMinY() + on.getHeight() / 2;
        robot.moveTo(on.getMinX() + 0.03 * on.getWidth(), y);
        robot.press(MouseButton.PRIMARY);
        robot.moveTo(on.getMinX() + 0.02 * on.getWidth(), y);
        open.onWindowsThread(() -> {});
        double early = cursor();
        int[] cold = drawn();
        robot.moveTo(on.getMinX() + 0.55 * on.getWidth(), y);
        robot.release(MouseButton.PRIMARY);
        open.onWindowsThread(() -> {});
        assertThat(cursor()).isGreaterThan(early);
        assertThat(line.at(early).jets()).noneMatch(JetState::lit);
        assertThat(line.at(cursor()).jets()).allMatch(JetState::lit);
        assertThat(Arrays.equals(cold, drawn())).as("the drawing follows").isFalse();
        assertThat(chart().cursorXProperty().get()).isEqualTo(cursor());
    }

    @Test
    void theChartsCursorMovesTheBand() {
        open.onWindowsThread(() -> chart().cursorXProperty().set(line.cooldownStartS() + 600));
        assertThat(cursor()).isEqualTo(line.cooldownStartS() + 600);
    }

    @Test
    void keysWalkThroughTheRun() {
        open.onWindowsThread(() -> open.find("band-track", Node.class).requestFocus());
        push(KeyCode.HOME);
        assertThat(cursor()).isZero();
        push(KeyCode.RIGHT);
        double one = cursor();
        assertThat(one).isPositive();
        push(KeyCode.PAGE_DOWN);
        assertThat(cursor()).isGreaterThan(one);
        push(KeyCode.PAGE_UP);
        push(KeyCode.LEFT);
        push(KeyCode.END);
        assertThat(cursor()).isEqualTo(line.endS());
        push(KeyCode.SPACE);
        assertThat(open.window().frame().band().playingProperty().get()).isTrue();
        open.until("the cursor to run", () -> cursor() > 0 && cursor() < line.endS());
        push(KeyCode.SPACE);
        assertThat(open.window().frame().band().playingProperty().get()).isFalse();
        double stopped = cursor();
        open.onWindowsThread(() -> {});
        assertThat(cursor()).isEqualTo(stopped);
    }

    private SeriesChart chart() {
        return (SeriesChart) open.window().frame().pageShown().lookupAll("*").stream()
                .filter(node -> node instanceof SeriesChart)
                .findFirst()
                .orElseThrow();
    }

    private double cursor() {
        return open.window().frame().band().cursorSProperty().get();
    }

    /** The pixels of the drawing now. */
    private int[] drawn() {
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

    private void push(KeyCode key) {
        robot.push(key);
        open.onWindowsThread(() -> {});
    }
}
