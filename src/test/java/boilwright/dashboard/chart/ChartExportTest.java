package boilwright.dashboard.chart;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.units.Dimension;
import boilwright.units.UnitTable;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

class ChartExportTest {
    private static final ChartData DATA = ChartScene.temperatures(4, 800);

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void theSvgHoldsEveryCurveLimitEventAndReadingAsWords() throws Exception {
        Document svg = svg(DATA, 900);
        assertThat(svg.getDocumentElement().getTagName()).isEqualTo("svg");
        List<String> texts = texts(svg, "text");
        assertThat(texts)
                .contains("Temperatures", "temperature, degC", "curve A", "curve D", "oil: at most 207 degC", "heat on")
                .contains("0:15:00", "97.8 degC");
        assertThat(texts(svg, "desc").get(0))
                .contains("curve A from 20.0 degC", "Limit: oil", "first vapour at 0:10:00");
        assertThat(texts(svg, "title")).contains("Temperatures", "curve A", "jet lights");
        NodeList lines = svg.getElementsByTagName("polyline");
        List<String> dashes = new ArrayList<>();
        for (int i = 0; i < lines.getLength(); i++) {
            dashes.add(((org.w3c.dom.Element) lines.item(i)).getAttribute("stroke-dasharray"));
        }
        assertThat(dashes).contains("", "8.08 4.62");
    }

    @Test
    void wordsWithSignsOfTheirOwnDoNotBreakTheSvg() throws Exception {
        Series odd = new Series("a < b & \"c\" > d", new double[] {0, 1}, new double[] {300, 310});
        ChartData data = ChartData.of("<t>", Axis.time("t&t"), DATA.y(), List.of(odd));
        assertThat(texts(svg(data, Double.NaN), "text")).contains("<t>", "a < b & \"c\" > d", "t&t, h:mm:ss");
    }

    @Test
    void theCsvHoldsTheVeryNumbers() throws Exception {
        String csv = new String(content(DATA, Choice.suiting(DATA), ChartFormat.CSV), StandardCharsets.UTF_8);
        List<CSVRecord> lines = CSVFormat.RFC4180.parse(new StringReader(csv)).getRecords();
        assertThat(lines.get(0))
                .containsExactly("time, s", "curve A, degC", "curve B, degC", "curve C, degC", "curve D, degC");
        assertThat(lines).hasSize(801);
        for (int row = 0; row < 800; row++) {
            CSVRecord line = lines.get(row + 1);
            assertThat(Double.parseDouble(line.get(0)))
                    .isEqualTo(DATA.series().get(0).x()[row]);
            for (int k = 0; k < 4; k++) {
                double kelvin = Double.parseDouble(line.get(k + 1)) + 273.15;
                assertThat(kelvin).isCloseTo(DATA.series().get(k).y()[row], Offset.offset(1e-9));
            }
        }
    }

    @Test
    void theCsvIsInTheUnitsChosenAndLeavesUnknownValuesOut() throws Exception {
        Series one = new Series("one", new double[] {0, 2000}, new double[] {101_325, Double.NaN});
        ChartData data = ChartData.of("t", ChartScene.inParts().x(), Axis.of("p", Dimension.PRESSURE), List.of(one));
        Choice torr = new Choice(
                Choice.suiting(data).xUnit(),
                UnitTable.find("Torr", Dimension.PRESSURE).orElseThrow(),
                false,
                false);
        String csv = new String(content(data, torr, ChartFormat.CSV), StandardCharsets.UTF_8);
        assertThat(csv)
                .isEqualTo("part,\"time in the part, s\",\"time, s\",\"one, Torr\"\nup,0.0,0.0,760.0\nrest,,2000.0,\n");
    }

    @Test
    void thePngIsAPictureOfItsSizeWithInkOnWhite() throws Exception {
        BufferedImage image =
                ImageIO.read(new ByteArrayInputStream(content(DATA, Choice.suiting(DATA), ChartFormat.PNG)));
        assertThat(image.getWidth()).isEqualTo((int) (ChartExport.WIDTH * ChartExport.PIXELS));
        assertThat(image.getHeight()).isEqualTo((int) (ChartExport.HEIGHT * ChartExport.PIXELS));
        int white = 0;
        int dark = 0;
        for (int x = 0; x < image.getWidth(); x += 2) {
            for (int y = 0; y < image.getHeight(); y += 2) {
                int green = image.getRGB(x, y) >> 8 & 0xff;
                white += green == 0xff ? 1 : 0;
                dark += green < 0x60 ? 1 : 0;
            }
        }
        int all = image.getWidth() * image.getHeight() / 4;
        assertThat(white).isGreaterThan(all * 8 / 10).isLessThan(all);
        assertThat(dark).isGreaterThan(all / 200);
    }

    private static byte[] content(ChartData data, Choice choice, ChartFormat format) {
        return ChartStage.on(() -> new ChartExport(data, choice, View.WHOLE, 900, "System").content(format))
                .get();
    }

    private static Document svg(ChartData data, double cursor) throws Exception {
        byte[] bytes = ChartStage.on(() -> new ChartExport(data, Choice.suiting(data), View.WHOLE, cursor, "System")
                        .content(ChartFormat.SVG))
                .get();
        return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }

    private static List<String> texts(Document svg, String tag) {
        NodeList all = svg.getElementsByTagName(tag);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            texts.add(all.item(i).getTextContent());
        }
        return texts;
    }
}
