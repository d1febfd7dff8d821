package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Model;
import boilwright.dashboard.work.RigAnswer;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.value.ChangeListener;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;

/**
 * Measures how long an edit takes until its verdict stands in the window, each with an edit just before it that it overtakes.
 * Writes to {@code target/edit-latency.txt}; judges only that every edit was answered, for shared machines make times a lottery.
 */
@Tag("bench")
class EditLatencyTest {
    private static final int WARM = 30;
    private static final int COUNT = 100;

    @TempDir
    Path folder;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void measures() throws IOException {
        StringBuilder report = new StringBuilder();
        for (String demo : RigReader.demoNames()) {
            OpenWindow open = OpenWindow.on(
                    OpenWindow.demo(demo), Optional.empty(), folder.resolve(demo), PageName.RIG, Model.COMPUTING);
            open.answer();
            List<Double> times = new ArrayList<>();
            for (int i = 0; i < WARM + COUNT; i++) {
                double took = measure(open, i % 2 == 0 ? 1.01 : 0.99);
                if (i >= WARM) {
                    times.add(took);
                }
            }
            open.close();
            assertThat(open.faults()).isEmpty();
            Collections.sort(times);
            report.append(String.format(
                    Locale.ROOT,
                    "%s: median %.0f ms, 95th percentile %.0f ms, longest %.0f ms%n",
                    demo,
                    times.get(COUNT / 2),
                    times.get(COUNT * 95 / 100),
                    times.get(COUNT - 1)));
        }
        Files.writeString(Path.of("target", "edit-latency.txt"), report);
    }

    private static double measure(OpenWindow open, double factor) {
        double watts = open.window().session().rig().heatSource().ratedPowerW();
        long[] at = new long[2];
        ChangeListener<RigAnswer> heard = (property, before, now) -> {
            // The frame heard of the answer before: what it shows is already that of this answer.
            if (now.check().rig().equals(open.window().session().rig()) && at[1] == 0) {
                at[1] = System.nanoTime();
            }
        };
        open.onWindowsThread(() -> edit(open, watts * 1.001));
        open.onWindowsThread(() -> {
            open.window().answering().answerProperty().addListener(heard);
            at[0] = System.nanoTime();
            edit(open, watts * factor);
        });
        open.until("the verdict", () -> at[1] > 0);
        open.onWindowsThread(() -> open.window().answering().answerProperty().removeListener(heard));
        return (at[1] - at[0]) * 1e-6;
    }

    private static void edit(OpenWindow open, double watts) {
        open.window()
                .session()
                .edit(
                        "power",
                        rig -> RigFields.of(rig)
                                .with("heatSource.ratedPower", watts)
                                .rig(OpenWindow.FLUIDS.workingFluids()));
    }
}
