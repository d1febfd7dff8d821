package boilwright.dashboard.chart;

import boilwright.units.Dimension;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;

/** Draws charts of many kinds into a folder, for people to look at. Not a test; run it with the folder as its argument. */
public final class ChartPictures {
    private ChartPictures() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        CountDownLatch started = new CountDownLatch(1);
        Platform.startup(started::countDown);
        started.await();
        CompletableFuture<Void> done = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                write(folder, "temperatures", ChartScene.temperatures(5, 5000), 1500);
                write(folder, "parts", ChartScene.inParts(), 900);
                write(folder, "pressures", pressures(), 420);
                write(folder, "pump", pumpCurve(), 3);
                done.complete(null);
            } catch (Exception e) {
                done.completeExceptionally(e);
            }
        });
        done.get();
        Platform.exit();
    }

    private static void write(Path folder, String name, ChartData data, double cursor) throws Exception {
        for (ChartFormat format : ChartFormat.values()) {
            ChartExport export = new ChartExport(data, Choice.suiting(data), View.WHOLE, cursor, "System");
            Files.write(
                    folder.resolve(name + "." + format.ending()),
                    export.content(format).get());
        }
    }

    /** Straight lines of log p against 1/T, ten of them. */
    private static ChartData pressures() {
        List<Series> all = new ArrayList<>();
        for (int k = 0; k < 10; k++) {
            double[] x = new double[80];
            double[] y = new double[80];
            for (int i = 0; i < 80; i++) {
                x[i] = 290 + 3.5 * i;
                y[i] = i > 78 - 4 * k ? Double.NaN : Math.pow(10, 12.5 - (4200 + 170 * k) / x[i]);
            }
            all.add(new Series("fluid " + (k + 1), x, y));
        }
        return ChartData.of(
                        "Vapour pressure",
                        Axis.of("temperature", Dimension.TEMPERATURE),
                        Axis.of("vapour pressure", Dimension.PRESSURE).log(),
                        all)
                .withLimits(List.of(new Limit("boiler", 100, Limit.Side.AT_LEAST)));
    }

    private static ChartData pumpCurve() {
        int n = 60;
        double[] x = new double[n];
        double[] speed = new double[n];
        double[] low = new double[n];
        double[] high = new double[n];
        double[] load = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = Math.pow(10, -4 + 0.1 * i);
            speed[i] = 0.3 / (1 + Math.pow(x[i] / 0.5, 1.5));
            low[i] = 0.8 * speed[i];
            high[i] = 1.25 * speed[i];
            load[i] = 0.01 / x[i];
        }
        return ChartData.of(
                        "Pumping speed",
                        Axis.of("inlet pressure", Dimension.PRESSURE).log(),
                        Axis.of("speed", Dimension.VOLUME_FLOW).log().above(1e-3),
                        List.of(new Series("pump", x, speed), new Series("load", x, load)))
                .withBands(List.of(new Band("pump, likely", x, low, high)))
                .withMarks(List.of(new Mark("backing starts", 10)))
                .withSpots(List.of(new Spot("works here", 0.034, 0.294)));
    }
}
