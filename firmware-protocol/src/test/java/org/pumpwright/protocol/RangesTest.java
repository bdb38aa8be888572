package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RangesTest {
    private static final List<MeterCount> METERS = List.of(MeterCount.START, MeterCount.START);
    private static final List<AnalogWindow> ANALOGS = Collections.nCopies(4, AnalogWindow.NONE);
    private static final Inputs CLOSED = Inputs.ofBits(31);
    private static final List<AnalogRole> NO_ROLES = Collections.nCopies(4, AnalogRole.NONE);
    private static final ChannelCounts ONE_ANALOG = new ChannelCounts(1, 1, 1);

    static Stream<Arguments> refusals() {
        return Stream.of(
                refusal(() -> new Arm(-1), "arm boot id -1 is outside 0..4294967295 (u32)"),
                refusal(() -> new Arm(1L << 32), "arm boot id 4294967296 is outside 0..4294967295 (u32)"),
                refusal(() -> new Drive(2, 0, 0), "drive channel 2 is outside 0..1 (number of the drive)"),
                refusal(() -> new Drive(0, 65537, 0), "drive duty 65537 is outside 0..65536 (1/65536 of fully on)"),
                refusal(() -> new Drive(0, 0, 65536), "drive ramp 65536 is outside 0..65535 (1/65536 per ms)"),
                refusal(
                        () -> org.pumpwright.protocol.Stream.every(-1),
                        "stream period -1 is outside 0..1000 (ms, 0 for no samples)"),
                refusal(
                        () -> org.pumpwright.protocol.Stream.every(1001),
                        "stream period 1001 is outside 0..1000 (ms, 0 for no samples)"),
                refusal(
                        () -> new Acknowledge(65536, 0),
                        "acknowledge sequence answered 65536 is outside 0..65535 (u16)"),
                refusal(() -> new Acknowledge(0, 256), "acknowledge type answered 256 is outside 0..255 (u8)"),
                refusal(
                        () -> new Refuse(-1, 0, RefuseReason.NOT_ARMED, 0),
                        "refuse sequence answered -1 is outside 0..65535 (u16)"),
                refusal(
                        () -> new Refuse(0, -1, RefuseReason.NOT_ARMED, 0),
                        "refuse type answered -1 is outside 0..255 (u8)"),
                refusal(() -> RefuseReason.ofCode(13), "refuse reason 13 is outside 1..12 (code)"),
                refusal(() -> SafeReason.ofCode(16), "event reason 16 is outside 0..15 (code)"),
                refusal(() -> EventKind.ofCode(0), "event kind 0 is outside 1..4 (code)"),
                refusal(() -> BoardState.ofCode(4), "board state 4 is outside 0..3 (code)"),
                refusal(() -> Inputs.ofBits(32), "input bits 32 is outside 0..31 (bits)"),
                refusal(() -> new ResetCause(16), "reset cause 16 is outside 0..15 (bits)"),
                refusal(
                        () -> new Event(1, 0, EventKind.ARMED, SafeReason.RESET, 0),
                        "event reason 6 is outside 0..0 (code, for an event of kind ARMED)"),
                refusal(
                        () -> new Event(1, 0, EventKind.MADE_SAFE, SafeReason.NONE, 0),
                        "event reason 0 is outside 1..14 (code, for an event of kind MADE_SAFE)"),
                refusal(
                        () -> new Event(1, 0, EventKind.MADE_SAFE, SafeReason.RESET, 0),
                        "event reason 6 is outside 1..14 (code but 6, for an event of kind MADE_SAFE)"),
                refusal(
                        () -> new Event(1, 0, EventKind.MADE_SAFE, SafeReason.HARDWARE, 0),
                        "event reason 15 is outside 1..14 (code, for an event of kind MADE_SAFE)"),
                refusal(
                        () -> new Event(1, 0, EventKind.STARTED, SafeReason.HARDWARE, 0),
                        "event reason 15 is outside 6..6 (code, for an event of kind STARTED)"),
                refusal(
                        () -> new Event(1, 0, EventKind.LOCKED, SafeReason.CONTACTOR, 0),
                        "event reason 9 is outside 15..15 (code, for an event of kind LOCKED)"),
                refusal(
                        () -> new Event(65536, 0, EventKind.ARMED, SafeReason.NONE, 0),
                        "event number 65536 is outside 0..65535 (u16)"),
                refusal(
                        () -> new Event(1, -1, EventKind.ARMED, SafeReason.NONE, 0),
                        "event board time -1 is outside 0..4294967295 (ticks)"));
    }

    static Stream<Arguments> refusalsOfCommands() {
        Octets one = Octets.of((byte) 1);
        return Stream.of(
                refusal(() -> SampleKind.ofCode(2), "stream kind 2 is outside 0..1 (code)"),
                refusal(() -> Limit.ofIndex(12), "limit 12 is outside 0..11 (number of the limit)"),
                refusal(
                        () -> new Tighten(Limit.RUN_TIME, 7_200_001),
                        "limit run time 7200001 is outside 0..7200000 (ms)"),
                refusal(() -> new Tighten(Limit.LINK_TIME_OUT, 99), "limit link time-out 99 is outside 100..1000 (ms)"),
                refusal(
                        () -> new Tighten(Limit.DRY_AMPS, 65536),
                        "limit dry amps 65536 is outside 0..65535 (1/65536 of the reference)"),
                refusal(() -> new EventsFrom(65536), "events-from number 65536 is outside 0..65535 (u16)"),
                refusal(() -> new Windows(99), "windows period 99 is outside 100..10000 (ms, or 0 for no windows)"),
                refusal(
                        () -> new Windows(10_001),
                        "windows period 10001 is outside 100..10000 (ms, or 0 for no windows)"),
                refusal(() -> new Dither(2, 0, 50), "dither channel 2 is outside 0..1 (number of the drive)"),
                refusal(
                        () -> new Dither(0, 8193, 50),
                        "dither amplitude 8193 is outside 0..8192 (1/65536 of fully on)"),
                refusal(() -> new Dither(0, 0, 49), "dither frequency 49 is outside 50..250 (Hz)"),
                refusal(() -> Blob.ofCode(2), "blob 2 is outside 0..1 (number of the blob)"),
                refusal(() -> new BlobRead(Blob.CALIBRATION, 256, 1), "blob-read offset 256 is outside 0..255 (bytes)"),
                refusal(() -> new BlobRead(Blob.CALIBRATION, 0, 65), "blob-read length 65 is outside 1..64 (bytes)"),
                refusal(
                        () -> new BlobWrite(Blob.IDENTITY, 0, Octets.of()),
                        "blob-write bytes 0 is outside 1..32 (bytes)"),
                refusal(
                        () -> new BlobWrite(Blob.IDENTITY, 256, one),
                        "blob-write offset 256 is outside 0..255 (bytes)"),
                refusal(
                        () -> new BlobWrite(Blob.IDENTITY, 255, Octets.of(new byte[2])),
                        "blob-write end 257 is outside 1..256 (bytes)"),
                refusal(
                        () -> new BlobCommit(Blob.IDENTITY, 257, 0),
                        "blob-commit length 257 is outside 1..256 (bytes)"),
                refusal(
                        () -> new BlobCommit(Blob.IDENTITY, 1, 65536),
                        "blob-commit check 65536 is outside 0..65535 (u16)"));
    }

    static Stream<Arguments> refusalsOfAnswers() {
        return Stream.of(
                refusal(() -> new Limits(List.of()), "limits 0 is outside 12..12 (places)"),
                refusal(
                        () -> Limits.widest().with(Limit.VOLTS_TIME, 1001),
                        "limit volts time 1001 is outside 0..1000 (ms)"),
                refusal(() -> new SelfTestResult(64, 0), "self-test tried 64 is outside 0..63 (bits)"),
                refusal(() -> new SelfTestResult(1, 64), "self-test failed 64 is outside 0..63 (bits)"),
                refusal(() -> new SelfTestResult(5, 2), "self-test failed 2 is outside 0..5 (bits, those tried only)"),
                refusal(
                        () -> new BlobData(Blob.IDENTITY, 0, 257, Octets.of()),
                        "blob-data total 257 is outside 0..256 (bytes)"),
                refusal(
                        () -> new BlobData(Blob.IDENTITY, 0, 256, Octets.of(new byte[65])),
                        "blob-data bytes 65 is outside 0..64 (bytes)"),
                refusal(
                        () -> new BlobData(Blob.IDENTITY, 8, 10, Octets.of(new byte[3])),
                        "blob-data end 11 is outside 1..10 (bytes of the stored blob)"),
                refusal(() -> new ShortCount(65536, 0), "short meter edge count 65536 is outside 0..65535 (edges)"),
                refusal(
                        () -> shortSample(List.of(0, 0, 0, 65536), List.of(0, 0)),
                        "short sample mean 65536 is outside 0..65535 (1/65536 of the reference)"),
                refusal(
                        () -> shortSample(List.of(0, 0, 0), List.of(0, 0)),
                        "short sample analogue channels 3 is outside 4..4 (places)"),
                refusal(
                        () -> shortSample(List.of(0, 0, 0, 0), List.of(0, 65536)),
                        "short sample drive applied 65536 is outside 0..65535 (1/65536 of fully on)"),
                refusal(
                        () -> new PulseWindow(2, 0, 0, 0, 0, 0, PulseIntervals.NONE),
                        "pulse window meter 2 is outside 0..1 (number of the meter)"),
                refusal(
                        () -> new PulseWindow(0, 0, 0, 65536, 0, 0, PulseIntervals.NONE),
                        "pulse window edges 65536 is outside 0..65535 (edges)"),
                refusal(
                        () -> new PulseIntervals(1, 0, 0, 0, 20, 10, 0, 0, 0),
                        "pulse window shortest interval 20 is outside 0..10 (ticks, at most the longest)"));
    }

    static Stream<Arguments> refusalsOfMeasurements() {
        return Stream.of(
                refusal(() -> new MeterCount(-1, 0), "meter edge count -1 is outside 0..4294967295 (edges)"),
                refusal(
                        () -> new MeterCount(0, 1L << 32),
                        "meter last edge 4294967296 is outside 0..4294967295 (ticks)"),
                refusal(
                        () -> new AnalogWindow(65536, 0, 65535),
                        "analogue mean 65536 is outside 0..65535 (1/65536 of the reference)"),
                refusal(
                        () -> new AnalogWindow(10, 11, 12),
                        "analogue min 11 is outside 0..10 (1/65536 of the reference, at most the mean)"),
                refusal(
                        () -> new AnalogWindow(10, 9, 8),
                        "analogue max 8 is outside 10..65535 (1/65536 of the reference, at least the mean)"),
                refusal(
                        () -> sample(-1, METERS, ANALOGS, 0, List.of(0L, 0L), 0),
                        "sample board time -1 is outside 0..4294967295 (ticks)"),
                refusal(
                        () -> sample(0, List.of(MeterCount.START), ANALOGS, 0, List.of(0L, 0L), 0),
                        "sample meters 1 is outside 2..2 (places)"),
                refusal(
                        () -> sample(0, METERS, List.of(), 0, List.of(0L, 0L), 0),
                        "sample analogue channels 0 is outside 4..4 (places)"),
                refusal(
                        () -> sample(0, METERS, ANALOGS, 65536, List.of(0L, 0L), 0),
                        "sample conversions 65536 is outside 0..65535 (readings)"),
                refusal(
                        () -> sample(0, METERS, ANALOGS, 0, List.of(0L, 0L, 0L), 0),
                        "sample drives 3 is outside 2..2 (places)"),
                refusal(
                        () -> sample(0, METERS, ANALOGS, 0, List.of(0L, 65537L), 0),
                        "sample drive 1 applied 65537 is outside 0..65536 (1/65536 of fully on)"),
                refusal(
                        () -> sample(0, METERS, ANALOGS, 0, List.of(0L, 0L), 65536),
                        "sample events 65536 is outside 0..65535 (number)"));
    }

    static Stream<Arguments> refusalsOfIdentities() {
        return Stream.of(
                refusal(() -> new FirmwareVersion(0, 0, 256), "firmware patch 256 is outside 0..255 (u8)"),
                refusal(() -> new ChannelCounts(3, 0, 0), "meters 3 is outside 0..2 (channels)"),
                refusal(() -> new ChannelCounts(0, 3, 0), "drives 3 is outside 0..2 (channels)"),
                refusal(() -> new ChannelCounts(0, 0, 5), "analogue channels 5 is outside 0..4 (channels)"),
                refusal(() -> AnalogRole.ofCode(6), "role of an analogue channel 6 is outside 0..5 (code)"),
                refusal(() -> new BoardKind("123456789"), "board kind length 9 is outside 0..8 (characters)"),
                refusal(() -> new BoardKind("pümp"), "board kind character 252 is outside 32..126 (printable ASCII)"),
                refusal(() -> UniqueId.parse("12"), "unique id \"12\" is not 16 hexadecimal digits"),
                refusal(
                        () -> identity(0, List.of(1, 1), NO_ROLES),
                        "identity tick rate 0 is outside 1..4294967295 (Hz)"),
                refusal(() -> identity(1, List.of(1), NO_ROLES), "identity PWM frequencies 1 is outside 2..2 (places)"),
                refusal(
                        () -> identity(1, List.of(1, 65536), NO_ROLES),
                        "identity PWM frequency of drive 1 65536 is outside 0..65535 (Hz)"),
                refusal(() -> identity(1, List.of(1, 1), List.of()), "identity roles 0 is outside 4..4 (places)"),
                refusal(
                        () -> identity(
                                1,
                                List.of(1, 1),
                                List.of(AnalogRole.VOLTS, AnalogRole.OTHER, AnalogRole.OTHER, AnalogRole.VOLTS)),
                        "identity role of analogue 3 1 is outside 0..5 (code, 1 to 3 at most once each)"),
                refusal(
                        () -> FrameEncoder.encode(new Hello(), 65536),
                        "frame sequence 65536 is outside 0..65535 (u16)"),
                refusal(
                        () -> FrameEncoder.encodeRaw(256, 0, 0, new byte[0]),
                        "frame version 256 is outside 0..255 (u8)"),
                refusal(() -> FrameEncoder.encodeRaw(1, -1, 0, new byte[0]), "frame type -1 is outside 0..255 (u8)"),
                refusal(
                        () -> FrameEncoder.encodeRaw(1, 1, 0, new byte[113]),
                        "payload length 113 is outside 0..112 (bytes)"),
                refusal(
                        () -> new Received.Malformed(RefuseReason.NOT_ARMED, 0, 0, 0),
                        "malformed frame's reason 4 is outside 1..3 (code)"));
    }

    @ParameterizedTest
    @MethodSource({
        "refusals",
        "refusalsOfCommands",
        "refusalsOfAnswers",
        "refusalsOfMeasurements",
        "refusalsOfIdentities"
    })
    void aValueOutsideItsRangeIsRefusedWithFieldValueAndRange(ThrowingCallable call, String text) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessage(text);
    }

    @Test
    void aRefusalCanBeAskedForItsFacts() {
        assertThatThrownBy(() -> new Drive(0, 65537, 0)).isInstanceOfSatisfying(FieldOutOfRange.class, refusal -> {
            assertThat(refusal.number()).isEqualTo(2);
            assertThat(refusal.field()).isEqualTo("drive duty");
            assertThat(refusal.value()).isEqualTo(65537);
        });
    }

    private static Sample sample(
            long time,
            List<MeterCount> meters,
            List<AnalogWindow> analogs,
            int conversions,
            List<Long> applied,
            int events) {
        return new Sample(time, meters, analogs, conversions, applied, BoardState.SAFE, CLOSED, events);
    }

    private static ShortSample shortSample(List<Integer> means, List<Integer> applied) {
        ShortCount start = new ShortCount(0xFF00, 0);
        return new ShortSample(0, List.of(start, start), means, applied, BoardState.SAFE, CLOSED);
    }

    private static Identity identity(long tickHz, List<Integer> pwmHz, List<AnalogRole> roles) {
        return new Identity(
                UniqueId.NONE,
                new FirmwareVersion(1, 0, 0),
                1,
                new ResetCause(0),
                ONE_ANALOG,
                tickHz,
                pwmHz,
                roles,
                new BoardKind("test"));
    }

    private static Arguments refusal(ThrowingCallable call, String text) {
        return arguments(call, text);
    }
}
