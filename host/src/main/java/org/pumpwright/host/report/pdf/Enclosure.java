package org.pumpwright.host.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Puts records into the document as files that the pages were made from (ISO 19005-3, 6.8). Thread-safe. */
final class Enclosure {
    private static final COSName ASSOCIATED_FILES = COSName.getPDFName("AF");
    private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");

    private Enclosure() {}

    static void add(PDDocument document, List<Attachment> attachments, OffsetDateTime date) throws IOException {
        // The order of names in the tree is that of their letters (ISO 32000-1, 7.9.6).
        Map<String, PDComplexFileSpecification> entries = new TreeMap<>();
        for (Attachment attachment : attachments) {
            entries.put(attachment.name(), entry(document, attachment, date));
        }
        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(entries);
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setEmbeddedFiles(tree);
        document.getDocumentCatalog().setNames(names);
        COSArray associated = new COSArray();
        entries.values().forEach(associated::add);
        document.getDocumentCatalog().getCOSObject().setItem(ASSOCIATED_FILES, associated);
    }

    private static PDComplexFileSpecification entry(PDDocument document, Attachment attachment, OffsetDateTime date)
            throws IOException {
        byte[] bytes = attachment.bytes();
        PDEmbeddedFile file = new PDEmbeddedFile(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
        GregorianCalendar day =
                GregorianCalendar.from(date.truncatedTo(ChronoUnit.SECONDS).toZonedDateTime());
        file.setSubtype(attachment.name().endsWith(".json") ? "application/json" : "application/octet-stream");
        file.setSize(bytes.length);
        file.setCreationDate(day);
        file.setModDate(day);

        PDComplexFileSpecification entry = new PDComplexFileSpecification();
        entry.setFile(attachment.name());
        entry.setFileUnicode(attachment.name());
        entry.setFileDescription(attachment.words());
        entry.setEmbeddedFile(file);
        entry.setEmbeddedFileUnicode(file);
        entry.getCOSObject().setItem(RELATIONSHIP, COSName.getPDFName("Source"));
        return entry;
    }
}
