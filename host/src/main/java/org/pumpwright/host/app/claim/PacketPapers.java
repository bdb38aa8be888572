package org.pumpwright.host.app.claim;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Version;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.claim.photo.Thumbnail;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.report.HtmlReport;
import org.pumpwright.host.report.TextReport;
import org.pumpwright.host.report.claim.ClerkEvidence;
import org.pumpwright.host.report.claim.ClerkPage;
import org.pumpwright.host.report.pdf.Attachment;
import org.pumpwright.host.report.pdf.Origin;
import org.pumpwright.host.report.pdf.PdfPaper;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.report.sheet.Picture;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** The papers of a packet. Their date is that of what they show, so that the same claim gives the same bytes. Confined to one thread. */
public final class PacketPapers {
    private final Texts texts;
    private final Sheet sheet;

    /** In this language, on this paper. */
    public PacketPapers(Language language, Sheet sheet) {
        texts = Texts.in(language);
        this.sheet = sheet;
    }

    /** The clerk's page, as it is shown and as PDF. */
    public Map<String, byte[]> ofClaim(ClaimReview.Reviewed claim, Optional<RunRecord> run, PhotoFolder photos)
            throws OrderException {
        ClaimFile file = claim.file();
        ClerkEvidence evidence = new ClerkEvidence(
                Optional.empty(),
                file,
                run,
                claim.coverage(),
                Optional.empty(),
                thumbnails(file, photos),
                claim.entries().stream()
                        .map(entry -> new ClerkEvidence.Item(entry.id(), entry.digest()))
                        .toList());
        String html = ClerkPage.html(evidence, texts);
        OffsetDateTime latest = claim.entries().stream()
                .map(Entry::at)
                .max(OffsetDateTime::compareTo)
                .orElse(file.intake().received());
        Map<String, byte[]> papers = new TreeMap<>();
        papers.put("clerk.html", bytes(html));
        papers.put("clerk.pdf", PdfPaper.of(html, sheet, origin(latest), Optional.empty()));
        return papers;
    }

    private static Map<Digest, Picture> thumbnails(ClaimFile file, PhotoFolder photos) throws OrderException {
        Map<Digest, Picture> small = new HashMap<>();
        for (Photo photo : file.photos()) {
            try {
                small.put(
                        photo.sha256(),
                        Picture.of(
                                Thumbnail.png(photos.read(photo)), photo.shows().word()));
            } catch (IOException e) {
                throw new OrderException(String.valueOf(e.getMessage()));
            }
        }
        return small;
    }

    /** The technician's page of a run. */
    public ClaimPacket.RunPapers ofRuns() {
        return run -> {
            String html = HtmlReport.page(run, UnitSystem.US, texts);
            return Map.of(
                    "technician.html",
                    bytes(html),
                    "technician.txt",
                    bytes(TextReport.page(run, UnitSystem.US)),
                    "technician.pdf",
                    PdfPaper.of(
                            html,
                            sheet,
                            origin(run.startedAt()),
                            Optional.of(Attachment.record(bytes(RunContent.of(run))))));
        };
    }

    private static Origin origin(OffsetDateTime at) {
        return new Origin("", at, Version.text());
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
