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
    void aResetCauseIsToldInPlainWords(int bits, String words) {
        assertThat(new ResetCause(bits).describe()).isEqualTo(words);
    }

    @Test
    void aResetCauseCanBeAskedForEachCause() {
        ResetCause cause = new ResetCause(ResetCause.WATCHDOG);
        assertThat(cause.has(ResetCause.WATCHDOG)).isTrue();
        assertThat(cause.has(ResetCause.BROWN_OUT)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"0, false, false", "1, true, false", "2, false, true", "3, true, true"})
    void inputBitsAreEmergencyStopAndGuard(int bits, boolean emergencyStop, boolean guard) {
        Inputs inputs = Inputs.ofBits(bits);
        assertThat(inputs).isEqualTo(new Inputs(emergencyStop, guard));
        assertThat(inputs.bits()).isEqualTo(bits);
        assertThat(inputs.allClosed()).isEqualTo(bits == 3);
    }

    @ParameterizedTest
    @EnumSource(MessageType.class)
    void aTypeIsFoundByItsCodeAndItsCodeTellsTheDirection(MessageType type) {
        assertThat(MessageType.ofCode(type.code())).contains(type);
        assertThat(type.isFromBoard()).isEqualTo(type.code() >= 0x80);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 7, 0x7F, 0x80, 0x86, 0xFF, 0x100})
    void otherCodesAreNoTypes(int code) {
        assertThat(MessageType.ofCode(code)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"SAMPLE, 58", "EVENT, 12", "IDENTITY, 44", "ACKNOWLEDGE, 3", "REFUSE, 8", "HELLO, 0"})
    void payloadsAreAsLongAsTheSpecificationSays(MessageType type, int length) {
        assertThat(type.payloadLength()).isEqualTo(length);
    }

    @ParameterizedTest
    @EnumSource(SafeReason.class)
    void aReasonIsFoundByItsCode(SafeReason reason) {
        assertThat(SafeReason.ofCode(reason.code())).isEqualTo(reason);
    }

    @Test
    void codesAreThoseOfTheSpecification() {
        assertThat(SafeReason.OVER_CURRENT.code()).isEqualTo(5);
        assertThat(RefuseReason.INPUT_OPEN.code()).isEqualTo(6);
        assertThat(EventKind.MADE_SAFE.code()).isEqualTo(3);
        assertThat(BoardState.ARMED.code()).isEqualTo(1);
    }

    @Test
    void aUniqueIdIsReadAndShownInTheOrderOfTheLine() {
        UniqueId id = UniqueId.parse("00112233445566ff");
        assertThat(id).hasToString("00112233445566ff");
        assertThat(id.value()).isEqualTo(0x0011_2233_4455_66FFL);
        assertThat(id.isGiven()).isTrue();
        assertThat(UniqueId.NONE.isGiven()).isFalse();
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> UniqueId.parse("001122334455667g"));
    }

    @Test
    void aSampleDoesNotChangeWithTheListItWasMadeOf() {
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
    void octetsDoNotChangeWithTheArrayTheyWereMadeOf() {
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
