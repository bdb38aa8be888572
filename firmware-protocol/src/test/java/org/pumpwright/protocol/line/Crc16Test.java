package org.pumpwright.protocol.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class Crc16Test {
    /** The longest frame in bits, its check included. */
    private static final int FRAME_BITS = Wire.MAX_PLAIN_LENGTH * Byte.SIZE;

    @Test
    void theDigits1To9HaveTheCheckValueOfTheCatalogue() {
        // Catalogue of parametrised CRC algorithms, entry CRC-16/IBM-3740: check 29B1h.
        byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
        assertThat(Crc16.of(digits, 0, digits.length)).isEqualTo(0x29B1);
    }

    @Test
    void aMessageWithItsCheckBehindItHighByteFirstLeavesTheResidueOfTheCatalogue() {
        // Same catalogue entry: residue 0000h.
        byte[] whole = {'1', '2', '3', '4', '5', '6', '7', '8', '9', 0x29, (byte) 0xB1};
        assertThat(Crc16.of(whole, 0, whole.length)).isZero();
    }

    @Test
    void nothingHasTheStartValue() {
        assertThat(Crc16.of(new byte[0], 0, 0)).isEqualTo(Crc16.START).isEqualTo(0xFFFF);
    }

    @Property(seed = "5061", tries = 500)
    void itEqualsTheBitByBitDivision(@ForAll byte[] bytes) {
        assertThat(Crc16.of(bytes, 0, bytes.length)).isEqualTo(SlowCrc.of(bytes, bytes.length));
    }

    @Property(seed = "5062", tries = 500)
    void itCanBeContinuedAtAnyPlace(@ForAll byte[] bytes, @ForAll @IntRange(max = 300) int place) {
        int split = Math.min(place, bytes.length);
        int head = Crc16.of(bytes, 0, split);
        assertThat(Crc16.update(head, bytes, split, bytes.length - split)).isEqualTo(SlowCrc.of(bytes, bytes.length));
    }

    /**
     * Hamming distance 4 at the length of the longest frame: what one bit does to the check differs for every bit, and
     * is never what two others do together. Koopman's CRC tables give 32751 data bits as this polynomial's limit for
     * distance 4 (from memory); here it is computed for the length in use.
     */
    @Test
    void oneTwoOrThreeWrongBitsInTheLongestFrameAlwaysShow() {
        int[] effects = new int[FRAME_BITS];
        boolean[] isEffectOfOneBit = new boolean[0x10000];
        for (int bit = 0; bit < FRAME_BITS; bit++) {
            effects[bit] = effectOf(bit);
            assertThat(effects[bit]).isNotZero();
            assertThat(isEffectOfOneBit[effects[bit]]).isFalse();
            isEffectOfOneBit[effects[bit]] = true;
        }
        int hidden = 0;
        for (int first = 0; first < FRAME_BITS; first++) {
            for (int second = first + 1; second < FRAME_BITS; second++) {
                if (isEffectOfOneBit[effects[first] ^ effects[second]]) {
                    hidden++;
                }
            }
        }
        assertThat(hidden).as("triples of bits that cancel out").isZero();
    }

    @Test
    void aPartOutsideTheArrayIsRefused() {
        assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> Crc16.of(new byte[4], 2, 3));
    }

    /** How the difference between computed and sent check changes when one bit of a frame is wrong. */
    private static int effectOf(int bit) {
        int checked = Wire.MAX_PLAIN_LENGTH - Wire.CRC_LENGTH;
        byte[] frame = new byte[Wire.MAX_PLAIN_LENGTH];
        int right = Crc16.of(frame, 0, checked);
        frame[bit / Byte.SIZE] ^= (byte) (1 << bit % Byte.SIZE);
        int sent = (frame[checked] & 0xFF) | (frame[checked + 1] & 0xFF) << 8;
        return right ^ Crc16.of(frame, 0, checked) ^ sent;
    }
}
