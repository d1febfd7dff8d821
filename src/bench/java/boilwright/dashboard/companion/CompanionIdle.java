package boilwright.dashboard.companion;

import atlantafx.base.theme.PrimerLight;
import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanCases;
import boilwright.sequence.Variant;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.application.Application;
import javafx.application.Platform;

/** Measures what an open companion with its clock running takes of a core. Not a test; it needs a screen and five minutes. */
public final class CompanionIdle {
    private static final int SETTLE_MS = 30_000;
    private static final int MEASURE_MS = 60_000;
    private static final int MINUTES = 4;

    private CompanionIdle() {}

    public static void main(String[] arguments) throws Exception {
        PlanAnswer plan = PlanCases.plan(PlanCases.demo("mirror-club"), Variant.NORMAL);
        Path folder = Files.createTempDirectory("runs");
        CountDownLatch shown = new CountDownLatch(1);
        Platform.startup(() -> {
            Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
            CompanionStage stage = new CompanionStage(
                    plan, folder, InstantSource.system(), ZoneOffset.UTC, Optional::empty, name -> Optional.empty());
            stage.show();
            stage.run().start(Clock.FROM_COLD);
            for (int i = 1; i < 4; i++) {
                stage.run().tick(i, true);
            }
            shown.countDown();
        });
        shown.await();
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        Thread.sleep(SETTLE_MS);
        for (int minute = 1; minute <= MINUTES; minute++) {
            long before = system.getProcessCpuTime();
            long from = System.nanoTime();
            Thread.sleep(MEASURE_MS);
            double share = (double) (system.getProcessCpuTime() - before) / (System.nanoTime() - from);
            System.out.printf(Locale.ROOT, "minute %d: %.2f %% of a core%n", minute, 100 * share);
        }
        Platform.exit();
    }
}
