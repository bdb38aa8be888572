package org.pumpwright.host.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The faces that one document uses; of each only the letters used go into it. Confined to one thread. */
final class DocumentFonts {
    private static final double PER_EM = 1000;
    private static final int REPLACEMENT = 0xFFFD;

    private final PDDocument document;
    private final FontFiles files;
    private final Map<Face, PDFont> used = new EnumMap<>(Face.class);

    DocumentFonts(PDDocument document, FontFiles files) {
        this.document = document;
        this.files = files;
    }

    void offerTo(PdfRendererBuilder builder) {
        for (Face face : Face.values()) {
            builder.useFont(new Lazily(face), face.family(), face.weight(), FontStyle.NORMAL, true);
        }
    }

    PDFont font(Face face) {
        return used.computeIfAbsent(face, this::load);
    }

    private PDFont load(Face face) {
        try {
            return PDType0Font.load(document, files.font(face), true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How long a text is, in the unit of its size. */
    double width(Face face, String text, double size) {
        try {
            return font(face).getStringWidth(text) / PER_EM * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The text with a replacement sign for what the face has no sign for. */
    String printable(Face face, String text) {
        try {
            var signs = files.font(face).getUnicodeCmapLookup();
            StringBuilder out = new StringBuilder(text.length());
            text.codePoints().forEach(c -> out.appendCodePoint(signs.getGlyphId(c) == 0 ? REPLACEMENT : c));
            return out.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A face that is loaded when the first letter of it is set. */
    private final class Lazily extends PDFontSupplier {
        private final Face face;

        Lazily(Face face) {
            super(null);
            this.face = face;
        }

        @Override
        public PDFont supply() {
            return font(face);
        }
    }
}
