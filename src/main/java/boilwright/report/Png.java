package boilwright.report;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;

/** Pictures as the content of PNG files. */
final class Png {
    private Png() {}

    static byte[] of(BufferedImage image) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A chart of a size in pixels. */
    static byte[] of(JFreeChart chart, int width, int height) {
        return of(chart.createBufferedImage(width, height, BufferedImage.TYPE_INT_RGB, null));
    }
}
