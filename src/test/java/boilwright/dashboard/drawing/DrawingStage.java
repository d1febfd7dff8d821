package boilwright.dashboard.drawing;

import atlantafx.base.theme.PrimerLight;
import boilwright.dashboard.Settled;
import java.util.function.Supplier;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
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
            open.drawing.setManaged(false);
            open.drawing.resizeRelocate(0, 0, width, height);
            Pane root = new Pane(open.drawing);
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
        Settled.windows();
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
            drawing.layout();
            return null;
        });
    }

    /** Gives the drawing another size, px, in a window that stays as it is. */
    void resize(double width, double height) {
        show(() -> drawing.resizeRelocate(0, 0, width, height));
    }

    /** The sheet alone; what hangs over its edge, such as a card's shadow, would shift a plain snapshot. */
    WritableImage picture() {
        SnapshotParameters sheet = new SnapshotParameters();
        sheet.setViewport(new Rectangle2D(0, 0, drawing.getWidth(), drawing.getHeight()));
        return on(() -> drawing.snapshot(sheet, null));
    }

    void close() {
        on(() -> {
            stage.hide();
            return null;
        });
    }

    static <T> T on(Supplier<T> what) {
        return WaitForAsyncUtils.waitForAsyncFx(20_000, what::get);
    }
}
