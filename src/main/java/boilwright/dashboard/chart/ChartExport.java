package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import boilwright.dashboard.text.WindowText;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import javafx.scene.text.Font;
import javafx.scene.transform.Transform;
import javax.imageio.ImageIO;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A chart as the content of a file: on white paper, in one size whatever the window's, with its title. */
final class ChartExport {
    static final double WIDTH = 1200;
    static final double HEIGHT = 700;

    /** Pixels of a PNG for one of the drawing. */
    static final double PIXELS = 2;

    private static final double TYPE = 15;
    private static final double EDGE = 16;
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    private final ChartData data;
    private final Choice choice;
    private final View view;
    private final double cursor;
    private final Lettering lettering;

    /**
     * @param cursor where the cursor is drawn; NaN for none
     * @param family the type's
     */
    ChartExport(ChartData data, Choice choice, View view, double cursor, String family) {
        this.data = data;
        this.choice = choice;
        this.view = view;
        this.cursor = cursor;
        lettering = new Lettering(Font.font(family, TYPE));
    }

    /**
     * Draws it; on the window's thread.
     *
     * @return makes the file's content of the drawing; on any thread
     */
    Supplier<byte[]> content(ChartFormat format) {
        return switch (format) {
            case CSV -> () -> utf8(csv(data, choice));
            case SVG -> {
                String svg = svg();
                yield () -> utf8(svg);
            }
            case PNG -> {
                WritableImage image = image();
                yield () -> png(image);
            }
        };
    }

    private String svg() {
        SvgSurface surface = new SvgSurface(data.title(), ChartWords.describe(data, choice), WIDTH, HEIGHT, lettering);
        paint(surface);
        return surface.finished();
    }

    private WritableImage image() {
        Canvas canvas = new Canvas(WIDTH, HEIGHT);
        paint(new CanvasSurface(canvas.getGraphicsContext2D(), lettering));
        SnapshotParameters sharp = new SnapshotParameters();
        sharp.setTransform(Transform.scale(PIXELS, PIXELS));
        return canvas.snapshot(sharp, null);
    }

    private void paint(Surface s) {
        ChartColors colors = ChartColors.PRINTED;
        s.fill(new double[] {0, WIDTH, WIDTH, 0}, new double[] {0, 0, HEIGHT, HEIGHT}, 4, colors.paper());
        double line = lettering.lineHeight();
        ChartPlan plan = ChartPlan.of(data, choice, view, WIDTH - EDGE, HEIGHT - EDGE, EDGE + 1.5 * line, lettering);
        s.text(data.title(), plan.plot().left(), EDGE + line / 2, Surface.Align.LEFT, true, colors.ink());
        new ChartPainter(plan, colors, s).paint();
        new CursorPainter(plan, colors, s).paint(cursor);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
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

    /**
     * The numbers: a head line of titles with their units, then one line for each place, as many digits as give the same double
     * again. In the units chosen; times in seconds.
     */
    static String csv(ChartData data, Choice choice) {
        ChartRows rows = ChartRows.of(data, WindowText.say("chart.table.low"), WindowText.say("chart.table.high"));
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            printer.printRecord(head(data, choice, rows));
            for (int row = 0; row < rows.size(); row++) {
                printer.printRecord(line(data, choice, rows, row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> head(ChartData data, Choice choice, ChartRows rows) {
        List<String> head = new ArrayList<>();
        if (!data.x().stretches().isEmpty()) {
            head.add(WindowText.say("chart.csv.part"));
            head.add(WindowText.say("chart.csv.part-time"));
        }
        head.add(
                data.x().isTime()
                        ? WindowText.say("chart.csv.time", data.x().title())
                        : ChartWords.title(data.x(), choice.xUnit()));
        for (int k = 0; k < rows.columns(); k++) {
            head.add(
                    choice.yUnit().isPlain()
                            ? rows.title(k)
                            : WindowText.say(
                                    "chart.axis", rows.title(k), choice.yUnit().text()));
        }
        return head;
    }

    private static List<Object> line(ChartData data, Choice choice, ChartRows rows, int row) {
        List<Object> line = new ArrayList<>();
        double place = rows.place(row);
        Stretch stretch = ChartWords.stretch(place, data);
        if (stretch != null) {
            line.add(stretch.title());
            line.add(stretch.ticking() ? (Object) (place - stretch.fromX()) : "");
        }
        line.add(data.x().isTime() ? place : choice.xUnit().fromSi(place));
        for (int k = 0; k < rows.columns(); k++) {
            double si = rows.value(row, k);
            line.add(Double.isFinite(si) ? (Object) choice.yUnit().fromSi(si) : "");
        }
        return line;
    }
}
