package boilwright.dashboard.companion;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.companion.LogEntry;
import boilwright.companion.LogKind;
import boilwright.companion.ReadingKind;
import boilwright.companion.RunLogReader;
import boilwright.companion.RunRecord;
import boilwright.dashboard.Keyboard;
import boilwright.dashboard.ToolkitLog;
import boilwright.dashboard.parts.OnOffSwitch;
import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanCases;
import boilwright.sequence.Variant;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** The companion's window with a person at its keys. */
class CompanionWindowTest {
    private static final PlanAnswer PLAN = PlanCases.plan(PlanCases.demo("mirror-club"), Variant.NORMAL);

    @TempDir
    Path folder;

    private final FxRobot robot = new Keyboard();
    private final ToolkitLog toolkit = new ToolkitLog();
    private AtTheRun run;

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @AfterEach
    void end() {
        run.close();
        toolkit.close();
        assertThat(run.faults()).isEmpty();
        assertThat(toolkit.warnings()).isEmpty();
    }

    private void open() {
        run = AtTheRun.open(runs(), PLAN);
    }

    private Path runs() {
        return folder.resolve("state").resolve("runs");
    }

    private void type(String text) {
        robot.push(KeyCode.R);
        AtTheRun.on(() -> run.find("companion-amount", TextField.class).setText(text));
        robot.push(KeyCode.ENTER);
        AtTheRun.settle();
    }

    private void lines(int number) {
        run.until(number + " lines", () -> run.text("companion-log").contains(", " + number + " lines"));
    }

    private RunRecord log() throws IOException {
        try (Stream<Path> files = Files.list(runs())) {
            return RunLogReader.read(files.findFirst().orElseThrow());
        }
    }

    @Test
    void aRunIsWorkedByKeysAloneAndEveryLineIsOnTheDisk() throws IOException {
        open();
        assertThat(run.text("companion-clock")).isEqualTo("0:00:00");
        assertThat(run.text("companion-what")).startsWith("Switch the backing pump on");
        assertThat(run.text("companion-tick")).startsWith("Start the clock");
        robot.push(KeyCode.SPACE);
        run.pass(75);
        assertThat(run.text("companion-clock")).isEqualTo("0:01:15");
        robot.push(KeyCode.ENTER);
        assertThat(run.text("companion-outcome")).contains("Step 1 is done, 1 min 15 s later than computed.");
        assertThat(run.text("companion-what")).contains("way out is open");
        assertThat(run.words("companion-table")).contains("0:01:15", "+0:01:15");
        robot.push(KeyCode.BACK_SPACE);
        assertThat(run.text("companion-outcome")).contains("Step 1 is taken back");
        type("38 mTorr");
        assertThat(run.text("companion-reading-message")).startsWith("o  Foreline 38.0 mTorr");
        assertThat(run.words("companion-table")).contains("Readings", "5.07 Pa");
        robot.push(KeyCode.T);
        assertThat(run.text("companion-outcome")).contains("Step " + run.number(Action.LOOK_TOP_JET) + " is done");
        robot.push(KeyCode.N);
        AtTheRun.on(() -> run.find("companion-note", TextField.class).setText("smells of oil"));
        robot.push(KeyCode.ENTER);
        assertThat(run.text("companion-outcome")).contains("in the log");
        lines(head() + 6);
        List<LogEntry> entries = log().entries();
        assertThat(entries)
                .extracting(LogEntry::kind)
                .containsExactly(
                        LogKind.CLOCK, LogKind.TICK, LogKind.UNTICK, LogKind.READING, LogKind.SIGHT, LogKind.NOTE);
        assertThat(entries.get(4).quantity()).isEqualTo("top-jet");
        assertThat(entries.get(5).text()).isEqualTo("smells of oil");
        // ended only when asked twice
        Button end = run.find("companion-end", Button.class);
        AtTheRun.on(end::fire);
        assertThat(run.text("companion-outcome")).contains("once more");
        AtTheRun.on(end::fire);
        assertThat(run.text("companion-what")).contains("ended");
        assertThat(run.find("companion-tick", Node.class).isDisabled()).isTrue();
        lines(head() + 7);
        assertThat(log().isEnded()).isTrue();
    }

    private static int head() {
        return 1 + 7 + PLAN.plan().orElseThrow().steps().size();
    }

    @Test
    void aReadingThatCannotBeMeantIsRefusedAndASlipAskedAbout() {
        open();
        robot.push(KeyCode.SPACE);
        run.bench(b -> b.tick(run.number(Action.HEAT), true));
        run.pass(60);
        type("much");
        assertThat(run.text("companion-reading-message")).startsWith("x  Foreline:");
        assertThat(run.find("companion-amount", TextField.class).getText()).isEqualTo("much");
        type("40 Torr");
        assertThat(run.text("companion-reading-message")).startsWith("^").contains("40 mTorr", "computed for now");
        assertThat(run.words("companion-table")).doesNotContain("Readings");
        robot.push(KeyCode.ENTER);
        assertThat(run.text("companion-reading-message")).startsWith("o");
        // a bare number is in the unit beside it
        AtTheRun.on(() -> kinds().setValue(ReadingKind.BOILER));
        type("30");
        assertThat(run.text("companion-reading-message")).contains("Boiler 30.0 degC; computed for now");
        // ticking out of order is warned of, and done when it is meant
        robot.push(KeyCode.ESCAPE);
        assertThat(run.stage().getScene().getFocusOwner()).isSameAs(run.find("companion-tick", Node.class));
    }

    @SuppressWarnings("unchecked")
    private ComboBox<ReadingKind> kinds() {
        return run.find("companion-kind", ComboBox.class);
    }

    @Test
    void whatIsOverdueIsSeenAndHeardUntilItIsNoted() {
        open();
        robot.push(KeyCode.SPACE);
        run.pass(119);
        assertThat(run.find("companion-alarm", Node.class).isVisible()).isFalse();
        run.pass(2);
        assertThat(run.words("companion-alarm")).contains("!", "Step 1 is overdue", "Do not heat.");
        run.until("the bell", () -> run.rung() == 1);
        run.isSilent("nobody listens");
        for (int i = 0; i < 8; i++) {
            run.pass(1);
        }
        run.until("the bell again", () -> run.rung() == 2);
        run.until("why it is silent", () -> run.text("companion-silent").equals("No sound: nobody listens."));
        robot.push(KeyCode.M);
        for (int i = 0; i < 20; i++) {
            run.pass(1);
        }
        assertThat(run.rung()).isEqualTo(2);
        String now = run.text("companion-what");
        OnOffSwitch sound = run.find("companion-sound", OnOffSwitch.class);
        AtTheRun.on(sound::requestFocus);
        robot.push(KeyCode.SPACE);
        assertThat(sound.isSelected()).isTrue();
        assertThat(run.text("companion-what")).as("no step is ticked by it").isEqualTo(now);
        robot.push(KeyCode.A);
        assertThat(run.find("companion-alarm", Node.class).isVisible()).isFalse();
        run.pass(1);
        assertThat(run.find("companion-alarm", Node.class).isVisible()).isFalse();
        assertThat(run.words("companion")).contains("OVERDUE since 0:02:00");
    }

    @Test
    void aRunThatWasNotEndedIsOfferedAndTakenUp() throws IOException {
        open();
        robot.push(KeyCode.SPACE);
        run.pass(30);
        robot.push(KeyCode.SPACE);
        lines(head() + 2);
        run.close();
        run = AtTheRun.open(runs(), PLAN, 100);
        run.until("the offer", () -> run.find("companion-offer", Node.class).isVisible());
        assertThat(run.words("companion-offer")).contains("2026-03-01 09:30", "run-mirror-club");
        // a press of the step's key starts nothing while the question stands
        assertThat(run.find("companion-tick", Node.class).isDisabled()).isTrue();
        // the window that was closed lets go of its file in the background; until then the answer is no
        run.until("the run", () -> {
            if (run.find("companion-offer", Node.class).isVisible()) {
                run.find("companion-go-on", Button.class).fire();
            }
            return run.text("companion-what").contains("way out is open");
        });
        assertThat(run.text("companion-clock")).isEqualTo("0:01:40");
        assertThat(run.find("companion-offer", Node.class).isVisible()).isFalse();
        lines(head() + 3);
        robot.push(KeyCode.SPACE);
        lines(head() + 4);
        assertThat(log().entries())
                .extracting(LogEntry::kind)
                .containsExactly(LogKind.CLOCK, LogKind.TICK, LogKind.RESUME, LogKind.TICK);
    }

    @Test
    void aLogThatCannotBeWrittenIsToldAtOnceAndGoesElsewhere() throws IOException {
        // a file where the folder of the logs should be
        Files.createDirectories(runs().getParent());
        Files.writeString(runs(), "in the way");
        open();
        robot.push(KeyCode.SPACE);
        run.until("the trouble", () -> run.find("companion-trouble", Node.class).isVisible());
        assertThat(run.words("companion-trouble")).contains("can't be written", "Kept in memory");
        robot.push(KeyCode.SPACE);
        // closing is asked about while lines are nowhere but here
        AtTheRun.on(() -> run.stage()
                .fireEvent(new javafx.stage.WindowEvent(run.stage(), javafx.stage.WindowEvent.WINDOW_CLOSE_REQUEST)));
        assertThat(run.stage().isShowing()).isTrue();
        assertThat(run.text("companion-outcome")).contains("close once more");
        Path other = folder.resolve("other.csv");
        run.saysElsewhere(other);
        AtTheRun.on(() -> run.find("companion-elsewhere", Button.class).fire());
        run.until("the other file", () -> run.text("companion-log").contains("other.csv"));
        assertThat(run.find("companion-trouble", Node.class).isVisible()).isFalse();
        assertThat(RunLogReader.read(other).entries())
                .extracting(LogEntry::kind)
                .containsExactly(LogKind.CLOCK, LogKind.TICK, LogKind.NOTE);
    }

    @Test
    void aWindowThatWasOnlyLookedAtLeavesNoLogAndTheSecondPressIsMeant() throws IOException {
        open();
        run.pass(5);
        run.until("the folder", () -> Files.isDirectory(runs()));
        try (Stream<Path> files = Files.list(runs())) {
            assertThat(files).isEmpty();
        }
        run.bench(b -> b.start(Clock.FROM_COLD));
        for (int i = 1; i < run.number(Action.LOOK_FORELINE); i++) {
            int step = i;
            run.bench(b -> b.tick(step, true));
        }
        run.bench(b -> b.read(ReadingKind.FORELINE, "200 Pa", true));
        run.bench(b -> b.tick(run.number(Action.LOOK_FORELINE), true));
        robot.push(KeyCode.SPACE);
        assertThat(run.text("companion-outcome")).startsWith("^").contains("No heat above the foreline limit.");
        robot.push(KeyCode.SPACE);
        assertThat(run.text("companion-outcome")).startsWith("o  Step " + run.number(Action.HEAT));
    }

    @Test
    void nothingIsCutOffInASmallWindow() {
        open();
        AtTheRun.on(() -> {
            run.stage().setWidth(960);
            run.stage().setHeight(600);
        });
        robot.push(KeyCode.SPACE);
        run.pass(121);
        for (String id : List.of("companion-tick", "companion-top-jet", "companion-acknowledge", "companion-end")) {
            Node node = run.find(id, Node.class);
            assertThat(node.localToScene(node.getBoundsInLocal()).getMaxX())
                    .as(id)
                    .isLessThanOrEqualTo(960);
            assertThat(node.localToScene(node.getBoundsInLocal()).getMaxY())
                    .as(id)
                    .isLessThanOrEqualTo(600);
        }
        assertThat(run.find("companion-clock", Label.class).getWidth())
                .isGreaterThanOrEqualTo(run.find("companion-clock", Label.class).prefWidth(-1) - 1);
    }
}
