package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.band.TimeBand;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.RunTimeline;
import java.util.Arrays;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The time band leads drawing and charts through the run. */
class WindowBandTest extends AtTheWindow {
    private RunTimeline line;

    @BeforeEach
    void begin() {
        share("mirror-club", PageName.TIME);
        open.answer();
        line = open.window().frame().timelineShown();
        open.onWindowsThread(() -> {
            band().staleProperty().set(false);
            band().cursorSProperty().set((line.restStartS() + line.cooldownStartS()) / 2);
        });
    }

    @Test
    void draggingMovesDrawingAndCharts() {
        Node track = open.find("band-track", Node.class);
        Bounds on = track.localToScreen(track.getBoundsInLocal());
        double y = on.getMinY() + on.getHeight() / 2;
        robot.moveTo(on.getMinX() + 0.03 * on.getWidth(), y);
        robot.press(MouseButton.PRIMARY);
        robot.moveTo(on.getMinX() + 0.02 * on.getWidth(), y);
        open.onWindowsThread(() -> {});
        double early = cursor();
        int[] cold = drawn();
        robot.moveTo(on.getMinX() + 0.55 * on.getWidth(), y);
        robot.release(MouseButton.PRIMARY);
        open.onWindowsThread(() -> {});
        assertThat(cursor()).isGreaterThan(early);
        assertThat(line.at(early).jets()).noneMatch(JetState::lit);
        assertThat(line.at(cursor()).jets()).allMatch(JetState::lit);
        assertThat(Arrays.equals(cold, drawn())).as("the drawing follows").isFalse();
        assertThat(chart().cursorXProperty().get()).isEqualTo(cursor());
    }

    @Test
    void theChartsCursorMovesTheBand() {
        open.onWindowsThread(() -> chart().cursorXProperty().set(line.cooldownStartS() + 600));
        assertThat(cursor()).isEqualTo(line.cooldownStartS() + 600);
    }

    @Test
    void keysWalkThroughTheRun() {
        open.onWindowsThread(() -> open.find("band-speed", Node.class).requestFocus());
        push(KeyCode.TAB);
        assertThat(open.find("band-track", Node.class).isFocusVisible()).isTrue();
        push(KeyCode.HOME);
        assertThat(cursor()).isZero();
        push(KeyCode.RIGHT);
        double one = cursor();
        assertThat(one).isPositive();
        push(KeyCode.PAGE_DOWN);
        assertThat(cursor()).isGreaterThan(one);
        push(KeyCode.PAGE_UP);
        push(KeyCode.LEFT);
        push(KeyCode.END);
        assertThat(cursor()).isEqualTo(line.endS());
        push(KeyCode.SPACE);
        assertThat(open.window().frame().band().playingProperty().get()).isTrue();
        open.until("the cursor to run", () -> cursor() > 0 && cursor() < line.endS());
        push(KeyCode.SPACE);
        assertThat(open.window().frame().band().playingProperty().get()).isFalse();
        double stopped = cursor();
        open.onWindowsThread(() -> {});
        assertThat(cursor()).isEqualTo(stopped);
    }

    @Test
    void theButtonPlaysAndPausesAndAHandStopsIt() {
        Button play = open.find("band-play", Button.class);
        open.onWindowsThread(() -> band().cursorSProperty().set(0));
        open.onWindowsThread(play::fire);
        assertThat(play.getText()).isEqualTo("Pause");
        open.until("the cursor to run", () -> cursor() > 0);
        open.onWindowsThread(play::fire);
        double stopped = cursor();
        assertThat(play.getText()).isEqualTo("Play");
        robot.push(KeyCode.CONTROL, KeyCode.SPACE);
        open.until("the cursor to run on", () -> cursor() > stopped);
        robot.push(KeyCode.CONTROL, KeyCode.SPACE);
        assertThat(band().playingProperty().get()).isFalse();
        open.onWindowsThread(() -> {
            band().cursorSProperty().set(line.endS() - 1);
            band().playOrPause();
        });
        open.until("the end", () -> !band().playingProperty().get());
        assertThat(cursor()).isEqualTo(line.endS());
    }

    @Test
    void aMarkIsToldUnderTheMouseAndByTheKeyboard() {
        MarksSeen marks = new MarksSeen(open.window().frame().band());
        Label mark = marks.chip("heat off");
        Bounds on = mark.localToScreen(mark.getBoundsInLocal());
        robot.moveTo(on.getMinX() + on.getWidth() / 2, on.getMinY() + on.getHeight() / 2);
        open.onWindowsThread(() -> {});
        assertThat(words()).anyMatch(text -> text.contains("after heat-off: heat off."));
        assertThat(cursor()).as("pointing moves nothing").isNotEqualTo(line.cooldownStartS());
        robot.clickOn(MouseButton.PRIMARY);
        open.onWindowsThread(() -> {});
        assertThat(cursor()).isEqualTo(line.cooldownStartS());
        robot.moveTo(on.getMinX(), on.getMinY() - 300);
        push(KeyCode.RIGHT);
        assertThat(cursor()).as("among marks, keys move the focus").isEqualTo(line.cooldownStartS());
        assertThat(open.window().scene().getFocusOwner())
                .isInstanceOf(Label.class)
                .isNotSameAs(mark);
        assertThat(words()).contains(open.window().scene().getFocusOwner().getAccessibleText());
        push(KeyCode.ENTER);
        assertThat(cursor()).isGreaterThanOrEqualTo(line.cooldownStartS());
    }

    @Test
    void noLabelLiesOverAnotherAtAnyWidth() {
        for (int width : new int[] {1000, 1280, 1920, 3840}) {
            open.resize(width, 900);
            MarksSeen marks = new MarksSeen(open.window().frame().band());
            assertThat(marks.overlapping()).as("at " + width).isEmpty();
            assertThat(marks.outside()).as("at " + width).isEmpty();
        }
    }

    @Test
    void aRunOfAnEarlierRigIsMarkedInWords() {
        open.onWindowsThread(() -> band().staleProperty().set(true));
        assertThat(words()).anyMatch(text -> text.contains("before your last edit"));
        open.onWindowsThread(() -> band().staleProperty().set(false));
        assertThat(words()).noneMatch(text -> text.contains("before your last edit"));
    }

    @Test
    void theBandTellsAScreenReaderWhereItStands() {
        Node track = open.find("band-track", Node.class);
        open.onWindowsThread(() -> band().cursorSProperty().set(75));
        open.onWindowsThread(() -> {
            assertThat(track.getAccessibleRole()).isEqualTo(AccessibleRole.SLIDER);
            assertThat(track.queryAccessibleAttribute(AccessibleAttribute.VALUE))
                    .isEqualTo(75.0);
            assertThat(track.queryAccessibleAttribute(AccessibleAttribute.MAX_VALUE))
                    .isEqualTo(line.endS());
            assertThat((String) track.queryAccessibleAttribute(AccessibleAttribute.TEXT))
                    .contains("0:01:15", "warm-up");
            track.executeAccessibleAction(AccessibleAction.INCREMENT);
        });
        assertThat(cursor()).isGreaterThan(75);
    }

    @Test
    void everyStretchCanBeReadInBothThemesAndWhenStale() {
        for (int theme = 0; theme < 2; theme++) {
            for (boolean stale : new boolean[] {false, true}) {
                open.onWindowsThread(() -> {
                    band().staleProperty().set(stale);
                    band().applyCss();
                    List<Node> stretches = List.copyOf(band().lookupAll(".stretch"));
                    assertThat(stretches).hasSizeGreaterThan(5);
                    for (Node stretch : stretches) {
                        Color ground = MarksSeen.ground((Region) stretch);
                        for (Node name : stretch.lookupAll(".label")) {
                            assertThat(ThemeTest.contrast((Color) ((Label) name).getTextFill(), ground))
                                    .as(((Label) name).getText())
                                    .isGreaterThan(ThemeTest.LEAST_CONTRAST);
                        }
                    }
                });
            }
            open.act(Action.THEME);
        }
    }

    private TimeBand band() {
        return open.window().frame().band();
    }

    private List<String> words() {
        return OpenWindow.words(band());
    }

    private SeriesChart chart() {
        return (SeriesChart) open.window().frame().pageShown().lookupAll("*").stream()
                .filter(node -> node instanceof SeriesChart)
                .findFirst()
                .orElseThrow();
    }

    private double cursor() {
        return open.window().frame().band().cursorSProperty().get();
    }

    private void push(KeyCode key) {
        robot.push(key);
        open.onWindowsThread(() -> {});
    }
}
