package org.pumpwright.host.claim.photo;

import java.time.LocalDateTime;
import java.util.Optional;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.Photo.Format;
import org.pumpwright.host.claim.RefusedException;

/**
 * A picture as it was handed in. Thread-safe.
 *
 * @param format by its first bytes; the name of its file proves nothing
 * @param taken when its camera says it was taken
 */
public record Picture(Format format, Optional<LocalDateTime> taken) {
    private static final long PNG = 0x89504E470D0A1A0AL;
    private static final int PNG_HEAD = 8;

    /**
     * Looks at the bytes.
     *
     * @param name of the file, for the message
     * @throws RefusedException when they are no JPEG or PNG, or too many
     */
    public static Picture of(String name, byte[] bytes) throws RefusedException {
        if (bytes.length == 0 || bytes.length > Photo.MOST_BYTES) {
            throw new RefusedException(
                    "%s has %d bytes, a picture has 1 to %d (20 MB)".formatted(name, bytes.length, Photo.MOST_BYTES));
        }
        if (bytes.length >= PNG_HEAD && java.nio.ByteBuffer.wrap(bytes).getLong() == PNG) {
            return new Picture(Format.PNG, Optional.empty());
        }
        if (bytes.length > 3 && (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xD8 && (bytes[2] & 0xFF) == 0xFF) {
            return new Picture(Format.JPEG, ExifTime.of(bytes));
        }
        throw new RefusedException("%s is neither JPEG nor PNG: save the picture as one of the two".formatted(name));
    }
}
