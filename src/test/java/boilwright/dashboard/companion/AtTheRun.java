package boilwright.dashboard.companion;

import atlantafx.base.theme.PrimerLight;
import boilwright.companion.Companion;
import boilwright.dashboard.Settled;
import boilwright.sequence.Action;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanStep;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.application.Application;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import org.testfx.util.WaitForAsyncUtils;

/** A companion's window with a clock that only the test moves, a bell that counts, and somebody who says where else. */
final class AtTheRun {
    private static final List<String> SHEETS = List.of("bridge", "frame");

    private final List<Throwable> faults = new CopyOnWriteArrayList<>();
    private final PlanAnswer plan;
    private volatile Instant now = Instant.parse("2026-03-01T09:30:00Z");
    private volatile int rung;
    private volatile Optional<String> silent = Optional.empty();
    private volatile Optional<Path> elsewhere = Optional.empty();
    private CompanionStage stage;

    private AtTheRun(PlanAnswer plan) {
        this.plan = plan;
    }

    static AtTheRun open(Path folder, PlanAnswer plan) {
        return open(folder, plan, 0);
    }

    /** Opens it so long after the usual beginning, s. */
    static AtTheRun open(Path folder, PlanAnswer plan, double laterS) {
        AtTheRun run = new AtTheRun(plan);
        run.now = run.now.plusMillis(Math.round(1000 * laterS));
        on(() -> {
            Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> run.faults.add(fault));
            Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
            run.stage = new CompanionStage(
                    plan, folder, () -> run.now, ZoneOffset.UTC, run::ring, suggested -> run.elsewhere);
            for (String sheet : SHEETS) {
                run.stage
                        .getScene()
                        .getStylesheets()
                        .add(Objects.requireNonNull(AtTheRun.class.getResource("/boilwright/css/" + sheet + ".css"))
                                .toString());
            }
            run.stage.setX(0);
            run.stage.setY(0);
            run.stage.show();
        });
        return run;
    }

    private Optional<String> ring() {
        rung++;
        return silent;
    }

    int rung() {
        return rung;
    }

    void isSilent(String why) {
        silent = Optional.of(why);
    }

    void saysElsewhere(Path file) {
        elsewhere = Optional.of(file);
    }

    CompanionStage stage() {
        return stage;
    }

    /** Does something to the run behind the window. */
    void bench(Consumer<Companion> what) {
        on(() -> {
            what.accept(stage.run());
            stage.look();
        });
    }

    /** Lets time pass and the window look at its clock. */
    void pass(double seconds) {
        now = now.plus(Duration.ofMillis(Math.round(1000 * seconds)));
        on(stage::look);
    }

    double clockS() {
        double[] seconds = new double[1];
        on(() -> seconds[0] = stage.run().look().clockS());
        return seconds[0];
    }

    int number(Action action) {
        List<PlanStep> steps = plan.plan().orElseThrow().steps();
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).action() == action) {
                return i + 1;
            }
        }
        throw new AssertionError(action);
    }

    double planS(int number) {
        return plan.plan().orElseThrow().steps().get(number - 1).moment().atS();
    }

    <N extends Node> N find(String id, Class<N> type) {
        return type.cast(Objects.requireNonNull(stage.getScene().lookup("#" + id), id));
    }

    String text(String id) {
        Labeled label = find(id, Labeled.class);
        return label.isVisible() ? label.getText() : "";
    }

    /** All the words of a part that can be seen. */
    String words(String id) {
        Node part = find(id, Node.class);
        return String.join(
                "\n",
                part.lookupAll("*").stream()
                        .filter(node -> node instanceof Labeled && part.isVisible() && node.isVisible())
                        .map(node -> ((Labeled) node).getText())
                        .toList());
    }

    void until(String what, BooleanSupplier reached) {
        try {
            WaitForAsyncUtils.waitFor(
                    20, TimeUnit.SECONDS, () -> WaitForAsyncUtils.waitForAsyncFx(10_000, reached::getAsBoolean));
        } catch (TimeoutException e) {
            throw new AssertionError("waited in vain for " + what, e);
        }
        settle();
    }

    static void on(Runnable what) {
        WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
            what.run();
            return null;
        });
        settle();
    }

    static void settle() {
        Settled.windows();
    }

    List<Throwable> faults() {
        return faults;
    }

    void close() {
        on(stage::hide);
    }
}
