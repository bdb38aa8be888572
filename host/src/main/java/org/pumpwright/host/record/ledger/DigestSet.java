package org.pumpwright.host.record.ledger;

import java.util.BitSet;
import java.util.HexFormat;
import java.util.function.Consumer;

/**
 * A set of digests that takes at most 64 bytes for each: the first 128 bits are kept, and nobody can
 * find another digest with the same. Notes which were asked for. Confined to one thread.
 */
final class DigestSet {
    private static final int FIRST = 1 << 10;
    private static final int LONG_DIGITS = 16;

    private long[] firsts = new long[FIRST];
    private long[] seconds = new long[FIRST];
    private BitSet asked = new BitSet();
    private int size;

    void add(Digest digest) {
        add(half(digest, 0), half(digest, 1), false);
        if (2 * size > firsts.length) {
            grow();
        }
    }

    /** Whether it is in; if so, it counts as asked for. */
    boolean ask(Digest digest) {
        int at = find(half(digest, 0), half(digest, 1));
        boolean there = !empty(at);
        if (there) {
            asked.set(at);
        }
        return there;
    }

    /** The first half of each digest that nobody asked for, hexadecimal. */
    void eachNotAsked(Consumer<String> first) {
        for (int at = 0; at < firsts.length; at++) {
            if (!empty(at) && !asked.get(at)) {
                first.accept(
                        HexFormat.of().toHexDigits(firsts[at]) + HexFormat.of().toHexDigits(seconds[at]));
            }
        }
    }

    private void add(long first, long second, boolean wasAsked) {
        int at = find(first, second);
        if (empty(at)) {
            firsts[at] = first;
            seconds[at] = second;
            size++;
        }
        asked.set(at, wasAsked);
    }

    private void grow() {
        long[] oldFirsts = firsts;
        long[] oldSeconds = seconds;
        BitSet oldAsked = asked;
        firsts = new long[2 * oldFirsts.length];
        seconds = new long[2 * oldFirsts.length];
        asked = new BitSet();
        size = 0;
        for (int at = 0; at < oldFirsts.length; at++) {
            if (oldFirsts[at] != 0 || oldSeconds[at] != 0) {
                add(oldFirsts[at], oldSeconds[at], oldAsked.get(at));
            }
        }
    }

    private int find(long first, long second) {
        int at = (int) first & (firsts.length - 1);
        while (!empty(at) && (firsts[at] != first || seconds[at] != second)) {
            at = (at + 1) & (firsts.length - 1);
        }
        return at;
    }

    /** No bytes are known whose digest begins with 128 zeros. */
    private boolean empty(int at) {
        return firsts[at] == 0 && seconds[at] == 0;
    }

    private static long half(Digest digest, int which) {
        return HexFormat.fromHexDigitsToLong(digest.hex(), which * LONG_DIGITS, (which + 1) * LONG_DIGITS);
    }
}
