package org.pumpwright.host.claim.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads when a camera says it took a JPEG: DateTimeOriginal of Exif (tag 0x9003, else DateTime, 0x0132), in the first APP1
 * segment. Tags and layout from memory of Exif 2.3 and TIFF 6.0. Anything that does not fit is no time. Thread-safe.
 */
final class ExifTime {
    private static final int START = 0xFFD8;
    private static final int APP1 = 0xFFE1;
    private static final int START_OF_SCAN = 0xFFDA;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final int EXIF_FOLDER = 0x8769;
    private static final int ORIGINAL = 0x9003;
    private static final int CHANGED = 0x0132;
    private static final int TAG_BYTES = 12;
    private static final int TIME_CHARACTERS = 19;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT);

    private ExifTime() {}

    /** The time; empty when there is none that can be read. */
    static Optional<LocalDateTime> of(byte[] jpeg) {
        try {
            return segment(ByteBuffer.wrap(jpeg)).flatMap(ExifTime::ofTiff);
        } catch (IndexOutOfBoundsException | java.nio.BufferUnderflowException | IllegalArgumentException e) {
            // A damaged head costs the time, not the picture.
            return Optional.empty();
        }
    }

    private static Optional<ByteBuffer> segment(ByteBuffer jpeg) {
        if (unsigned(jpeg.getShort()) != START) {
            return Optional.empty();
        }
        while (jpeg.remaining() > 4) {
            int marker = unsigned(jpeg.getShort());
            int length = unsigned(jpeg.getShort()) - 2;
            if (marker == START_OF_SCAN || length < 0) {
                return Optional.empty();
            }
            if (marker == APP1 && length > EXIF.length && starts(jpeg)) {
                return Optional.of(jpeg.slice(jpeg.position() + EXIF.length, length - EXIF.length));
            }
            jpeg.position(jpeg.position() + length);
        }
        return Optional.empty();
    }

    private static boolean starts(ByteBuffer jpeg) {
        byte[] head = new byte[EXIF.length];
        jpeg.get(jpeg.position(), head);
        return java.util.Arrays.equals(head, EXIF);
    }

    private static Optional<LocalDateTime> ofTiff(ByteBuffer tiff) {
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int first = tiff.getInt(4);
        Optional<LocalDateTime> original = find(tiff, first, EXIF_FOLDER)
                .map(at -> tiff.getInt(at + 8))
                .flatMap(folder -> time(tiff, folder, ORIGINAL));
        return original.or(() -> time(tiff, first, CHANGED));
    }

    private static Optional<Integer> find(ByteBuffer tiff, int folder, int tag) {
        int tags = unsigned(tiff.getShort(folder));
        for (int i = 0; i < tags; i++) {
            int at = folder + 2 + i * TAG_BYTES;
            if (unsigned(tiff.getShort(at)) == tag) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDateTime> time(ByteBuffer tiff, int folder, int tag) {
        return find(tiff, folder, tag).flatMap(at -> {
            byte[] text = new byte[TIME_CHARACTERS];
            tiff.get(tiff.getInt(at + 8), text);
            try {
                return Optional.of(LocalDateTime.parse(new String(text, StandardCharsets.US_ASCII), TIME));
            } catch (DateTimeException e) {
                return Optional.empty();
            }
        });
    }

    private static int unsigned(short value) {
        return Short.toUnsignedInt(value);
    }
}
