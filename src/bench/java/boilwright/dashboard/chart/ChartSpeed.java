package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.function.IntConsumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Font;

/**
 * Measures how long a chart of 1280x720 takes to lay out, paint and draw with the software pipeline. Not a test: shared machines
 * would make it a lottery. Run its main; the figures stand in docs/performance.md.
 */
public final class ChartSpeed {
    private static final int WARM = 40;
    private static final int ROUNDS = 60;

    private ChartSpeed() {}

    public static void main(String[] arguments) throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        Platform.startup(started::countDown);
        started.await();
        CompletableFuture<Void> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            for (int curves : new int[] {1, 5}) {
                for (int points : new int[] {500, 5_000, 50_000}) {
                    measure(curves, points);
                }
            }
            done.complete(null);
        });
        done.get();
        Platform.exit();
    }

    private static void measure(int curves, int points) {
        ChartData data = ChartScene.temperatures(curves, points);
        Choice choice = Choice.suiting(data);
        Lettering lettering = new Lettering(Font.font("System", 13));
        Canvas canvas = new Canvas(1280, 720);
        new Scene(new StackPane(canvas), 1280, 720);
        WritableImage image = new WritableImage(1280, 720);
        CanvasSurface surface = new CanvasSurface(canvas.getGraphicsContext2D(), lettering);
        double[] painted = times(i -> {
            canvas.getGraphicsContext2D().clearRect(0, 0, 1280, 720);
            View view = View.WHOLE.withX(0, 3600 - i);
            ChartPlan plan = ChartPlan.of(data, choice, view, 1280, 720, 0, lettering);
            new ChartPainter(plan, ChartColors.PRINTED, surface).paint();
            if (i % 2 == 0) {
                canvas.snapshot(null, image);
            }
        });
        ChartPlan plan = ChartPlan.of(data, choice, View.WHOLE, 1280, 720, 0, lettering);
        double[] cursor = times(i -> {
            canvas.getGraphicsContext2D().clearRect(0, 0, 1280, 720);
            new CursorPainter(plan, ChartColors.PRINTED, surface).paint(60.0 * (i % 60));
            if (i % 2 == 0) {
                canvas.snapshot(null, image);
            }
        });
        say(
                "%d curves of %d points: laid out and painted %s, with drawing %s; cursor %s, with drawing %s%n",
                curves, points, odd(painted), even(painted), odd(cursor), even(cursor));
    }

    private static double[] times(IntConsumer what) {
        double[] times = new double[2 * ROUNDS];
        for (int i = 0; i < 2 * (WARM + ROUNDS); i++) {
            long from = System.nanoTime();
            what.accept(i);
            if (i >= 2 * WARM) {
                times[i - 2 * WARM] = (System.nanoTime() - from) / 1e6;
            }
        }
        return times;
    }

    private static String odd(double[] times) {
        return middle(times, 1);
    }

    private static String even(double[] times) {
        return middle(times, 0);
    }

    private static String middle(double[] times, int rest) {
        double[] some = new double[times.length / 2];
        Arrays.setAll(some, i -> times[2 * i + rest]);
        Arrays.sort(some);
        return String.format(
                Locale.ROOT,
                "%.1f ms (10 %% %.1f, 95 %% %.1f)",
                some[some.length / 2],
                some[some.length / 10],
                some[some.length * 95 / 100]);
    }

    private static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
