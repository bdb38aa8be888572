package org.pumpwright.protocol;

import java.util.ArrayList;
import java.util.List;

/** What a decoder hears in given bytes. */
final class Heard {
    private Heard() {}

    /** All in one piece, from a frame boundary. */
    static List<Received> in(byte[] bytes) {
        return in(bytes, Math.max(1, bytes.length));
    }

    /** In pieces of this size, the last one perhaps shorter, from a frame boundary. */
    static List<Received> in(byte[] bytes, int pieceLength) {
        List<Received> heard = new ArrayList<>();
        FrameDecoder decoder = FrameDecoder.synchronised(heard::add);
        for (int at = 0; at < bytes.length; at += pieceLength) {
            decoder.receive(bytes, at, Math.min(pieceLength, bytes.length - at));
        }
        return heard;
    }

    /** In two pieces, each in an array of its own. */
    static List<Received> splitAt(byte[] bytes, int position) {
        List<Received> heard = new ArrayList<>();
        FrameDecoder decoder = FrameDecoder.synchronised(heard::add);
        decoder.receive(Octets.of(bytes, 0, position).toArray());
        decoder.receive(Octets.of(bytes, position, bytes.length).toArray());
        return heard;
    }

    /** Bytes one after the other. */
    static byte[] joined(byte[]... parts) {
        int length = 0;
        for (byte[] part : parts) {
            length += part.length;
        }
        byte[] joined = new byte[length];
        int at = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, joined, at, part.length);
            at += part.length;
        }
        return joined;
    }
}
