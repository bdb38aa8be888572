package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.LongStream;
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
    @CsvSource({
        "0, false, false, false, false, false",
        "1, true, false, false, false, false",
        "2, false, true, false, false, false",
        "4, false, false, true, false, false",
        "8, false, false, false, true, false",
        "16, false, false, false, false, true",
        "15, true, true, true, true, false",
        "31, true, true, true, true, true",
    })
    void eachInputHasItsBit(
            int bits, boolean emergencyStop, boolean guard, boolean level, boolean override, boolean feedback) {
        Inputs inputs = Inputs.ofBits(bits);
        assertThat(inputs).isEqualTo(new Inputs(emergencyStop, guard, level, override, feedback));
        assertThat(inputs.bits()).isEqualTo(bits);
    }

    @Test
    void armingNeedsFourClosedInputsAndAnOpenContactor() {
        for (int bits = 0; bits <= 31; bits++) {
            Inputs inputs = Inputs.ofBits(bits);
            assertThat(inputs.allClosed()).as("bits %d", bits).isEqualTo(bits == 15 || bits == 31);
            assertThat(inputs.letArm()).as("bits %d", bits).isEqualTo(bits == 15);
            assertThat(inputs.withContactorFeedback(true).bits()).isEqualTo(bits | 16);
            assertThat(inputs.withContactorFeedback(false).bits()).isEqualTo(bits & 15);
        }
    }

    @ParameterizedTest
    @EnumSource(MessageType.class)
    void aTypeIsFoundByItsCodeAndItsCodeTellsTheDirection(MessageType type) {
        assertThat(MessageType.ofCode(type.code())).contains(type);
        assertThat(type.isFromBoard()).isEqualTo(type.code() >= 0x80);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 0x10, 0x7F, 0x80, 0x8B, 0xFF, 0x100})
    void otherCodesAreNoTypes(int code) {
        assertThat(MessageType.ofCode(code)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "HELLO, 0, 0",
        "ARM, 4, 4",
        "DRIVE, 7, 7",
        "STREAM, 3, 3",
        "KEEP_ALIVE, 0, 0",
        "MAKE_SAFE, 0, 0",
        "READ_LIMITS, 0, 0",
        "TIGHTEN, 5, 5",
        "EVENTS_FROM, 2, 2",
        "SELF_TEST, 0, 0",
        "BLOB_READ, 4, 4",
        "BLOB_WRITE, 4, 35",
        "BLOB_COMMIT, 5, 5",
        "WINDOWS, 2, 2",
        "DITHER, 5, 5",
        "IDENTITY, 39, 39",
        "ACKNOWLEDGE, 3, 3",
        "REFUSE, 8, 8",
        "SAMPLE, 58, 58",
        "EVENT, 12, 12",
        "LIMITS, 48, 48",
        "SELF_TEST_RESULT, 4, 4",
        "BLOB_DATA, 5, 69",
        "SHORT_SAMPLE, 30, 30",
        "PULSE_WINDOW, 57, 57",
    })
    void payloadsAreAsLongAsTheSpecificationSays(MessageType type, int shortest, int longest) {
        assertThat(type.shortestPayload()).isEqualTo(shortest);
        assertThat(type.longestPayload()).isEqualTo(longest);
    }

    @Test
    void samplesFitTheLineAsTheSpecificationSays() {
        Sample sample = new Sample(
                0,
                Collections.nCopies(2, MeterCount.START),
                Collections.nCopies(4, AnalogWindow.NONE),
                0,
                List.of(0L, 0L),
                BoardState.SAFE,
                Inputs.ofBits(0),
                0);
        assertThat(FrameEncoder.encode(sample, 0)).hasSize(66);
        assertThat(FrameEncoder.encode(ShortSample.of(sample), 0)).hasSize(38);
    }

    @Test
    void slowCommandsAreGivenMoreTime() {
        assertThat(Timing.hostWaitMs(MessageType.DRIVE)).isEqualTo(200);
        assertThat(Timing.answerWithinMs(MessageType.DRIVE)).isEqualTo(50);
        for (MessageType slow : List.of(MessageType.BLOB_WRITE, MessageType.BLOB_COMMIT, MessageType.SELF_TEST)) {
            assertThat(Timing.hostWaitMs(slow)).isEqualTo(600);
            assertThat(Timing.answerWithinMs(slow)).isEqualTo(500);
        }
    }

    @ParameterizedTest
    @EnumSource(SafeReason.class)
    void aReasonIsFoundByItsCode(SafeReason reason) {
        assertThat(SafeReason.ofCode(reason.code())).isEqualTo(reason);
    }

    @Test
    void codesAreThoseOfTheSpecification() {
        assertThat(SafeReason.OVER_CURRENT.code()).isEqualTo(5);
        assertThat(SafeReason.HARDWARE.code()).isEqualTo(15);
        assertThat(RefuseReason.INPUT_OPEN.code()).isEqualTo(6);
        assertThat(RefuseReason.CONTACTOR_CLOSED.code()).isEqualTo(12);
        assertThat(EventKind.MADE_SAFE.code()).isEqualTo(3);
        assertThat(EventKind.LOCKED.code()).isEqualTo(4);
        assertThat(BoardState.values()).extracting(BoardState::code).containsExactly(0, 1, 2, 3);
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
                Collections.nCopies(2, MeterCount.START),
                Collections.nCopies(4, AnalogWindow.NONE),
                0,
                applied,
                BoardState.SAFE,
                Inputs.ofBits(15),
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

    @Test
    void limitsAreReadByTheirNames() {
        List<Long> values = LongStream.rangeClosed(1, 12)
                .map(number -> number == 12 ? 112 : number)
                .boxed()
                .toList();
        Limits limits = new Limits(values);
        assertThat(List.of(
                        limits.supplyAmps(),
                        limits.supplyAmpsMs(),
                        limits.runTimeMs(),
                        limits.pressure(),
                        limits.pressureMs(),
                        limits.deadHeadPressure(),
                        limits.deadHeadMs(),
                        limits.dryAmps(),
                        limits.dryMs(),
                        limits.volts(),
                        limits.voltsMs(),
                        limits.linkTimeOutMs()))
                .isEqualTo(values);
        assertThat(limits.with(Limit.RUN_TIME, 9).runTimeMs()).isEqualTo(9);
        assertThat(limits.runTimeMs()).isEqualTo(3);
    }

    @ParameterizedTest
    @EnumSource(Limit.class)
    void aLimitIsFoundByItsNumberAndKnowsWhatIsTighter(Limit limit) {
        assertThat(Limit.ofIndex(limit.index())).isEqualTo(limit);
        assertThat(limit.tighterIs())
                .isEqualTo(limit == Limit.DRY_AMPS ? Limit.Strictness.HIGHER : Limit.Strictness.LOWER);
        boolean lower = limit.tighterIs() == Limit.Strictness.LOWER;
        assertThat(limit.wouldWiden(499, 500)).isEqualTo(!lower);
        assertThat(limit.wouldWiden(500, 500)).isFalse();
        assertThat(limit.wouldWiden(501, 500)).isEqualTo(lower);
        assertThat(Limits.widest().of(limit)).isEqualTo(lower ? limit.highest() : limit.lowest());
    }

    @Test
    void selfTestPartsHaveTheBitsOfTheSpecificationAndSomeLock() {
        assertThat(SelfTestPart.failedIn(0xFFFF_FFC0 | 0b10_0101))
                .containsExactlyInAnyOrder(SelfTestPart.PROGRAM_MEMORY, SelfTestPart.STORED_BLOBS, SelfTestPart.CLOCK);
        assertThat(SelfTestPart.failedIn(0b01_1010))
                .containsExactlyInAnyOrder(
                        SelfTestPart.WORKING_MEMORY, SelfTestPart.CONVERTER, SelfTestPart.CONTACTOR_FEEDBACK);
        assertThat(SelfTestPart.values())
                .filteredOn(SelfTestPart::locks)
                .containsExactly(
                        SelfTestPart.PROGRAM_MEMORY,
                        SelfTestPart.WORKING_MEMORY,
                        SelfTestPart.CONVERTER,
                        SelfTestPart.CLOCK);
    }

    @Test
    void aRoleIsLookedForAmongTheChannelsTheBoardHas() {
        Identity board = new Identity(
                UniqueId.NONE,
                new FirmwareVersion(1, 0, 0),
                1,
                new ResetCause(0),
                new ChannelCounts(1, 1, 2),
                1,
                List.of(0, 0),
                List.of(AnalogRole.VOLTS, AnalogRole.SUPPLY_AMPS, AnalogRole.PRESSURE, AnalogRole.NONE),
                new BoardKind("test"));
        assertThat(board.channelOf(AnalogRole.SUPPLY_AMPS)).hasValue(1);
        assertThat(board.channelOf(AnalogRole.PRESSURE)).isEmpty();
        assertThat(board.channelOf(AnalogRole.TEMPERATURE)).isEmpty();
    }

    @Test
    void aShortSampleSaysFullyOnWithItsHighestNumber() {
        Sample whole = new Sample(
                7,
                List.of(new MeterCount(0x1_2345, 5), MeterCount.START),
                Collections.nCopies(4, new AnalogWindow(2, 1, 3)),
                0,
                List.of(65536L, 65534L),
                BoardState.ARMED,
                Inputs.ofBits(31),
                0);
        ShortSample shortened = ShortSample.of(whole);
        assertThat(shortened.applied()).containsExactly(65535, 65534);
        assertThat(shortened.duty(0)).isEqualTo(65536);
        assertThat(shortened.duty(1)).isEqualTo(65534);
        assertThat(shortened.meters()).containsExactly(new ShortCount(0x2345, 5), new ShortCount(0xFF00, 0));
        assertThat(shortened.means()).containsExactly(2, 2, 2, 2);
    }
}
