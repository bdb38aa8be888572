package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The small types the messages are made of. */
class VocabularyTest {
    @ParameterizedTest
    @CsvSource({
        "0, unknown",
        "1, power-on",
        "2, external",
        "3, power-on and external",
        "4, brown-out",
        "8, watchdog",
        "15, power-on and external and brown-out and watchdog",
    })
    void a_reset_cause_is_told_in_plain_words(int bits, String words) {
        assertThat(new ResetCause(bits).describe()).isEqualTo(words);
    }

    @Test
    void a_reset_cause_can_be_asked_for_each_cause() {
        ResetCause cause = new ResetCause(ResetCause.WATCHDOG);
        assertThat(cause.has(ResetCause.WATCHDOG)).isTrue();
        assertThat(cause.has(ResetCause.BROWN_OUT)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"0, false, false", "1, true, false", "2, false, true", "3, true, true"})
    void input_bits_are_emergency_stop_and_guard(int bits, boolean emergencyStop, boolean guard) {
        Inputs inputs = Inputs.ofBits(bits);
        assertThat(inputs).isEqualTo(new Inputs(emergencyStop, guard));
        assertThat(inputs.bits()).isEqualTo(bits);
        assertThat(inputs.allClosed()).isEqualTo(bits == 3);
    }

    @ParameterizedTest
    @EnumSource(MessageType.class)
    void a_type_is_found_by_its_code_and_its_code_tells_the_direction(MessageType type) {
        assertThat(MessageType.ofCode(type.code())).contains(type);
        assertThat(type.isFromBoard()).isEqualTo(type.code() >= 0x80);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 7, 0x7F, 0x80, 0x86, 0xFF, 0x100})
    void other_codes_are_no_types(int code) {
        assertThat(MessageType.ofCode(code)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"SAMPLE, 58", "EVENT, 12", "IDENTITY, 44", "ACKNOWLEDGE, 3", "REFUSE, 8", "HELLO, 0"})
    void payloads_are_as_long_as_the_specification_says(MessageType type, int length) {
        assertThat(type.payloadLength()).isEqualTo(length);
    }

    @ParameterizedTest
    @EnumSource(SafeReason.class)
    void a_reason_is_found_by_its_code(SafeReason reason) {
        assertThat(SafeReason.ofCode(reason.code())).isEqualTo(reason);
    }

    @Test
    void codes_are_those_of_the_specification() {
        assertThat(SafeReason.OVER_CURRENT.code()).isEqualTo(5);
        assertThat(RefuseReason.INPUT_OPEN.code()).isEqualTo(6);
        assertThat(EventKind.MADE_SAFE.code()).isEqualTo(3);
        assertThat(BoardState.ARMED.code()).isEqualTo(1);
    }

    @Test
    void a_unique_id_is_read_and_shown_in_the_order_of_the_line() {
        UniqueId id = UniqueId.parse("00112233445566ff");
        assertThat(id).hasToString("00112233445566ff");
        assertThat(id.value()).isEqualTo(0x0011_2233_4455_66FFL);
        assertThat(id.isGiven()).isTrue();
        assertThat(UniqueId.NONE.isGiven()).isFalse();
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> UniqueId.parse("001122334455667g"));
    }

    @Test
    void a_sample_does_not_change_with_the_list_it_was_made_of() {
        List<Long> applied = new ArrayList<>(List.of(1L, 2L));
        Sample sample = new Sample(
                0,
                Collections.nCopies(2, MeterCount.NONE),
                Collections.nCopies(4, AnalogWindow.NONE),
                0,
                applied,
                BoardState.SAFE,
                new Inputs(true, true),
                0);
        applied.set(0, 9L);
        assertThat(sample.applied()).containsExactly(1L, 2L);
    }

    @Test
    void octets_do_not_change_with_the_array_they_were_made_of() {
        byte[] bytes = {1, (byte) 0xAB};
        Octets octets = Octets.of(bytes);
        bytes[0] = 9;
        octets.toArray()[1] = 9;
        assertThat(octets)
                .hasToString("01 ab")
                .isEqualTo(Octets.of((byte) 1, (byte) 0xAB))
                .hasSameHashCodeAs(Octets.of((byte) 1, (byte) 0xAB));
        assertThat(octets.size()).isEqualTo(2);
    }
}
