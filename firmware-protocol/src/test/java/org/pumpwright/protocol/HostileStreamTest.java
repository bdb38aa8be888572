package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.protocol.line.DropCause;
import org.pumpwright.protocol.line.SlowReceiver;
import org.pumpwright.protocol.line.Wire;

/**
 * Feeds the decoder what no honest sender sends, for {@code pumpwright.fuzz.seconds} (10 unless set), each stream in
 * pieces of every size. A failure names the round; {@link #oneRound} with that number repeats it alone.
 */
class HostileStreamTest {
    private static final long SECONDS = Long.getLong("pumpwright.fuzz.seconds", 10);

    private final Counts counts = new Counts();

    @Test
    void hostileStreamsAreHeardAsTheSpecificationSaysInPiecesOfEverySize() {
        long end = System.nanoTime() + Duration.ofSeconds(SECONDS).toNanos();
        long round = 0;
        while (System.nanoTime() < end) {
            oneRound(round++);
        }
        if (System.getProperty("pumpwright.fuzz.seconds") != null) {
            System.out.println(counts.told(round));
        }
        assertThat(round).isGreaterThan(100);
        assertThat(counts.good).isPositive();
        assertThat(counts.malformed).isPositive();
        assertThat(counts.foreign).isPositive();
        for (DropCause cause : DropCause.values()) {
            assertThat(counts.dropped[cause.ordinal()]).as(cause.name()).isPositive();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3})
    void aRoundIsTheSameEveryTime(long round) {
        assertThat(HostileStream.of(round)).isEqualTo(HostileStream.of(round));
        oneRound(round);
    }

    private void oneRound(long round) {
        byte[] stream = HostileStream.of(round);
        List<Received> whole = hear(stream, stream.length, false, round);
        List<String> expected = SlowReceiver.hear(stream);
        assertThat(whole).as("round %d", round).hasSameSizeAs(expected);
        for (int index = 0; index < expected.size(); index++) {
            assertThat(agrees(expected.get(index), whole.get(index)))
                    .as("round %d: %s for %s", round, whole.get(index), expected.get(index))
                    .isTrue();
        }
        for (int pieceLength = 1; pieceLength < stream.length; pieceLength++) {
            List<Received> inPieces = hear(stream, pieceLength, false, round);
            // Compared by hand first: a fluent assertion for each of millions would be most of the time.
            if (!whole.equals(inPieces)) {
                assertThat(inPieces)
                        .as("round %d in pieces of %d", round, pieceLength)
                        .isEqualTo(whole);
            }
        }
        assertThat(hear(stream, 1 + (int) (round % stream.length), true, round))
                .as("round %d on an opened line", round)
                .isEqualTo(Heard.in(afterFirstDelimiter(stream)));
        counts.add(stream, whole);
    }

    private static List<Received> hear(byte[] stream, int pieceLength, boolean opened, long round) {
        List<Received> heard = new ArrayList<>();
        FrameDecoder decoder = opened ? new FrameDecoder(heard::add) : FrameDecoder.synchronised(heard::add);
        for (int at = 0; at < stream.length; at += pieceLength) {
            decoder.receive(stream, at, Math.min(pieceLength, stream.length - at));
            if (decoder.stored() < 0 || decoder.stored() > Wire.MAX_ENCODED_LENGTH) {
                throw new AssertionError("round " + round + ": " + decoder.stored() + " bytes stored");
            }
        }
        return heard;
    }

    /**
     * Whether the slow receiver, which computes check and stuffing in its own way, says the same. A message is written
     * out again from its fields, so it can only agree when it says what a sound frame said.
     */
    private static boolean agrees(String slow, Received received) {
        if (received instanceof Received.Dropped dropped) {
            return slow.equals(dropped.cause().name());
        } else if (received instanceof Received.Good good) {
            return slow.equals(plain(FrameEncoder.encode(good.message(), good.sequence())));
        } else if (received instanceof Received.Foreign foreign) {
            byte[] payload = foreign.payload().toArray();
            return foreign.version() != Wire.VERSION
                    && slow.equals(plain(
                            FrameEncoder.encodeRaw(foreign.version(), foreign.type(), foreign.sequence(), payload)));
        }
        return agrees(slow, (Received.Malformed) received);
    }

    private static boolean agrees(String slow, Received.Malformed malformed) {
        byte[] header = {
            Wire.VERSION, (byte) malformed.type(), (byte) malformed.sequence(), (byte) (malformed.sequence() >> 8)
        };
        int payload = slow.length() / 2 - Wire.MIN_PLAIN_LENGTH;
        return slow.startsWith(HexFormat.of().formatHex(header))
                && reason(malformed.type(), payload) == malformed.reason();
    }

    private static RefuseReason reason(int type, int payload) {
        return MessageType.ofCode(type)
                .map(known -> payload < known.shortestPayload() || payload > known.longestPayload()
                        ? RefuseReason.WRONG_LENGTH
                        : RefuseReason.OUT_OF_RANGE)
                .orElse(RefuseReason.UNKNOWN_TYPE);
    }

    private static String plain(byte[] frame) {
        return SlowReceiver.hear(frame).get(0);
    }

    private static byte[] afterFirstDelimiter(byte[] stream) {
        int at = 0;
        while (at < stream.length && stream[at] != Wire.DELIMITER) {
            at++;
        }
        return Arrays.copyOfRange(stream, Math.min(at + 1, stream.length), stream.length);
    }

    private static final class Counts {
        private final long[] dropped = new long[DropCause.values().length];
        private long good;
        private long foreign;
        private long malformed;
        private long bytes;
        private long pieces;

        void add(byte[] stream, List<Received> heard) {
            bytes += stream.length;
            pieces += stream.length + 1L;
            for (Received received : heard) {
                if (received instanceof Received.Good) {
                    good++;
                } else if (received instanceof Received.Foreign) {
                    foreign++;
                } else if (received instanceof Received.Dropped drop) {
                    dropped[drop.cause().ordinal()]++;
                } else {
                    malformed++;
                }
            }
        }

        String told(long rounds) {
            return String.format(
                    Locale.ROOT,
                    "%d hostile streams, %d bytes, decoded %d times: %d good, %d malformed, %d foreign, dropped %s %s",
                    rounds,
                    bytes,
                    pieces,
                    good,
                    malformed,
                    foreign,
                    Arrays.toString(DropCause.values()),
                    Arrays.toString(dropped));
        }
    }
}
