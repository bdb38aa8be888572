package org.pumpwright.host.report.sheet;

import java.util.Arrays;
import java.util.Base64;
import org.pumpwright.host.report.draw.Tag;

/**
 * A photograph as it goes into a page: small, in the page's own text. Thread-safe.
 *
 * @param source the picture as a {@code data:} address
 * @param caption what it shows
 */
public record Picture(String source, String caption) {
    /** More would make the paper too large to send. */
    public static final int LARGEST_BYTES = 2_000_000;

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G'};
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};

    public Picture {
        if (!source.startsWith("data:image/")) {
            throw new IllegalArgumentException("picture '%s' does not lie within the page".formatted(caption));
        }
    }

    /**
     * A picture of the bytes of a file.
     *
     * @throws IllegalArgumentException when it is neither JPEG nor PNG, or larger than {@link #LARGEST_BYTES}
     */
    public static Picture of(byte[] file, String caption) {
        if (file.length > LARGEST_BYTES) {
            throw new IllegalArgumentException(
                    "picture '%s' has %d bytes, at most %d are allowed".formatted(caption, file.length, LARGEST_BYTES));
        }
        return new Picture(
                "data:" + mediaType(file, caption) + ";base64,"
                        + Base64.getEncoder().encodeToString(file),
                caption);
    }

    /** The picture as an element, of this height in CSS pixels. */
    public Tag draw(int height) {
        return Tag.of("img", "picture")
                .set("src", source)
                .set("height", Integer.toString(height))
                .set("alt", caption);
    }

    private static String mediaType(byte[] file, String caption) {
        if (startsWith(file, PNG)) {
            return "image/png";
        }
        if (startsWith(file, JPEG)) {
            return "image/jpeg";
        }
        throw new IllegalArgumentException("picture '%s' is neither JPEG nor PNG".formatted(caption));
    }

    private static boolean startsWith(byte[] bytes, byte[] sign) {
        return bytes.length >= sign.length && Arrays.equals(bytes, 0, sign.length, sign, 0, sign.length);
    }
}
