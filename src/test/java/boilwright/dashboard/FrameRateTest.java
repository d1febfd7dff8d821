package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.file.RigReader;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.beans.property.DoubleProperty;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;

/**
 * Counts the frames of the whole window while the cursor of the band moves every frame, as it does when it is dragged, and the
 * processor time that a frame takes, which other work on the machine leaves alone. Writes to {@code target/frame-rate.txt}; judges only that the cursor came through, for shared machines make times a lottery.
 */
@Tag("bench")
class FrameRateTest {
    private static final double WARM_S = 3;
    private static final double SECONDS = 6;
    private static final int[][] SIZES = {{1280, 720}, {1920, 1080}, {3840, 2160}};

    @TempDir
    Path folder;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void measures() throws IOException {
        StringBuilder report = new StringBuilder();
        for (PageName page : List.of(PageName.RIG, PageName.TIME)) {
            for (String demo : RigReader.demoNames()) {
                OpenWindow open =
                        OpenWindow.on(OpenWindow.demo(demo), Optional.empty(), folder.resolve(demo + page.id()), page);
                open.answer();
                for (int[] size : SIZES) {
                    open.resize(size[0], size[1]);
                    Drag drag = new Drag(open.window().frame().band().cursorSProperty(), 3600);
                    open.onWindowsThread(drag::start);
                    open.until("the drag", drag::isDone);
                    assertThat(drag.gapsMs).hasSizeGreaterThan(1);
                    report.append(line(demo, page, size, drag));
                }
                open.close();
                assertThat(open.faults()).isEmpty();
            }
        }
        Files.writeString(Path.of("target", "frame-rate.txt"), report);
    }

    private static String line(String demo, PageName page, int[] size, Drag drag) {
        List<Double> gapsMs = drag.gapsMs;
        double all = gapsMs.stream().mapToDouble(Double::doubleValue).sum();
        List<Double> sorted = new ArrayList<>(gapsMs);
        Collections.sort(sorted);
        return String.format(
                Locale.ROOT,
                "%s, page %s, %dx%d: %.1f frames a second, gap median %.1f ms, 95th percentile %.1f ms, longest %.1f ms;"
                        + " processor time a frame: window's thread %.1f ms, renderer %.1f ms%n",
                demo,
                page.id(),
                size[0],
                size[1],
                1000 * sorted.size() / all,
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 95 / 100),
                sorted.get(sorted.size() - 1),
                drag.windowMs / sorted.size(),
                drag.rendererMs / sorted.size());
    }

    /** Moves the cursor back and forth over a stretch of time, once in every frame. */
    private static final class Drag extends AnimationTimer {
        private final DoubleProperty cursorS;
        private final double stretchS;
        private final List<Double> gapsMs = new ArrayList<>();
        private long began;
        private long last;
        private double windowMs;
        private double rendererMs;
        private volatile boolean done;

        Drag(DoubleProperty cursorS, double stretchS) {
            this.cursorS = cursorS;
            this.stretchS = stretchS;
        }

        boolean isDone() {
            return done;
        }

        @Override
        public void handle(long pulse) {
            long now = System.nanoTime();
            if (began == 0) {
                began = now;
            }
            double s = (now - began) * 1e-9;
            if (s > WARM_S) {
                if (gapsMs.isEmpty()) {
                    windowMs = -cpuMs(Thread.currentThread().getId());
                    rendererMs = -cpuMs(renderer());
                }
                gapsMs.add((now - last) * 1e-6);
            }
            last = now;
            double turn = s / SECONDS % 2;
            cursorS.set(stretchS * (turn < 1 ? turn : 2 - turn));
            if (s > WARM_S + SECONDS) {
                stop();
                windowMs += cpuMs(Thread.currentThread().getId());
                rendererMs += cpuMs(renderer());
                done = true;
            }
        }

        private static double cpuMs(long thread) {
            return ManagementFactory.getThreadMXBean().getThreadCpuTime(thread) * 1e-6;
        }

        private static long renderer() {
            return Thread.getAllStackTraces().keySet().stream()
                    .filter(thread -> thread.getName().startsWith("QuantumRenderer"))
                    .findFirst()
                    .orElseThrow()
                    .getId();
        }
    }
}
