package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;

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
        "stream-1-ms, 1",
        "stream-1001-ms, 1",
        "sample-mean-below-min, 7",
        "sample-applied-65537, 19",
        "sample-state-2, 21",
        "event-kind-0, 3",
        "refuse-reason-7, 3",
        "identity-link-time-out-1001-ms, 14",
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
        "sample, 54, 2, 21",
        "sample, 55, 4, 22",
        "event-armed, 6, 4, 3",
        "event-armed, 7, 7, 4",
        "event-armed, 7, 1, 4",
        "event-link-lost, 7, 0, 4",
        "identity, 15, 16, 6",
        "identity, 16, 3, 7",
        "identity, 17, 3, 8",
        "identity, 18, 5, 9",
        "identity, 30, 255, 14",
        "identity, 31, 4, 15",
        "identity-bare, 19, 0, 10",
        "identity-bare, 31, 0, 15",
        "identity, 36, 31, 18",
        "identity, 36, 127, 18",
        "identity, 36, 255, 18",
        "identity, 40, 0, 18",
    })
    void inAGoldenFrameWithOneByteChanged(String name, int position, int value, int number) {
        byte[] payload = payloadOf(name);
        payload[position] = (byte) value;
        int type = GoldenFields.message(GOLDEN.get(name).fields()).type().code();
        List<Received> heard = Heard.in(FrameEncoder.encodeRaw(1, type, 300, payload));
        assertThat(heard).containsExactly(new Received.Malformed(RefuseReason.OUT_OF_RANGE, 300, type, number));
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
        PayloadWriter out = new PayloadWriter(new byte[message.type().payloadLength()]);
        message.type().write(message, out);
        return out.bytes();
    }
}
