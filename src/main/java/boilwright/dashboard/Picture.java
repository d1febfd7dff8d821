package boilwright.dashboard;

import boilwright.answers.Model;
import boilwright.dashboard.work.Answering;
import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.animation.PauseTransition;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import javafx.util.Duration;
import javax.imageio.ImageIO;

/** A window drawn into a file instead of onto a screen. */
final class Picture {
    private static final int USUAL_WIDTH = 1280;
    private static final int USUAL_HEIGHT = 720;
    /** Time for the last layout after the last answer. */
    private static final Duration SETTLE = Duration.millis(250);

    private Picture() {}

    /**
     * Builds the window, waits until check and cool-down are there, and draws it. On the window's thread.
     *
     * @param picture gets the PNG, or why there is none
     */
    static void take(Opening opening, Model model, CompletableFuture<byte[]> picture) {
        Window window = new Window(opening, model, new NobodyToAsk());
        Stage stage = new Stage(StageStyle.UNDECORATED);
        stage.setScene(window.scene());
        stage.setX(0);
        stage.setY(0);
        stage.setWidth(width(opening));
        stage.setHeight(height(opening));
        stage.show();
        Answering answering = window.answering();
        answering.refusalProperty().addListener((property, before, now) -> {
            if (!now.isEmpty()) {
                picture.completeExceptionally(
                        new ComputationException(Message.of(MessageKey.PICTURE_WITHOUT_ANSWER, now)));
            }
        });
        answering.answerProperty().addListener((property, before, now) -> {
            if (now.cooldown().isPresent()) {
                PauseTransition settle = new PauseTransition(SETTLE);
                settle.setOnFinished(event -> draw(window, stage, picture));
                settle.play();
            }
        });
    }

    /** Width of the picture, pixels. */
    static int width(Opening opening) {
        return opening.width() > 0 ? opening.width() : USUAL_WIDTH;
    }

    /** Height of the picture, pixels. */
    static int height(Opening opening) {
        return opening.height() > 0 ? opening.height() : USUAL_HEIGHT;
    }

    private static void draw(Window window, Stage stage, CompletableFuture<byte[]> picture) {
        try {
            WritableImage image = window.scene().snapshot(null);
            picture.complete(png(image));
        } catch (RuntimeException | Error fault) {
            picture.completeExceptionally(fault);
        } finally {
            window.end();
            stage.hide();
        }
    }

    private static byte[] png(WritableImage image) {
        BufferedImage opaque =
                new BufferedImage((int) image.getWidth(), (int) image.getHeight(), BufferedImage.TYPE_INT_RGB);
        opaque.createGraphics().drawImage(SwingFXUtils.fromFXImage(image, null), 0, 0, null);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(opaque, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** A picture has nobody in front of it. */
    private static final class NobodyToAsk implements FileAsker {
        @Override
        public Optional<Path> fileToOpen() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> recordToOpen() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> fluidToOpen() {
            return Optional.empty();
        }

        @Override
        public Optional<Path> sheetToSave(String suggestedName) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> fileToSave(String suggestedName) {
            return Optional.empty();
        }
    }
}
