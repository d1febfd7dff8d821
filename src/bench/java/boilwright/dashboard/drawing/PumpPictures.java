package boilwright.dashboard.drawing;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.RunAnswer;
import boilwright.answers.Stored;
import boilwright.dashboard.band.TimeBand;
import boilwright.dashboard.model.RunPhase;
import boilwright.dashboard.model.RunTimeline;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import javax.imageio.ImageIO;

/**
 * Draws the demo rigs at several moments, sizes and in both themes into a folder, for people to look at. Not a test; run it
 * with the folder as its argument, then any words that the names of the pictures must hold.
 */
public final class PumpPictures {
    private static final int[][] SIZES = {{600, 600}, {700, 560}, {1920, 1400}, {280, 520}, {400, 560}};

    private PumpPictures() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        List<String> wanted = List.of(arguments).subList(1, arguments.length);
        CountDownLatch started = new CountDownLatch(1);
        Platform.startup(started::countDown);
        started.await();
        Platform.setImplicitExit(false);
        FluidLibrary fluids = FluidLibrary.builtIn();
        for (String name : RigReader.demoNames()) {
            Rig rig = RigReader.readDemo(name, fluids.workingFluids(), Set.of());
            WorkingFluid fluid = fluids.find(rig.fluidId());
            CheckAnswer check = Stored.check(rig);
            RunAnswer cool = Stored.answer(new CooldownQuestion(Stored.asked(rig)));
            RunTimeline line = RunTimeline.of(check.warmup(), check.steady(), cool.run());
            CountDownLatch done = new CountDownLatch(1);
            Platform.runLater(() -> {
                try {
                    all(folder, wanted, name, rig, fluid, check, line);
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                } finally {
                    done.countDown();
                }
            });
            done.await();
        }
        Platform.exit();
    }

    private static void all(
            Path folder,
            List<String> wanted,
            String name,
            Rig rig,
            WorkingFluid fluid,
            CheckAnswer check,
            RunTimeline line)
            throws IOException {
        double climbing = line.phases().stream()
                .filter(p -> p.kind() == RunPhase.Kind.FRONT_CLIMBS)
                .mapToDouble(p -> p.startS() + 0.75 * (p.endS() - p.startS()))
                .findFirst()
                .orElse(0);
        String[] moments = {"cold", "climbing", "pumping", "cooling"};
        double[] times = {0, climbing, line.restStartS() + 1, line.cooldownStartS() + 400};
        for (boolean dark : new boolean[] {false, true}) {
            for (int[] size : SIZES) {
                for (int i = 0; i < moments.length; i++) {
                    String file = name + "-" + moments[i] + "-" + size[0] + "x" + size[1] + (dark ? "-dark" : "-light");
                    if (wanted.stream().allMatch(file::contains)) {
                        PumpDrawing drawing = new PumpDrawing();
                        drawing.setRig(rig, fluid);
                        drawing.setMargins(check.margins());
                        drawing.setMoment(line.at(times[i]));
                        TimeBand band = new TimeBand();
                        band.setTimeline(line);
                        band.cursorSProperty().set(times[i]);
                        write(drawing, band, size, dark, folder.resolve(file + ".png"));
                    }
                }
            }
        }
    }

    private static void write(PumpDrawing drawing, TimeBand band, int[] size, boolean dark, Path file)
            throws IOException {
        Application.setUserAgentStylesheet(
                dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
        BorderPane root = new BorderPane(drawing);
        root.setBottom(band);
        root.setStyle("-fx-background-color: -color-bg-default;");
        Scene scene = new Scene(root, size[0], size[1] + 90.0);
        for (String sheet : List.of("drawing", "band")) {
            scene.getStylesheets()
                    .add(PumpPictures.class
                            .getResource("/boilwright/css/" + sheet + ".css")
                            .toString());
        }
        Stage stage = new Stage();
        stage.setScene(scene);
        stage.show();
        root.applyCss();
        root.layout();
        BufferedImage image = SwingFXUtils.fromFXImage(scene.snapshot(null), null);
        ImageIO.write(image, "png", file.toFile());
        stage.hide();
    }
}
