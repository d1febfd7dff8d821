package boilwright.report;

import boilwright.sequence.PlanAnswer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** A plan as a sheet for the bench: one or two pages that print in grey, with boxes to tick and blanks to fill in. */
public final class PlanPdf {
    /** Pages that a sheet from cold to cold may have, and any sheet whose type would get too small. */
    private static final int MOST_PAGES = 2;
    /** Sizes of type that are tried, points, and whether reasons are printed. */
    private static final float[] SIZES = {8.6f, 8.2f, 7.8f, 7.4f, 7.8f, 7.4f, 7f, 6.6f, 6.2f, 5.8f, 5.4f, 5f};

    private static final int WITH_REASONS = 4;

    private PlanPdf() {}

    /** What a sheet is printed on. */
    public enum Paper {
        A4("a4", PDRectangle.A4),
        LETTER("letter", PDRectangle.LETTER);

        private final String id;
        private final PDRectangle size;

        Paper(String id, PDRectangle size) {
            this.id = id;
            this.size = size;
        }

        /** Name on the command line. */
        public String id() {
            return id;
        }
    }

    /**
     * The file, the same to the last byte for the same answer.
     *
     * @param answer an answer with a plan
     * @param paper what it is printed on
     */
    public static byte[] write(PlanAnswer answer, Paper paper) {
        try (PDDocument document = new PDDocument()) {
            PdfPen pen = new PdfPen(document);
            boolean fits = answer.variant().isFromHot() && lay(pen, answer, paper, WITH_REASONS, 1);
            if (!fits) {
                lay(pen, answer, paper, SIZES.length, MOST_PAGES);
            }
            pen.finish(document, paper.size);
            PDDocumentInformation about = document.getDocumentInformation();
            about.setTitle(PlanTexts.title(answer.variant()) + ": "
                    + answer.check().rig().name());
            about.setCreator("Boilwright " + answer.check().programVersion());
            // else the file's id would come from the clock
            document.setDocumentId((long) PlanJson.write(answer).hashCode());
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lays the plan out in the first of some sizes that needs no more pages than these; else in the last one. */
    private static boolean lay(PdfPen pen, PlanAnswer answer, Paper paper, int sizes, int pages) {
        for (int i = 0; i < sizes; i++) {
            pen.clear();
            new PlanSheet(pen, answer, paper.size, SIZES[i], i < WITH_REASONS).draw();
            if (pen.pageCount() <= pages) {
                return true;
            }
        }
        return false;
    }
}
