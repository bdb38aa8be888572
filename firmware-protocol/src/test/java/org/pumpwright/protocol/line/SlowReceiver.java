package org.pumpwright.protocol.line;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/**
 * Hears a whole line at once, byte lists and all, straight from the words of the specification. Shares no code with the
 * receiver it is compared to.
 */
public final class SlowReceiver {
    private SlowReceiver() {}

    /** The plain frames in hexadecimal and the names of the causes, as far as the line shows them. */
    public static List<String> hear(byte[] line) {
        List<String> heard = new ArrayList<>();
        List<Integer> frame = new ArrayList<>();
        for (byte next : line) {
            if (next != 0) {
                frame.add(next & 0xFF);
                continue;
            }
            if (!frame.isEmpty()) {
                heard.add(judge(frame));
            }
            frame = new ArrayList<>();
        }
        if (frame.size() > 119) {
            heard.add("BAD_LENGTH");
        }
        return heard;
    }

    private static String judge(List<Integer> frame) {
        if (frame.size() > 119) {
            return "BAD_LENGTH";
        }
        List<Integer> plain = new ArrayList<>();
        int at = 0;
        while (at < frame.size()) {
            int code = frame.get(at);
            if (at + code > frame.size()) {
                return "BAD_COBS";
            }
            plain.addAll(frame.subList(at + 1, at + code));
            at += code;
            if (at < frame.size()) {
                plain.add(0);
            }
        }
        if (plain.size() < 6) {
            return "BAD_LENGTH";
        }
        byte[] bytes = new byte[plain.size()];
        for (int index = 0; index < bytes.length; index++) {
            bytes[index] = plain.get(index).byteValue();
        }
        int sent = plain.get(plain.size() - 2) + 256 * plain.get(plain.size() - 1);
        boolean fits = SlowCrc.of(bytes, bytes.length - 2) == sent;
        return fits ? HexFormat.of().formatHex(bytes) : "BAD_CRC";
    }
}
