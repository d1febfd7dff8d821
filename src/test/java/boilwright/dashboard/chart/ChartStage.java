package boilwright.dashboard.chart;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import boilwright.dashboard.Settled;
import java.util.List;
import java.util.function.Supplier;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.testfx.util.WaitForAsyncUtils;

/** A chart alone in a window of its own. */
final class ChartStage {
    private Stage stage;
    private SeriesChart chart;

    static ChartStage of(double width, double height, boolean dark) {
        ChartStage open = new ChartStage();
        on(() -> {
            open.chart = new SeriesChart();
            StackPane root = new StackPane(open.chart);
            root.getStyleClass().add("frame");
            root.setStyle("-fx-font-size: 13px; -fx-padding: 10px;");
            Scene scene = new Scene(root, width, height);
            Application.setUserAgentStylesheet(
                    dark ? new PrimerDark().getUserAgentStylesheet() : new PrimerLight().getUserAgentStylesheet());
            for (String sheet : List.of("bridge", "frame", "chart")) {
                scene.getStylesheets()
                        .add(ChartStage.class
                                .getResource("/boilwright/css/" + sheet + ".css")
                                .toString());
            }
            open.stage = new Stage();
            open.stage.setScene(scene);
            open.stage.setX(0);
            open.stage.setY(0);
            open.stage.show();
            return null;
        });
        return open;
    }

    SeriesChart chart() {
        return chart;
    }

    Scene scene() {
        return stage.getScene();
    }

    void close() {
        on(() -> {
            stage.hide();
            return null;
        });
    }

    WritableImage picture() {
        return on(() -> scene().snapshot(null));
    }

    static <T> T on(Supplier<T> what) {
        T made = WaitForAsyncUtils.waitForAsyncFx(20_000, what::get);
        Settled.windows();
        return made;
    }
}
