package boilwright.dashboard;

import boilwright.dashboard.band.TimeBand;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.session.StateFolder;
import boilwright.rig.file.RigReader;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;

/**
 * Measures what one frame costs while the time band is dragged: the cursor moves with every frame, and drawing, charts and band
 * follow. Without a screen, in software, with frames as fast as they come. Columns: ms between frames, then ms of computing a frame
 * takes on the two threads, which work side by side. Not a test; run it to see the table that stands in
 * docs/performance.md.
 */
public final class FrameCost {
    private static final int[][] SIZES = {{1280, 720}, {1920, 1080}, {3840, 2160}};
    private static final int WARM = 400;
    private static final int COUNT = 600;
    private static final double NANOS_A_MS = 1e6;

    private FrameCost() {}

    public static void main(String[] arguments) throws Exception {
        Dashboard.withoutScreen(3840, 2160);
        System.setProperty("javafx.animation.fullspeed", "true");
        Path state = Files.createTempDirectory("frame-cost");
        System.setProperty(StateFolder.PROPERTY, state.toString());
        CountDownLatch started = new CountDownLatch(1);
        Platform.startup(started::countDown);
        started.await();
        Platform.setImplicitExit(false);
        System.out.println("| rig | page | size | median | 95th percentile | window's thread | painter's thread |");
        for (PageName page : new PageName[] {PageName.RIG, PageName.TIME}) {
            for (String demo : RigReader.demoNames()) {
                for (int[] size : SIZES) {
                    measure(demo, page, size, state);
                }
            }
        }
        Platform.exit();
    }

    private static void measure(String demo, PageName page, int[] size, Path state) throws InterruptedException {
        OpenWindow open = OpenWindow.on(OpenWindow.demo(demo), Optional.empty(), state, page);
        open.answer();
        open.resize(size[0], size[1]);
        Sweep sweep =
                new Sweep(open.window().frame().band(), open.window().frame().timelineShown());
        open.onWindowsThread(sweep::start);
        sweep.done.await();
        open.close();
        double[] took = sweep.took();
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %dx%d | %.1f | %.1f | %.1f | %.1f |%n",
                demo,
                page.id(),
                size[0],
                size[1],
                took[took.length / 2],
                took[took.length * 95 / 100],
                sweep.windowMs,
                sweep.painterMs);
    }

    /** A hand that drags the cursor to and fro over the whole axis. */
    private static final class Sweep extends AnimationTimer {
        private final CountDownLatch done = new CountDownLatch(1);
        private final long[] at = new long[WARM + COUNT + 1];
        private final TimeBand band;
        private final RunTimeline line;
        private int frame;
        private double windowMs;
        private double painterMs;

        Sweep(TimeBand band, RunTimeline line) {
            this.band = band;
            this.line = line;
        }

        @Override
        public void handle(long now) {
            at[frame] = System.nanoTime();
            if (frame == WARM) {
                windowMs = -cpuMs("JavaFX Application Thread");
                painterMs = -cpuMs("QuantumRenderer");
            }
            double phase = 4.0 * frame / at.length % 2;
            band.cursorSProperty().set(line.endS() * (phase < 1 ? phase : 2 - phase));
            frame++;
            if (frame == at.length) {
                stop();
                windowMs = (windowMs + cpuMs("JavaFX Application Thread")) / COUNT;
                painterMs = (painterMs + cpuMs("QuantumRenderer")) / COUNT;
                done.countDown();
            }
        }

        /** What a thread has computed so far, ms: unlike time on the clock the same on a busy machine. */
        private static double cpuMs(String name) {
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            return Arrays.stream(threads.dumpAllThreads(false, false))
                            .filter(thread -> thread.getThreadName().startsWith(name))
                            .mapToLong(thread -> threads.getThreadCpuTime(thread.getThreadId()))
                            .sum()
                    / NANOS_A_MS;
        }

        double[] took() {
            double[] took = new double[COUNT];
            for (int i = 0; i < COUNT; i++) {
                took[i] = (at[WARM + i + 1] - at[WARM + i]) / NANOS_A_MS;
            }
            Arrays.sort(took);
            return took;
        }
    }
}
