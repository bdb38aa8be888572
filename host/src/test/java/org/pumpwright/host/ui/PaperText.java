package org.pumpwright.host.ui;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;

/** What a paper says that the window made, what is attached to it, and how wide it is. */
public record PaperText(String words, Set<String> attachments, long widthMm) {
    private static final double MM_PER_POINT = 25.4 / 72;

    /** Reads a document. */
    public static PaperText of(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
            PDRectangle sheet = document.getPage(0).getMediaBox();
            return new PaperText(
                    new PDFTextStripper().getText(document),
                    new TreeSet<>(document.getDocumentCatalog()
                            .getNames()
                            .getEmbeddedFiles()
                            .getNames()
                            .keySet()),
                    Math.round(sheet.getWidth() * MM_PER_POINT));
        }
    }
}
