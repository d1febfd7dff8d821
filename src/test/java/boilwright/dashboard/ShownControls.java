package boilwright.dashboard;

import java.util.List;
import java.util.logging.Logger;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.controlsfx.control.PopOver;
import org.controlsfx.control.SearchableComboBox;
import org.controlsfx.control.StatusBar;
import org.controlsfx.control.ToggleSwitch;
import org.controlsfx.control.textfield.TextFields;

/** A program that opens the controls of ControlsFX in memory, prints "shown" and ends; a fault ends it with its trace and code 1. */
public final class ShownControls {
    /** Held on to: the logging system forgets loggers that nobody holds. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private static final Duration OPEN = Duration.millis(500);

    private ShownControls() {}

    /** Opens them. */
    public static void main(String[] arguments) {
        Dashboard.withoutScreen(800, 600);
        // As in the window: the class path is this program's way.
        TOOLKIT.setFilter(record -> !record.getMessage().contains("Unsupported JavaFX"));
        Platform.startup(() -> {
            Thread.currentThread().setUncaughtExceptionHandler((thread, fault) -> {
                fault.printStackTrace();
                System.exit(1);
            });
            show();
        });
    }

    private static void show() {
        SearchableComboBox<String> choice = new SearchableComboBox<>();
        choice.getItems().addAll("one", "two");
        TextField typed = new TextField();
        TextFields.bindAutoCompletion(typed, List.of("alpha", "beta"));
        StatusBar status = new StatusBar();
        Stage stage = new Stage();
        stage.setScene(new Scene(new VBox(choice, typed, new ToggleSwitch("on"), status), 600, 400));
        stage.show();
        PopOver bubble = new PopOver(new Label("words"));
        bubble.show(status);
        typed.requestFocus();
        typed.setText("al");
        after(() -> {
            boolean bubbleShown = bubble.isShowing();
            choice.requestFocus();
            choice.show();
            after(() -> {
                boolean shown = bubbleShown && choice.isShowing();
                System.out.println(shown ? "shown" : "hidden");
                System.exit(shown ? 0 : 1);
            });
        });
    }

    private static void after(Runnable what) {
        PauseTransition open = new PauseTransition(OPEN);
        open.setOnFinished(event -> what.run());
        open.play();
    }
}
