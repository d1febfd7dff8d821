package boilwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Margin;
import boilwright.thermal.RunResult;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class RunPictureTest {
    private static BufferedImage image;

    @BeforeAll
    static void draw() throws IOException {
        assertThat(RunPicture.canDraw()).isTrue();
        image = read(RunPicture.png("Bench pump", run()));
    }

    @Test
    void hasItsSize() {
        assertThat(image.getWidth()).isEqualTo(1400);
        assertThat(image.getHeight()).isEqualTo(1000);
    }

    @Test
    void showsTheFlowOfEachJetInItsColourInTheLowerPanel() {
        assertThat(count(0x0072B2, 540, 880)).isGreaterThan(500);
        assertThat(count(0xD55E00, 540, 880)).isGreaterThan(200);
        assertThat(count(0x009E73, 540, 880)).isGreaterThan(100);
    }

    @Test
    void marksEventsAndSaysWhatTheyAre() throws IOException {
        RunResult run = run();
        BufferedImage bare = read(RunPicture.png(
                "Bench pump",
                new RunResult(
                        run.kind(),
                        List.of(),
                        run.series(),
                        run.column(),
                        run.balance(),
                        OptionalDouble.empty(),
                        List.of(),
                        Map.of())));
        assertThat(count(image, 0x404040, 0, 1000)).isGreaterThan(count(bare, 0x404040, 0, 1000) + 1000);
    }

    @Test
    void theSameRunGivesTheSamePicture() {
        assertThat(RunPicture.png("Bench pump", run())).isEqualTo(RunPicture.png("Bench pump", run()));
    }

    private static RunResult run() {
        return Samples.check(Margin.Status.FAILS).warmup();
    }

    private static int count(int colour, int top, int bottom) {
        return count(image, colour, top, bottom);
    }

    private static int count(BufferedImage in, int colour, int top, int bottom) {
        int count = 0;
        for (int y = top; y < bottom; y++) {
            for (int x = 0; x < in.getWidth(); x++) {
                if ((in.getRGB(x, y) & 0xFFFFFF) == colour) {
                    count++;
                }
            }
        }
        return count;
    }

    private static BufferedImage read(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }
}
