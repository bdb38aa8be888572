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
    private static final List<MeterCount> METERS = List.of(MeterCount.NONE, MeterCount.NONE);
    private static final List<AnalogWindow> ANALOGS = Collections.nCopies(4, AnalogWindow.NONE);
    private static final Inputs CLOSED = new Inputs(true, true);
    private static final ChannelCounts ONE_ANALOG = new ChannelCounts(1, 1, 1);

    static Stream<Arguments> refusals() {
        return Stream.of(
                refusal(() -> new Arm(-1), "arm boot id -1 is outside 0..4294967295 (u32)"),
                refusal(() -> new Arm(1L << 32), "arm boot id 4294967296 is outside 0..4294967295 (u32)"),
                refusal(() -> new Drive(2, 0, 0), "drive channel 2 is outside 0..1 (number of the drive)"),
                refusal(() -> new Drive(0, 65537, 0), "drive duty 65537 is outside 0..65536 (1/65536 of fully on)"),
                refusal(() -> new Drive(0, 0, 65536), "drive ramp 65536 is outside 0..65535 (1/65536 per ms)"),
                refusal(
                        () -> new org.pumpwright.protocol.Stream(1),
                        "stream period 1 is outside 2..1000 (ms, or 0 for no samples)"),
                refusal(
                        () -> new org.pumpwright.protocol.Stream(1001),
                        "stream period 1001 is outside 2..1000 (ms, or 0 for no samples)"),
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
                refusal(() -> RefuseReason.ofCode(7), "refuse reason 7 is outside 1..6 (code)"),
                refusal(() -> SafeReason.ofCode(7), "event reason 7 is outside 0..6 (code)"),
                refusal(() -> EventKind.ofCode(0), "event kind 0 is outside 1..3 (code)"),
                refusal(() -> BoardState.ofCode(2), "board state 2 is outside 0..1 (code)"),
                refusal(() -> Inputs.ofBits(4), "input bits 4 is outside 0..3 (bits)"),
                refusal(() -> new ResetCause(16), "reset cause 16 is outside 0..15 (bits)"),
                refusal(
                        () -> new Event(1, 0, EventKind.ARMED, SafeReason.RESET, 0),
                        "event reason 6 is outside 0..0 (code, for an event of kind ARMED)"),
                refusal(
                        () -> new Event(1, 0, EventKind.MADE_SAFE, SafeReason.NONE, 0),
                        "event reason 0 is outside 1..6 (code, for an event of kind MADE_SAFE)"),
                refusal(
                        () -> new Event(65536, 0, EventKind.ARMED, SafeReason.NONE, 0),
                        "event number 65536 is outside 0..65535 (u16)"),
                refusal(
                        () -> new Event(1, -1, EventKind.ARMED, SafeReason.NONE, 0),
                        "event board time -1 is outside 0..4294967295 (ticks)"));
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
                        () -> sample(0, List.of(MeterCount.NONE), ANALOGS, 0, List.of(0L, 0L), 0),
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
        OverCurrentRule none = OverCurrentRule.NONE;
        return Stream.of(
                refusal(() -> new FirmwareVersion(0, 0, 256), "firmware patch 256 is outside 0..255 (u8)"),
                refusal(() -> new ChannelCounts(3, 0, 0), "meters 3 is outside 0..2 (channels)"),
                refusal(() -> new ChannelCounts(0, 3, 0), "drives 3 is outside 0..2 (channels)"),
                refusal(() -> new ChannelCounts(0, 0, 5), "analogue channels 5 is outside 0..4 (channels)"),
                refusal(
                        () -> new OverCurrentRule(4, 0, 0),
                        "current channel 4 is outside 0..3 (analogue channel, or 255 for none)"),
                refusal(
                        () -> new OverCurrentRule(0, 65536, 0),
                        "over-current limit 65536 is outside 0..65535 (1/65536 of the reference)"),
                refusal(() -> new OverCurrentRule(0, 0, -1), "over-current time -1 is outside 0..65535 (ms)"),
                refusal(() -> new BoardKind("123456789"), "board kind length 9 is outside 0..8 (characters)"),
                refusal(() -> new BoardKind("pümp"), "board kind character 252 is outside 32..126 (printable ASCII)"),
                refusal(() -> UniqueId.parse("12"), "unique id \"12\" is not 16 hexadecimal digits"),
                refusal(
                        () -> identity(0, List.of(1, 1), 750, none),
                        "identity tick rate 0 is outside 1..4294967295 (Hz)"),
                refusal(
                        () -> identity(1, List.of(1), 750, none),
                        "identity PWM frequencies 1 is outside 2..2 (places)"),
                refusal(
                        () -> identity(1, List.of(1, 65536), 750, none),
                        "identity PWM frequency of drive 1 65536 is outside 0..65535 (Hz)"),
                refusal(
                        () -> identity(1, List.of(1, 1), 1001, none),
                        "identity link time-out 1001 is outside 100..1000 (ms)"),
                refusal(
                        () -> identity(1, List.of(1, 1), 99, none),
                        "identity link time-out 99 is outside 100..1000 (ms)"),
                refusal(
                        () -> identity(1, List.of(1, 1), 750, new OverCurrentRule(1, 0, 0)),
                        "identity current channel 1 is outside 0..0 (analogue channels the board has, or 255 for none)"),
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
    @MethodSource({"refusals", "refusalsOfMeasurements", "refusalsOfIdentities"})
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

    private static Identity identity(long tickHz, List<Integer> pwmHz, int linkTimeoutMs, OverCurrentRule rule) {
        return new Identity(
                UniqueId.NONE,
                new FirmwareVersion(0, 1, 0),
                1,
                new ResetCause(0),
                ONE_ANALOG,
                tickHz,
                pwmHz,
                0,
                linkTimeoutMs,
                rule,
                new BoardKind("test"));
    }

    private static Arguments refusal(ThrowingCallable call, String text) {
        return arguments(call, text);
    }
}
