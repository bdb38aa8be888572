package org.pumpwright.host.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Makes a document of a page: PDF/A-3b (ISO 19005-3), every font embedded, title and language those of the page. The same
 * page, sheet, origin and attachment give the same bytes at any time. Thread-safe.
 */
public final class PdfPaper {
    private static final float PDF_VERSION = 1.7f;
    private static final int USUAL_SIZE = 1 << 16;

    static {
        // Fonts and shapes come from a part of Java that looks for a display unless it is told that there need be none.
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
    }

    private PdfPaper() {}

    /**
     * The document.
     *
     * @param html a whole page of this program's own, as {@code HtmlReport.page} and its like give
     * @param sheet what it is printed on
     * @param origin where the paper comes from
     * @param attachment the record the page was made from, as canonical JSON; empty for a paper without a record
     * @return the bytes of the PDF file
     * @throws IllegalArgumentException if the page is not well formed, or draws what cannot be drawn
     */
    public static byte[] of(String html, Sheet sheet, Origin origin, Optional<Attachment> attachment) {
        return of(html, sheet, origin, attachment.stream().toList());
    }

    /** The same with several files in it, each under a name of its own. */
    public static byte[] of(String html, Sheet sheet, Origin origin, List<Attachment> attachments) {
        XRLog.setLoggingEnabled(false);
        PageSource source = PageSource.read(html, sheet);
        FontFiles files = FontFiles.borrow();
        try (PDDocument document = new PDDocument()) {
            draw(source, sheet, document, files);
            Particulars.write(document, source.title(), source.language(), origin);
            if (!attachments.isEmpty()) {
                Enclosure.add(document, attachments, origin.date());
            }
            document.setDocumentId(DocumentNumber.of(html, sheet, origin, attachments));
            document.setVersion(PDF_VERSION);
            ByteArrayOutputStream out = new ByteArrayOutputStream(USUAL_SIZE);
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            files.giveBack();
        }
    }

    private static void draw(PageSource source, Sheet sheet, PDDocument document, FontFiles files) throws IOException {
        DocumentFonts fonts = new DocumentFonts(document, files);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.usePDDocument(document);
        builder.usePdfAConformance(PdfAConformance.PDFA_3_B);
        builder.useDefaultPageSize((float) sheet.widthMm(), (float) sheet.heightMm(), PageSizeUnits.MM);
        builder.useSVGDrawer(new VectorDrawings(fonts, DrawingRules.of(source.style())));
        builder.withW3cDocument(source.tree(), null);
        fonts.offerTo(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
        }
    }
}
