package org.pumpwright.protocol.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.api.Test;

class LineReceiverTest {
    private static final byte[] FRAME = frameOf(new byte[] {1, 6, 7, 0});

    /** Writes down every call. */
    static final class Notes implements FrameSink {
        final List<String> lines = new ArrayList<>();

        @Override
        public void frame(byte[] plain, int length) {
            lines.add(HexFormat.of().formatHex(plain, 0, length));
        }

        @Override
        public void dropped(DropCause cause) {
            lines.add(cause.name());
        }
    }

    @Test
    void everythingBeforeTheFirstDelimiterIsThrownAwayOnAnOpenedLine() {
        Notes notes = new Notes();
        LineReceiver receiver = LineReceiver.onOpenedLine(notes);
        receive(receiver, FRAME);
        assertThat(notes.lines).isEmpty();
        receive(receiver, FRAME);
        assertThat(notes.lines).containsExactly(plainHex());
    }

    @Test
    void aLeadingDelimiterMakesTheFirstFrameHeardOnAnOpenedLine() {
        Notes notes = new Notes();
        LineReceiver receiver = LineReceiver.onOpenedLine(notes);
        receive(receiver, new byte[] {0x55, 0x55, 0});
        receive(receiver, FRAME);
        assertThat(notes.lines).containsExactly(plainHex());
    }

    @Test
    void delimitersInARowMeanNothing() {
        Notes notes = new Notes();
        LineReceiver receiver = LineReceiver.atFrameBoundary(notes);
        receive(receiver, new byte[5]);
        receive(receiver, FRAME);
        receive(receiver, new byte[5]);
        assertThat(notes.lines).containsExactly(plainHex());
    }

    @Test
    void tenMegabytesWithoutADelimiterAreReportedOnceAndNotStored() {
        Notes notes = new Notes();
        LineReceiver receiver = LineReceiver.atFrameBoundary(notes);
        byte[] piece = new byte[1000];
        Arrays.fill(piece, (byte) 1);
        for (int pieces = 0; pieces < 10_000; pieces++) {
            receive(receiver, piece);
            assertThat(receiver.stored()).isZero();
        }
        assertThat(notes.lines).containsExactly("BAD_LENGTH");
        receive(receiver, new byte[] {0});
        receive(receiver, FRAME);
        assertThat(notes.lines).containsExactly("BAD_LENGTH", plainHex());
    }

    @Test
    void theLongestFrameIsStoredWholeAndOneByteMoreIsNot() {
        Notes notes = new Notes();
        LineReceiver receiver = LineReceiver.atFrameBoundary(notes);
        byte[] longest = frameOf(new byte[Wire.MAX_PLAIN_LENGTH - Wire.CRC_LENGTH]);
        receiver.receive(longest, 0, longest.length - 1);
        assertThat(receiver.stored()).isEqualTo(Wire.MAX_ENCODED_LENGTH);
        receive(receiver, new byte[] {0});
        receiver.receive(longest, 0, longest.length - 1);
        receive(receiver, new byte[] {1});
        assertThat(receiver.stored()).isZero();
        assertThat(notes.lines).hasSize(2).last().isEqualTo("BAD_LENGTH");
    }

    @Test
    void aListenerThatThrowsCostsTheRestOfTheChunkAndNoMore() {
        List<String> heard = new ArrayList<>();
        LineReceiver receiver = LineReceiver.atFrameBoundary(new FrameSink() {
            @Override
            public void frame(byte[] plain, int length) {
                heard.add("frame");
                if (heard.size() == 1) {
                    throw new IllegalStateException("listener broke");
                }
            }

            @Override
            public void dropped(DropCause cause) {
                heard.add(cause.name());
            }
        });
        byte[] chunk = Arrays.copyOf(FRAME, 2 * FRAME.length - 3);
        System.arraycopy(FRAME, 0, chunk, FRAME.length, FRAME.length - 3);
        assertThatIllegalStateException()
                .isThrownBy(() -> receive(receiver, chunk))
                .withMessage("listener broke");
        receiver.receive(FRAME, FRAME.length - 3, 3);
        receive(receiver, FRAME);
        assertThat(heard).containsExactly("frame", "frame");
    }

    @Test
    void resynchronisingForgetsABegunFrame() {
        Notes notes = new Notes();
        LineReceiver receiver = LineReceiver.atFrameBoundary(notes);
        receiver.receive(FRAME, 0, 4);
        assertThat(receiver.stored()).isEqualTo(4);
        receiver.resynchronise();
        assertThat(receiver.stored()).isZero();
        receive(receiver, new byte[] {5, 5, 0});
        receive(receiver, FRAME);
        assertThat(notes.lines).containsExactly(plainHex());
    }

    @Property(seed = "5071", tries = 2000)
    void anyStreamInAnyPiecesIsHeardAsASlowAndObviousReceiverHearsIt(
            @ForAll("lines") byte[] line, @ForAll("pieces") List<Integer> pieces) {
        Notes notes = new Notes();
        LineReceiver receiver = LineReceiver.atFrameBoundary(notes);
        int at = 0;
        for (int turn = 0; at < line.length; turn++) {
            int length = Math.min(pieces.get(turn % pieces.size()), line.length - at);
            receiver.receive(line, at, length);
            assertThat(receiver.stored()).isBetween(0, Wire.MAX_ENCODED_LENGTH);
            at += length;
        }
        assertThat(notes.lines).isEqualTo(SlowReceiver.hear(line));
    }

    @Test
    void nothingIsAllocatedForFramesOrForRubbish() {
        // The HotSpot JVM that the build asks for counts allocations; another one fails here rather than passing
        // unseen.
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long[] sum = new long[1];
        LineReceiver receiver = LineReceiver.atFrameBoundary(new FrameSink() {
            @Override
            public void frame(byte[] plain, int length) {
                sum[0] += length;
            }

            @Override
            public void dropped(DropCause cause) {
                sum[0]++;
            }
        });
        byte[] rubbish = new byte[4096];
        new Random(5072).nextBytes(rubbish);
        feed(receiver, rubbish, 10);
        long before = threads.getCurrentThreadAllocatedBytes();
        feed(receiver, rubbish, 2000);
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;
        assertThat(sum[0]).isGreaterThan(20_000);
        assertThat(allocated)
                .as("bytes for 2000 rounds; one a round would be too many")
                .isLessThan(2000);
    }

    private static void feed(LineReceiver receiver, byte[] rubbish, int rounds) {
        for (int round = 0; round < rounds; round++) {
            receiver.receive(rubbish, 0, rubbish.length);
            receiver.receive(FRAME, 0, 3);
            receiver.receive(FRAME, 3, FRAME.length - 3);
        }
    }

    /** Sound frames, broken frames, rubbish and idle filling in any order. */
    @Provide
    Arbitrary<byte[]> lines() {
        Arbitrary<byte[]> sound = Arbitraries.bytes()
                .array(byte[].class)
                .ofMinSize(2)
                .ofMaxSize(125)
                .map(LineReceiverTest::frameOf);
        Arbitrary<byte[]> rubbish = Arbitraries.frequencyOf(
                        Tuple.of(1, Arbitraries.just((byte) 0)),
                        Tuple.of(5, Arbitraries.bytes().between((byte) 1, (byte) 4)),
                        Tuple.of(5, Arbitraries.bytes()))
                .array(byte[].class)
                .ofMaxSize(260);
        return Arbitraries.oneOf(sound, rubbish).list().ofMaxSize(6).map(LineReceiverTest::joined);
    }

    @Provide
    Arbitrary<List<Integer>> pieces() {
        return Arbitraries.integers().between(1, 200).list().ofMinSize(1).ofMaxSize(8);
    }

    private static byte[] joined(List<byte[]> parts) {
        byte[] joined = new byte[parts.stream().mapToInt(part -> part.length).sum()];
        int at = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, joined, at, part.length);
            at += part.length;
        }
        return joined;
    }

    private static byte[] frameOf(byte[] checked) {
        byte[] plain = Arrays.copyOf(checked, checked.length + 2);
        int crc = Crc16.of(checked, 0, checked.length);
        plain[checked.length] = (byte) crc;
        plain[checked.length + 1] = (byte) (crc >> 8);
        byte[] encoded = Cobs.encode(plain);
        return Arrays.copyOf(encoded, encoded.length + 1);
    }

    private static String plainHex() {
        return SlowReceiver.hear(FRAME).get(0);
    }

    private static void receive(LineReceiver receiver, byte[] bytes) {
        receiver.receive(bytes, 0, bytes.length);
    }
}
