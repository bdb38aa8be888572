package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The frames that are part of the protocol's specification, computed by an encoder of neither end. */
class GoldenFramesTest {
    static List<GoldenFrame> good() {
        return GoldenFrame.good();
    }

    static List<GoldenFrame> bad() {
        return GoldenFrame.bad();
    }

    static List<GoldenFrame> all() {
        return GoldenFrame.all();
    }

    @Test
    void everyOutcomeAndEveryTypeIsAmongThem() {
        assertThat(all())
                .extracting(GoldenFrame::outcome)
                .contains(
                        "good",
                        "bad-cobs",
                        "bad-length",
                        "bad-crc",
                        "foreign-version",
                        "unknown-type",
                        "wrong-length",
                        "out-of-range");
        assertThat(good().stream()
                        .map(golden -> GoldenFields.message(golden.fields()).type())
                        .collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(MessageType.values());
    }

    @ParameterizedTest
    @MethodSource("good")
    void aGoodFrameDecodesToItsFields(GoldenFrame golden) {
        assertThat(Heard.in(golden.frame().toArray())).singleElement().satisfies(received -> {
            Received.Good heard = (Received.Good) received;
            assertThat(GoldenFields.of(heard.sequence(), heard.message())).isEqualTo(golden.fields());
        });
    }

    @ParameterizedTest
    @MethodSource("good")
    void itsFieldsEncodeToTheGoodFrame(GoldenFrame golden) {
        byte[] encoded = FrameEncoder.encode(GoldenFields.message(golden.fields()), golden.sequence());
        assertThat(Octets.of(encoded)).isEqualTo(golden.frame());
    }

    @ParameterizedTest
    @MethodSource("bad")
    void aBadFrameHasItsOutcomeAndNoOther(GoldenFrame golden) {
        assertThat(Heard.in(golden.frame().toArray()))
                .extracting(GoldenFramesTest::outcome)
                .containsExactly(golden.outcome());
    }

    @ParameterizedTest
    @MethodSource("all")
    void aFrameMeansTheSameWhereverItIsSplit(GoldenFrame golden) {
        byte[] frame = golden.frame().toArray();
        List<Received> whole = Heard.in(frame);
        for (int position = 0; position <= frame.length; position++) {
            assertThat(Heard.splitAt(frame, position))
                    .as("split at %d", position)
                    .isEqualTo(whole);
        }
    }

    @Test
    void allFramesInARowMeanTheSameInPiecesOfEverySize() {
        byte[] line = Heard.joined(
                all().stream().map(golden -> golden.frame().toArray()).toArray(byte[][]::new));
        List<String> outcomes = all().stream().map(GoldenFrame::outcome).toList();
        List<Received> whole = Heard.in(line);
        assertThat(whole).extracting(GoldenFramesTest::outcome).isEqualTo(outcomes);
        for (int size = 1; size <= line.length; size++) {
            assertThat(Heard.in(line, size)).as("pieces of %d", size).isEqualTo(whole);
        }
    }

    private static String outcome(Received received) {
        if (received instanceof Received.Good) {
            return "good";
        } else if (received instanceof Received.Foreign) {
            return "foreign-version";
        } else if (received instanceof Received.Malformed malformed) {
            return word(malformed.reason());
        }
        return word(((Received.Dropped) received).cause());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
