package boilwright.dashboard.chart;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.Keyboard;
import boilwright.dashboard.ToolkitLog;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** What tests with a chart on the screen have in common: they end without a fault and without a warning of the toolkit. */
abstract class AtAChart {
    static final ChartData DATA = ChartScene.temperatures(3, 1201);

    @TempDir
    Path folder;

    final FxRobot robot = new Keyboard();
    final ToolkitLog log = new ToolkitLog();
    final List<Throwable> faults = new CopyOnWriteArrayList<>();
    ChartStage open;
    SeriesChart chart;
    ChartPane pane;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @BeforeEach
    void begin() {
        open = ChartStage.of(900, 420, false);
        chart = open.chart();
        ChartStage.on(() -> {
            Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> faults.add(fault));
            chart.setData(DATA);
            return null;
        });
        pane = (ChartPane) chart.lookup(".chart-pane");
    }

    @AfterEach
    void end() {
        open.close();
        log.close();
        assertThat(faults).isEmpty();
        assertThat(log.warnings()).isEmpty();
    }
}
