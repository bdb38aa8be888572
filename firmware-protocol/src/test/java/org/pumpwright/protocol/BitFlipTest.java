package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pumpwright.protocol.line.DropCause;

/**
 * What wrong bits on the line can do.
 *
 * <p>Guaranteed: wrong bits that leave the stuffing as it is (they hit data bytes and make no zero of them) are wrong
 * bits of the plain frame, one for one, and the CRC finds any three of them at this length. A wrong length code, a zero
 * where none was, or a lost delimiter moves bytes about: that is any number of wrong bits for the CRC, which then lets
 * one in 65536 pass. For those, every pair of flips in every golden frame is tried and the share is held against that.
 */
class BitFlipTest {
    private static final Message BEFORE = new Acknowledge(1, 2);
    private static final Message AFTER = new Acknowledge(3, 4);
    private static final byte[] FRAME_BEFORE = FrameEncoder.encode(BEFORE, 900);
    private static final byte[] FRAME_AFTER = FrameEncoder.encode(AFTER, 902);
    private static final double CRC_PASSES_ONE_IN = 65536;

    static List<GoldenFrame> good() {
        return GoldenFrame.good();
    }

    @ParameterizedTest
    @MethodSource("good")
    void oneOrTwoWrongBitsThatLeaveTheStuffingAloneAreAlwaysABadCrc(GoldenFrame golden) {
        byte[] frame = golden.frame().toArray();
        List<Integer> data = dataBits(frame);
        for (int first = 0; first < data.size(); first++) {
            for (int second = first; second < data.size(); second++) {
                byte[] wrong = frame.clone();
                flip(wrong, data.get(first));
                if (second != first) {
                    flip(wrong, data.get(second));
                }
                if (hasNoNewZero(wrong)) {
                    assertThat(Heard.in(wrong)).containsExactly(new Received.Dropped(DropCause.BAD_CRC));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("good")
    void threeWrongBitsThatLeaveTheStuffingAloneAreAlwaysABadCrc(GoldenFrame golden) {
        byte[] frame = golden.frame().toArray();
        List<Integer> data = dataBits(frame);
        Random random = new Random(5091);
        for (int turn = 0; turn < 5000; turn++) {
            byte[] wrong = frame.clone();
            random.ints(0, data.size()).distinct().limit(3).forEach(index -> flip(wrong, data.get(index)));
            if (hasNoNewZero(wrong)) {
                assertThat(Heard.in(wrong)).containsExactly(new Received.Dropped(DropCause.BAD_CRC));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("good")
    void aSingleWrongBitAnywhereInAGoldenFrameNeverMakesAnotherMessage(GoldenFrame golden) {
        byte[] frame = golden.frame().toArray();
        for (int bit = 0; bit < frame.length * Byte.SIZE; bit++) {
            byte[] wrong = frame.clone();
            flip(wrong, bit);
            assertThat(falseMessages(golden, wrong)).as("bit %d", bit).isZero();
        }
    }

    @Test
    void twoWrongBitsThatHurtTheStuffingPassNoMoreOftenThanTheCheckMustLetThem() {
        long tried = 0;
        long passed = 0;
        for (GoldenFrame golden : good()) {
            byte[] frame = golden.frame().toArray();
            for (int first = 0; first < frame.length * Byte.SIZE; first++) {
                for (int second = first + 1; second < frame.length * Byte.SIZE; second++) {
                    byte[] wrong = frame.clone();
                    flip(wrong, first);
                    flip(wrong, second);
                    if (!stuffingIsWhole(frame, first, second, wrong)) {
                        tried++;
                        passed += falseMessages(golden, wrong);
                    }
                }
            }
        }
        double expected = tried / CRC_PASSES_ONE_IN;
        assertThat(tried).isGreaterThan(50_000);
        assertThat((double) passed).isLessThanOrEqualTo(expected + 5 * Math.sqrt(expected));
    }

    @ParameterizedTest
    @MethodSource("good")
    void damageEndsAtTheNextDelimiter(GoldenFrame golden) {
        byte[] frame = golden.frame().toArray();
        for (int bit = 0; bit < frame.length * Byte.SIZE; bit++) {
            byte[] wrong = frame.clone();
            flip(wrong, bit);
            List<Received> heard = Heard.in(Heard.joined(FRAME_BEFORE, wrong, FRAME_AFTER, FRAME_AFTER));
            boolean lostDelimiter = wrong[wrong.length - 1] != 0;
            assertThat(heard).first().isEqualTo(new Received.Good(900, BEFORE));
            assertThat(heard.stream().filter(new Received.Good(902, AFTER)::equals))
                    .as("frames behind a wrong bit %d", bit)
                    .hasSize(lostDelimiter ? 1 : 2);
        }
    }

    /** How many messages are heard that nobody sent. */
    private static long falseMessages(GoldenFrame golden, byte[] wrong) {
        List<Received> sent = List.of(
                new Received.Good(900, BEFORE),
                new Received.Good(golden.sequence(), GoldenFields.message(golden.fields())),
                new Received.Good(902, AFTER));
        return Heard.in(Heard.joined(FRAME_BEFORE, wrong, FRAME_AFTER)).stream()
                .filter(Received.Good.class::isInstance)
                .filter(heard -> !sent.contains(heard))
                .count();
    }

    private static boolean stuffingIsWhole(byte[] frame, int first, int second, byte[] wrong) {
        return isData(frame, first / Byte.SIZE) && isData(frame, second / Byte.SIZE) && hasNoNewZero(wrong);
    }

    private static List<Integer> dataBits(byte[] frame) {
        List<Integer> bits = new ArrayList<>();
        for (int bit = 0; bit < frame.length * Byte.SIZE; bit++) {
            if (isData(frame, bit / Byte.SIZE)) {
                bits.add(bit);
            }
        }
        return bits;
    }

    /** Whether the byte is neither a length code nor the delimiter. */
    private static boolean isData(byte[] frame, int position) {
        int code = 0;
        while (code < position && frame[code] != 0) {
            code += frame[code];
        }
        return code != position;
    }

    private static boolean hasNoNewZero(byte[] wrong) {
        for (int position = 0; position < wrong.length - 1; position++) {
            if (wrong[position] == 0) {
                return false;
            }
        }
        return true;
    }

    private static void flip(byte[] bytes, int bit) {
        bytes[bit / Byte.SIZE] ^= (byte) (1 << bit % Byte.SIZE);
    }
}
