package org.pumpwright.host.report.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The colour space sRGB (IEC 61966-2-1) as an ICC profile of version 4.2 (ISO 15076-1): the colours that a document's numbers
 * mean. Written here rather than taken from the Java platform, whose profile differs from release to release. Thread-safe.
 */
final class StandardRgb {
    private static final int HEADER = 128;
    private static final int TAG_ENTRY = 12;
    private static final double FIXED_POINT = 65536;
    private static final double[] WHITE_D50 = {0.9642, 1, 0.8249};
    /** The primaries, adapted from D65 to D50 by the Bradford transform below. */
    private static final double[] RED = {0.4360747, 0.2225045, 0.0139322};

    private static final double[] GREEN = {0.3850649, 0.7168786, 0.0971045};
    private static final double[] BLUE = {0.1430804, 0.0606169, 0.7141733};
    private static final double[] BRADFORD = {
        1.0478112, 0.0228866, -0.0501270, 0.0295424, 0.9904844, -0.0170491, -0.0092345, 0.0150436, 0.7521316
    };
    /** Exponent, slope and offset above the break; slope below it; the break. */
    private static final double[] TONE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

    private StandardRgb() {}

    /** The profile, the same bytes at any time. */
    static byte[] profile() {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", words("sRGB"));
        tags.put("cprt", words("No copyright, use freely"));
        tags.put("wtpt", numbers("XYZ ", WHITE_D50));
        tags.put("chad", numbers("sf32", BRADFORD));
        tags.put("rXYZ", numbers("XYZ ", RED));
        tags.put("gXYZ", numbers("XYZ ", GREEN));
        tags.put("bXYZ", numbers("XYZ ", BLUE));
        tags.put("rTRC", tone());
        tags.put("gTRC", tone());
        tags.put("bTRC", tone());
        return assembled(tags);
    }

    private static byte[] assembled(Map<String, byte[]> tags) {
        int begin = HEADER + Integer.BYTES + TAG_ENTRY * tags.size();
        int size = begin + tags.values().stream().mapToInt(tag -> tag.length).sum();
        ByteBuffer out = ByteBuffer.allocate(size);
        header(out, size);
        out.position(HEADER).putInt(tags.size());
        int offset = begin;
        for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
            out.put(ascii(tag.getKey())).putInt(offset).putInt(tag.getValue().length);
            offset += tag.getValue().length;
        }
        tags.values().forEach(out::put);
        return out.array();
    }

    private static void header(ByteBuffer out, int size) {
        out.putInt(size).putInt(0).putInt(0x04200000);
        out.put(ascii("mntrRGB XYZ "));
        for (short part : new short[] {2026, 1, 1, 0, 0, 0}) {
            out.putShort(part);
        }
        out.put(ascii("acsp"));
        // Platform, flags, maker, model, attributes and rendering intent are left open.
        out.position(68);
        put(out, WHITE_D50);
    }

    private static byte[] words(String words) {
        byte[] text = words.getBytes(StandardCharsets.UTF_16BE);
        int record = 12;
        int head = 16 + record;
        ByteBuffer out = ByteBuffer.allocate(padded(head + text.length));
        out.put(ascii("mluc")).putInt(0).putInt(1).putInt(record);
        out.put(ascii("enUS")).putInt(text.length).putInt(head).put(text);
        return out.array();
    }

    private static byte[] tone() {
        ByteBuffer out = ByteBuffer.allocate(12 + Integer.BYTES * TONE.length);
        out.put(ascii("para")).putInt(0).putShort((short) 3).putShort((short) 0);
        put(out, TONE);
        return out.array();
    }

    private static byte[] numbers(String type, double[] values) {
        ByteBuffer out = ByteBuffer.allocate(8 + Integer.BYTES * values.length);
        out.put(ascii(type)).putInt(0);
        put(out, values);
        return out.array();
    }

    private static void put(ByteBuffer out, double[] values) {
        for (double value : values) {
            out.putInt((int) Math.round(value * FIXED_POINT));
        }
    }

    private static int padded(int length) {
        return (length + 3) / 4 * 4;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
