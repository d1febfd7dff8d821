package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Model;
import boilwright.answers.Stored;
import boilwright.dashboard.session.RigFiles;
import boilwright.dashboard.session.StateFolder;
import boilwright.dashboard.work.RigAnswer;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TitledPane;
import javafx.stage.Stage;
import org.testfx.util.WaitForAsyncUtils;

/** A whole window in a test: its stage, what it was told about files, and what went wrong behind it. */
final class OpenWindow implements FileAsker {
    static final PseudoClass DARK = PseudoClass.getPseudoClass("dark");
    static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    private final List<Throwable> faults = new CopyOnWriteArrayList<>();
    /** Which parts of a form stood open. */
    private final Map<TitledPane, Boolean> atFirst = new LinkedHashMap<>();

    private Stage stage;
    private Window window;
    private Path toOpen;
    private Path toSave;

    /** A demo rig. */
    static Rig demo(String name) {
        return RigReader.readDemo(name, FLUIDS.workingFluids(), Set.of());
    }

    /** Opens a window of 1280x720 on a rig; the test's own folder is what it remembers things in. */
    static OpenWindow on(Rig rig, Optional<Path> file, Path state) {
        return on(rig, file, state, PageName.RIG);
    }

    static OpenWindow on(Rig rig, Optional<Path> file, Path state, PageName page) {
        return on(rig, file, state, page, Stored.MODEL);
    }

    static OpenWindow on(Rig rig, Optional<Path> file, Path state, PageName page, Model model) {
        System.setProperty(StateFolder.PROPERTY, state.toString());
        OpenWindow open = new OpenWindow();
        open.onWindowsThread(() -> {
            Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> open.faults.add(fault));
            Opening opening = new Opening(rig, rig, file, FLUIDS, page, 1280, 720, Optional.of(Theme.LIGHT));
            open.window = new Window(opening, model, open);
            open.stage = new Stage();
            open.stage.setScene(open.window.scene());
            open.stage.setX(0);
            open.stage.setY(0);
            open.stage.setWidth(1280);
            open.stage.setHeight(720);
            open.stage.show();
        });
        for (Node pane : open.window.frame().lookupAll(".titled-pane")) {
            open.atFirst.put((TitledPane) pane, ((TitledPane) pane).isExpanded());
        }
        return open;
    }

    /**
     * Brings it to where it would be if it were newly opened on a rig: nothing edited, no notice, the light theme, the first
     * size, the parts of the form as they stood. To open a window means to style and lay out all that is in it, so that
     * tests share one where they can.
     */
    void renew(Rig rig, PageName page) {
        toOpen = null;
        toSave = null;
        onWindowsThread(() -> {
            if (window.frame().getPseudoClassStates().contains(DARK)) {
                window.act(Action.THEME);
            }
            stage.setWidth(1280);
            stage.setHeight(720);
            window.frame().show(page);
            window.session().begin(RigFiles.Stored.nowhere(rig));
            window.frame().notices().getChildren().clear();
            atFirst.forEach(TitledPane::setExpanded);
        });
    }

    /** Closes the stage as a crash would: nothing is saved, dropped or asked. */
    void crash() {
        onWindowsThread(() -> stage.hide());
    }

    /** Ends it in order. */
    void close() {
        onWindowsThread(() -> {
            window.end();
            stage.hide();
        });
    }

    /** Gives it another size, px. */
    void resize(double width, double height) {
        onWindowsThread(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
    }

    Window window() {
        return window;
    }

    boolean isShowing() {
        return stage.isShowing();
    }

    /** The answer to the rig as it is now, check and cool-down. */
    RigAnswer answer() {
        until("the answer", () -> {
            RigAnswer answer = window.answering().answerProperty().get();
            return answer != null
                    && answer.check().rig().equals(window.session().rig())
                    && answer.cooldown().isPresent();
        });
        return window.answering().answerProperty().get();
    }

    /** Waits for something that the window's thread sees. */
    void until(String what, BooleanSupplier reached) {
        try {
            WaitForAsyncUtils.waitFor(
                    60, TimeUnit.SECONDS, () -> WaitForAsyncUtils.waitForAsyncFx(10_000, reached::getAsBoolean));
        } catch (TimeoutException e) {
            throw new AssertionError("waited in vain for " + what, e);
        }
        Settled.windows();
    }

    /** Does something on the window's thread and waits for it. */
    void onWindowsThread(Runnable what) {
        WaitForAsyncUtils.waitForAsyncFx(60_000, () -> {
            what.run();
            return null;
        });
        Settled.windows();
    }

    /** Gives it another size and waits until it is laid out. */
    void resize(int width, int height) {
        onWindowsThread(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
        });
        until(
                "the size",
                () -> window.scene().getWidth() == width && !window.frame().isNeedsLayout());
    }

    void act(Action action) {
        onWindowsThread(() -> window.act(action));
    }

    /** The one node with this id. */
    <N extends Node> N find(String id, Class<N> type) {
        Node node = lookup(id).orElse(null);
        assertThat(node).as(id).isInstanceOf(type);
        return type.cast(node);
    }

    /** The node with this id; ids are paths of fields, which no style sheet could select. */
    Optional<Node> lookup(String id) {
        return seen(() -> window.frame().lookupAll("*").stream()
                .filter(node -> id.equals(node.getId()))
                .findFirst());
    }

    /** What is seen from the window's thread: a form that is being rebuilt must not be walked through from elsewhere. */
    static <T> T seen(Supplier<T> look) {
        return Platform.isFxApplicationThread() ? look.get() : WaitForAsyncUtils.waitForAsyncFx(60_000, look::get);
    }

    /** All the words that labels and buttons below a node show now. */
    static List<String> words(Node node) {
        return seen(() -> node.lookupAll("*").stream()
                .filter(one -> one instanceof Labeled && isSeen(one))
                .map(one -> ((Labeled) one).getText())
                .filter(text -> text != null && !text.isBlank())
                .toList());
    }

    private static boolean isSeen(Node node) {
        return node == null || (node.isVisible() && isSeen(node.getParent()));
    }

    /** Presses the button with these words in a notice. */
    void choose(String words) {
        until("the choice " + words, () -> button(words).isPresent());
        onWindowsThread(() -> button(words).orElseThrow().fire());
    }

    private Optional<Button> button(String words) {
        return seen(() -> window.frame().notices().lookupAll(".button").stream()
                .map(Button.class::cast)
                .filter(button -> button.getText().equals(words))
                .findFirst());
    }

    String notices() {
        return String.join("\n", words(window.frame().notices()));
    }

    void willOpen(Path file) {
        toOpen = file;
    }

    void willSave(Path file) {
        toSave = file;
    }

    /** What went wrong on the window's thread. */
    List<Throwable> faults() {
        return faults;
    }

    @Override
    public Optional<Path> fileToOpen() {
        assertThat(Platform.isFxApplicationThread()).isTrue();
        return Optional.ofNullable(toOpen);
    }

    @Override
    public Optional<Path> recordToOpen() {
        return fileToOpen();
    }

    @Override
    public Optional<Path> fluidToOpen() {
        return fileToOpen();
    }

    @Override
    public Optional<Path> sheetToSave(String suggestedName) {
        return Optional.ofNullable(toSave);
    }

    @Override
    public Optional<Path> fileToSave(String suggestedName) {
        return Optional.ofNullable(toSave);
    }
}
