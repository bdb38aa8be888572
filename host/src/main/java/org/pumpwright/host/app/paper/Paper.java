package org.pumpwright.host.app.paper;

import java.util.List;
import org.pumpwright.host.report.pdf.Attachment;
import org.pumpwright.host.report.pdf.Origin;
import org.pumpwright.host.report.pdf.PdfPaper;
import org.pumpwright.host.report.pdf.Sheet;

/**
 * A page that is ready to be handed out. Thread-safe.
 *
 * @param html the whole page
 * @param sheet what it is printed on
 * @param origin where it comes from
 * @param attachments what goes into its document
 */
public record Paper(String html, Sheet sheet, Origin origin, List<Attachment> attachments) {
    public Paper {
        attachments = List.copyOf(attachments);
    }

    /** The page as a document, PDF/A-3b. */
    public byte[] pdf() {
        return PdfPaper.of(html, sheet, origin, attachments);
    }
}
