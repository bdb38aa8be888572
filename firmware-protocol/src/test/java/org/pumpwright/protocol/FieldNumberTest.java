package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A refusal for a value out of range names the field by its number in the message, from 1, in the order of the wire. */
class FieldNumberTest {
    private static final Map<String, GoldenFrame> GOLDEN =
            GoldenFrame.all().stream().collect(Collectors.toMap(GoldenFrame::name, golden -> golden));

    @ParameterizedTest
    @CsvSource({
        "drive-channel-2, 1",
        "drive-duty-65537, 2",
        "stream-1001-ms, 1",
        "stream-kind-2, 2",
        "tighten-limit-12, 1",
        "tighten-link-99-ms, 2",
        "tighten-run-time-7200001, 2",
        "blob-read-blob-2, 1",
        "blob-read-offset-256, 2",
        "blob-read-length-0, 3",
        "blob-read-length-65, 3",
        "blob-write-past-end, 3",
        "blob-commit-length-0, 2",
        "blob-commit-length-257, 2",
        "windows-99-ms, 1",
        "windows-10001-ms, 1",
        "dither-channel-2, 1",
        "dither-amplitude-8193, 2",
        "dither-49-hz, 3",
        "dither-251-hz, 3",
        "sample-mean-below-min, 7",
        "sample-applied-65537, 19",
        "sample-state-4, 21",
        "sample-inputs-bit-5, 22",
        "short-sample-state-4, 12",
        "event-kind-0, 3",
        "event-kind-5, 3",
        "event-reason-16, 4",
        "refuse-reason-13, 3",
        "identity-role-6, 16",
        "identity-two-amps, 14",
        "limits-link-1001-ms, 12",
        "self-test-bit-6, 1",
        "self-test-failed-untried, 2",
        "blob-data-past-total, 4",
        "pulse-window-meter-2, 1",
        "pulse-window-least-above-most, 11",
    })
    void inTheGoldenFrames(String name, int number) {
        assertThat(Heard.in(GOLDEN.get(name).frame().toArray()))
                .singleElement()
                .isInstanceOfSatisfying(Received.Malformed.class, malformed -> {
                    assertThat(malformed.reason()).isEqualTo(RefuseReason.OUT_OF_RANGE);
                    assertThat(malformed.detail()).isEqualTo(number);
                });
    }

    @ParameterizedTest(name = "byte {1} of {0} set to {2} is field {3}")
    @CsvSource({
        "sample, 22, 255, 7",
        "sample, 25, 0, 8",
        "sample, 39, 0, 16",
        "sample, 43, 0, 17",
        "sample, 48, 2, 19",
        "sample, 52, 2, 20",
        "sample, 54, 4, 21",
        "sample, 55, 32, 22",
        "short-sample, 28, 4, 12",
        "short-sample, 29, 32, 13",
        "event-armed, 6, 5, 3",
        "event-armed, 7, 16, 4",
        "event-armed, 7, 1, 4",
        "event-link-lost, 7, 0, 4",
        "event-link-lost, 7, 6, 4",
        "event-link-lost, 7, 15, 4",
        "event-started, 7, 1, 4",
        "event-locked, 7, 14, 4",
        "identity, 15, 16, 6",
        "identity, 16, 3, 7",
        "identity, 17, 3, 8",
        "identity, 18, 5, 9",
        "identity-bare, 19, 0, 10",
        "identity, 27, 6, 13",
        "identity, 29, 1, 15",
        "identity, 30, 2, 16",
        "identity, 31, 31, 17",
        "identity, 31, 127, 17",
        "identity, 31, 255, 17",
        "identity, 34, 0, 17",
        "limits, 2, 1, 1",
        "limits, 46, 255, 12",
        "blob-write-full, 0, 2, 1",
        "blob-write-full, 1, 225, 3",
        "blob-write-full, 2, 1, 2",
        "blob-data, 0, 2, 1",
        "blob-data, 2, 1, 2",
        "blob-data, 4, 2, 3",
        "blob-data, 3, 39, 4",
        "pulse-window, 0, 2, 1",
    })
    void inAGoldenFrameWithOneByteChanged(String name, int position, int value, int number) {
        byte[] payload = payloadOf(name);
        payload[position] = (byte) value;
        int type = GoldenFields.message(GOLDEN.get(name).fields()).type().code();
        List<Received> heard = Heard.in(FrameEncoder.encodeRaw(1, type, 300, payload));
        assertThat(heard).containsExactly(new Received.Malformed(RefuseReason.OUT_OF_RANGE, 300, type, number));
    }

    @ParameterizedTest(name = "type {0} with {1} names field {2}")
    @CsvSource({
        "3, 02010001000000, 1",
        "3, 01010001000000, 2",
        "4, e90302, 1",
        "8, 0cffffffff, 1",
        "8, 0bffffffff, 2",
        "11, 02000100, 1",
        "11, 00000100, 2",
        "12, 02000101, 1",
        "12, 01000101, 2",
        "13, 0200000000, 1",
        "15, 0201ff0000, 1",
        "15, 01ffff0000, 2",
    })
    void ofSeveralFieldsOutOfRangeTheFirstOneIsNamed(int type, String payload, int number) {
        byte[] frame = FrameEncoder.encodeRaw(1, type, 3, HexFormat.of().parseHex(payload));
        assertThat(Heard.in(frame)).containsExactly(new Received.Malformed(RefuseReason.OUT_OF_RANGE, 3, type, number));
    }

    @Test
    void anUnknownTypeGivesTheTypeAndAWrongLengthTheLength() {
        assertThat(Heard.in(FrameEncoder.encodeRaw(1, 0x7F, 3, new byte[2])))
                .containsExactly(new Received.Malformed(RefuseReason.UNKNOWN_TYPE, 3, 0x7F, 0x7F));
        assertThat(Heard.in(FrameEncoder.encodeRaw(1, 0x02, 3, new byte[3])))
                .containsExactly(new Received.Malformed(RefuseReason.WRONG_LENGTH, 3, 2, 3));
    }

    @Test
    void aMalformedFrameCarriesTheAnswerABoardGives() {
        Received.Malformed malformed = new Received.Malformed(RefuseReason.WRONG_LENGTH, 7, 2, 3);
        assertThat(malformed.refusal()).isEqualTo(new Refuse(7, 2, RefuseReason.WRONG_LENGTH, 3));
    }

    private static byte[] payloadOf(String name) {
        Map<String, String> fields = GOLDEN.get(name).fields();
        Message message = GoldenFields.message(fields);
        PayloadWriter out = new PayloadWriter(new byte[message.type().longestPayload()]);
        message.type().write(message, out);
        return Arrays.copyOf(out.bytes(), out.length());
    }
}
