package org.pumpwright.host.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.GregorianCalendar;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/** Puts the record into the document as a file that the pages were made from (ISO 19005-3, 6.8). Thread-safe. */
final class Enclosure {
    private static final COSName ASSOCIATED_FILES = COSName.getPDFName("AF");
    private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");

    private Enclosure() {}

    static void add(PDDocument document, Attachment attachment, OffsetDateTime date) throws IOException {
        byte[] bytes = attachment.bytes();
        PDEmbeddedFile file = new PDEmbeddedFile(document, new ByteArrayInputStream(bytes), COSName.FLATE_DECODE);
        GregorianCalendar day =
                GregorianCalendar.from(date.truncatedTo(ChronoUnit.SECONDS).toZonedDateTime());
        file.setSubtype("application/json");
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

        PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
        tree.setNames(Map.of(attachment.name(), entry));
        PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
        names.setEmbeddedFiles(tree);
        document.getDocumentCatalog().setNames(names);
        COSArray associated = new COSArray();
        associated.add(entry);
        document.getDocumentCatalog().getCOSObject().setItem(ASSOCIATED_FILES, associated);
    }
}
