package org.pumpwright.host.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The fonts as they are read from the class path, never from the machine, so that a paper looks the same everywhere. Reading
 * one takes longer than laying out a page, so they are kept; whoever makes a document has a set to himself, because a font
 * is read on while it is used. Confined to whoever borrowed it.
 */
final class FontFiles {
    private static final Queue<FontFiles> IDLE = new ConcurrentLinkedQueue<>();

    private final Map<Face, TrueTypeFont> read = new EnumMap<>(Face.class);

    private FontFiles() {}

    /** A set that nobody else uses until it is given back. */
    static FontFiles borrow() {
        FontFiles idle = IDLE.poll();
        return idle == null ? new FontFiles() : idle;
    }

    void giveBack() {
        IDLE.add(this);
    }

    TrueTypeFont font(Face face) {
        return read.computeIfAbsent(face, FontFiles::read);
    }

    private static TrueTypeFont read(Face face) {
        try (InputStream in = FontFiles.class.getResourceAsStream(face.resource())) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole: " + face.resource() + " is missing");
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
            // One letter, one sign: what is copied out of a document is then what was typed.
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
