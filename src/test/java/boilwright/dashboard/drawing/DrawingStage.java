package boilwright.dashboard.drawing;

import atlantafx.base.theme.PrimerLight;
import java.util.function.Supplier;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.testfx.util.WaitForAsyncUtils;

/** A drawing alone in a window of its own. */
final class DrawingStage {
    private Stage stage;
    private PumpDrawing drawing;

    static DrawingStage of(double width, double height) {
        DrawingStage open = new DrawingStage();
        on(() -> {
            open.drawing = new PumpDrawing();
            StackPane root = new StackPane(open.drawing);
            root.setStyle("-fx-font-size: 13px; -fx-background-color: -color-bg-default;");
            Scene scene = new Scene(root, width, height);
            Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
            scene.getStylesheets()
                    .add(DrawingStage.class
                            .getResource("/boilwright/css/drawing.css")
                            .toString());
            open.stage = new Stage();
            open.stage.setScene(scene);
            open.stage.setX(0);
            open.stage.setY(0);
            open.stage.show();
            return null;
        });
        return open;
    }

    PumpDrawing drawing() {
        return drawing;
    }

    Scene scene() {
        return stage.getScene();
    }

    /** Changes the drawing and lays it out. */
    void show(Runnable change) {
        on(() -> {
            change.run();
            stage.getScene().getRoot().applyCss();
            stage.getScene().getRoot().layout();
            return null;
        });
    }

    /** Gives it another size, px. */
    void resize(double width, double height) {
        on(() -> {
            stage.setWidth(width);
            stage.setHeight(height);
            return null;
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    WritableImage picture() {
        return on(() -> scene().snapshot(null));
    }

    void close() {
        on(() -> {
            stage.hide();
            return null;
        });
    }

    static <T> T on(Supplier<T> what) {
        T made = WaitForAsyncUtils.waitForAsyncFx(20_000, what::get);
        WaitForAsyncUtils.waitForFxEvents();
        return made;
    }
}
