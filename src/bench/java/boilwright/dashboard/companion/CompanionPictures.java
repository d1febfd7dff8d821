package boilwright.dashboard.companion;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import boilwright.companion.ReadingKind;
import boilwright.companion.Sight;
import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import boilwright.sequence.PlanCases;
import boilwright.sequence.Variant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javax.imageio.ImageIO;

/** Draws the companion at several moments of a run into a folder, for people to look at. Not a test; its argument is the folder. */
public final class CompanionPictures {
    private CompanionPictures() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        CountDownLatch started = new CountDownLatch(1);
        Platform.startup(started::countDown);
        started.await();
        Platform.setImplicitExit(false);
        for (boolean dark : new boolean[] {false, true}) {
            for (int[] size : new int[][] {{1280, 720}, {1920, 1080}}) {
                String name = (dark ? "dark-" : "light-") + size[1];
                run(folder, name, size, dark);
            }
        }
        Platform.exit();
    }

    private static void run(Path folder, String name, int[] size, boolean dark) throws Exception {
        AtTheRun run = AtTheRun.open(
                Files.createTempDirectory("runs"), PlanCases.plan(PlanCases.demo("mirror-club"), Variant.NORMAL));
        AtTheRun.on(() -> {
            Application.setUserAgentStylesheet(
                    dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
            run.stage().setWidth(size[0]);
            run.stage().setHeight(size[1]);
        });
        draw(run, folder.resolve(name + "-0-begin.png"));
        run.bench(b -> b.start(Clock.FROM_COLD));
        run.pass(75);
        run.bench(b -> b.tick(1, false));
        run.pass(60);
        draw(run, folder.resolve(name + "-1-overdue.png"));
        run.bench(b -> b.acknowledge());
        for (int i = 2; i <= run.number(Action.HEAT); i++) {
            int step = i;
            run.pass(Math.max(10, run.planS(step) - run.clockS()));
            run.bench(b -> b.tick(step, true));
        }
        run.bench(b -> b.read(ReadingKind.FORELINE, "38 mTorr", true));
        run.pass(300);
        run.bench(b -> b.read(ReadingKind.POWER, "1.85 kW", true));
        run.bench(b -> b.read(ReadingKind.BOILER, "182 degC", true));
        run.pass(280);
        run.bench(b -> b.see(Sight.FIRST_JET));
        run.pass(30);
        run.bench(b -> b.read(ReadingKind.WATER_OUT, "57 degC", true));
        draw(run, folder.resolve(name + "-2-heating.png"));
        run.bench(b -> b.acknowledge());
        run.bench(b -> b.start(Clock.FROM_HOT));
        run.bench(b -> b.tickNext(true));
        run.bench(b -> b.tickNext(true));
        run.pass(1800);
        run.bench(b -> b.read(ReadingKind.BOILER, "190 degC", true));
        draw(run, folder.resolve(name + "-3-stop.png"));
        run.close();
    }

    private static void draw(AtTheRun run, Path file) {
        AtTheRun.settle();
        AtTheRun.on(() -> {
            try {
                ImageIO.write(
                        SwingFXUtils.fromFXImage(run.stage().getScene().snapshot(null), null), "png", file.toFile());
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
    }
}
