package boilwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Rig;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanCases;
import boilwright.sequence.Variant;
import boilwright.thermal.TestRigs;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlanPdfTest {
    private static final Rig CLUB = PlanCases.demo("mirror-club");

    private static String words(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @EnumSource(Variant.class)
    void everyVariantFitsOnTwoPagesAndCanBeSearched(Variant variant) throws IOException {
        PlanAnswer answer = PlanCases.plan(CLUB, variant);
        for (PlanPdf.Paper paper : PlanPdf.Paper.values()) {
            try (PDDocument document = Loader.loadPDF(PlanPdf.write(answer, paper))) {
                assertThat(document.getNumberOfPages()).isBetween(1, variant.isFromHot() ? 1 : 2);
                PDRectangle size = document.getPage(0).getMediaBox();
                assertThat(size.getWidth()).isEqualTo(paper == PlanPdf.Paper.A4 ? PDRectangle.A4.getWidth() : 612);
                String words = words(document);
                assertThat(words)
                        .contains(
                                "Mirror club", "Local codes", "If something fails", "Write down", "Limits", "Cautions");
                answer.plan()
                        .orElseThrow()
                        .steps()
                        .forEach(step ->
                                assertThat(words).contains(step.words().what().substring(0, 15)));
                if (!variant.isFromHot()) {
                    assertThat(words)
                            .contains(
                                    "Foreline at heater-on",
                                    "Watts",
                                    "Water in",
                                    "Water out",
                                    "Charge",
                                    "First jet seen at");
                }
            }
        }
    }

    @Test
    void itsFontsAreInIt() throws IOException {
        byte[] file = PlanPdf.write(PlanCases.plan(CLUB, Variant.NORMAL), PlanPdf.Paper.A4);
        try (PDDocument document = Loader.loadPDF(file)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                    assertThat(font.getName()).contains("DejaVuSansCondensed");
                }
            }
        }
        assertThat(file.length).isLessThan(200_000);
    }

    /** What prints in grey has no colour, keeps off the margins, and has nothing lighter than can be read. */
    @Test
    void itPrintsInGreyWithinItsMargins() throws IOException {
        byte[] file = PlanPdf.write(PlanCases.plan(CLUB, Variant.FIRST), PlanPdf.Paper.LETTER);
        try (PDDocument document = Loader.loadPDF(file)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImage(page, 1);
                int dark = 0;
                for (int x = 0; x < image.getWidth(); x++) {
                    for (int y = 0; y < image.getHeight(); y++) {
                        int rgb = image.getRGB(x, y) & 0xffffff;
                        int grey = rgb & 0xff;
                        assertThat(rgb).isEqualTo(grey * 0x010101);
                        boolean margin = x < 28 || y < 28 || x > image.getWidth() - 28 || y > image.getHeight() - 28;
                        assertThat(margin && grey < 255).as(x + " " + y).isFalse();
                        dark += grey < 128 ? 1 : 0;
                    }
                }
                assertThat(dark).isGreaterThan(2000);
            }
        }
    }

    @Test
    void theSameAnswerGivesTheSameFile() {
        PlanAnswer answer = PlanCases.plan(CLUB, Variant.NORMAL);
        assertThat(PlanPdf.write(answer, PlanPdf.Paper.A4)).isEqualTo(PlanPdf.write(answer, PlanPdf.Paper.A4));
    }

    @Test
    void itIsThereWithinASecond() {
        PlanAnswer answer = PlanCases.plan(CLUB, Variant.NORMAL);
        PlanPdf.write(answer, PlanPdf.Paper.A4);
        long start = System.nanoTime();
        PlanPdf.write(answer, PlanPdf.Paper.A4);
        assertThat((System.nanoTime() - start) / 1e6).as("milliseconds").isLessThan(1000);
    }

    /** Names come from files: letters that the font has not, and names of any length. */
    @Test
    void strangeNamesAreDrawnAsFarAsTheyCanBe() throws IOException {
        Rig plain = PlanCases.bearingHotWalls(TestRigs.metal150(2200));
        Rig rig = new Rig(
                "\u6cb5\u6d66 \u00e9\u0416 " + "longwordwithoutanyblank".repeat(20),
                "",
                plain.fluidId(),
                plain.chargeM3(),
                plain.boiler(),
                plain.column(),
                plain.stages(),
                plain.body(),
                plain.topCap(),
                plain.heatSource(),
                plain.schedule(),
                plain.foreline(),
                plain.cooling(),
                plain.room(),
                plain.limits(),
                plain.parameters());
        PlanAnswer answer = PlanCases.plan(rig, Variant.NORMAL);
        try (PDDocument document = Loader.loadPDF(PlanPdf.write(answer, PlanPdf.Paper.A4))) {
            assertThat(words(document)).contains("?? \u00e9\u0416");
            assertThat(document.getNumberOfPages()).isLessThanOrEqualTo(2);
        }
        assertThat(PlanText.write(answer)).contains("longword");
        assertThat(PlanMarkdown.write(answer)).contains("- [ ] **1. 0:00:00**");
    }
}
