package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.api.Test;
import org.pumpwright.protocol.line.Wire;

class FrameDecoderTest {
    private static final byte[] MAKE_SAFE = FrameEncoder.encode(new MakeSafe(), 7);
    private static final Received MADE_SAFE = new Received.Good(7, new MakeSafe());

    @Property(seed = "5081", tries = 5000)
    void anyMessageComesBackAsItWasSent(@ForAll("messages") Message message, @ForAll("sequences") int sequence) {
        byte[] frame = FrameEncoder.encode(message, sequence);
        assertThat(frame.length).isBetween(8, Wire.MAX_FRAME_LENGTH);
        assertThat(Heard.in(frame)).containsExactly(new Received.Good(sequence, message));
    }

    @Property(seed = "5082", tries = 1000)
    void messagesInARowComeBackInPiecesOfAnySize(
            @ForAll("rows") List<Message> messages, @ForAll("sizes") int pieceLength) {
        List<Received> expected = new ArrayList<>();
        byte[][] frames = new byte[messages.size()][];
        for (int index = 0; index < frames.length; index++) {
            frames[index] = FrameEncoder.encode(messages.get(index), index);
            expected.add(new Received.Good(index, messages.get(index)));
        }
        assertThat(Heard.in(Heard.joined(frames), pieceLength)).isEqualTo(expected);
    }

    @Property(seed = "5083", tries = 3000)
    void rubbishNeverThrowsIsNeverStoredBeyondOneFrameAndDoesNotHurtWhatFollows(
            @ForAll("rubbish") byte[] rubbish, @ForAll("sizes") int pieceLength) {
        List<Received> heard = new ArrayList<>();
        FrameDecoder decoder = FrameDecoder.synchronised(heard::add);
        for (int at = 0; at < rubbish.length; at += pieceLength) {
            decoder.receive(rubbish, at, Math.min(pieceLength, rubbish.length - at));
            assertThat(decoder.stored()).isBetween(0, Wire.MAX_ENCODED_LENGTH);
        }
        decoder.receive(new byte[] {Wire.DELIMITER});
        assertThat(decoder.stored()).isZero();
        decoder.receive(MAKE_SAFE);
        assertThat(heard).last().isEqualTo(MADE_SAFE);
    }

    @Property(seed = "5084", tries = 3000)
    void anyHeaderWithAnyPayloadAndARightCheckIsAnsweredByOneResult(
            @ForAll("bytes") int version, @ForAll("bytes") int type, @ForAll("payloads") byte[] payload) {
        assertThat(Heard.in(FrameEncoder.encodeRaw(version, type, 9, payload)))
                .singleElement()
                .satisfies(received -> {
                    if (version != Wire.VERSION) {
                        assertThat(received).isEqualTo(new Received.Foreign(version, type, 9, Octets.of(payload)));
                    } else if (received instanceof Received.Good good) {
                        assertThat(FrameEncoder.encode(good.message(), 9))
                                .isEqualTo(FrameEncoder.encodeRaw(version, type, 9, payload));
                    } else {
                        assertThat(received).isInstanceOf(Received.Malformed.class);
                    }
                });
    }

    @Test
    void anOpenedLineIsHeardFromItsFirstDelimiterOn() {
        List<Received> heard = new ArrayList<>();
        FrameDecoder decoder = new FrameDecoder(heard::add);
        decoder.receive(MAKE_SAFE);
        assertThat(heard).isEmpty();
        decoder.receive(MAKE_SAFE);
        assertThat(heard).containsExactly(MADE_SAFE);
    }

    @Test
    void aLineOpenedAgainIsHeardFromItsFirstDelimiterOn() {
        List<Received> heard = new ArrayList<>();
        FrameDecoder decoder = FrameDecoder.synchronised(heard::add);
        decoder.receive(MAKE_SAFE, 0, 4);
        decoder.resynchronise();
        decoder.receive(MAKE_SAFE, 4, MAKE_SAFE.length - 4);
        decoder.receive(MAKE_SAFE);
        assertThat(heard).containsExactly(MADE_SAFE);
    }

    @Test
    void whatWasHeardOfAnotherVersionDoesNotChangeWithLaterFrames() {
        List<Received> heard = Heard.in(Heard.joined(
                FrameEncoder.encodeRaw(2, 0x81, 1, new byte[] {1, 2, 3}),
                FrameEncoder.encodeRaw(2, 0x81, 2, new byte[] {4, 5, 6})));
        assertThat(heard).first().isEqualTo(new Received.Foreign(2, 0x81, 1, Octets.of(new byte[] {1, 2, 3})));
    }

    @Provide
    Arbitrary<Message> messages() {
        return Messages.any();
    }

    @Provide
    Arbitrary<List<Message>> rows() {
        return Messages.any().list().ofMinSize(1).ofMaxSize(8);
    }

    @Provide
    Arbitrary<Integer> sequences() {
        return Messages.u16();
    }

    @Provide
    Arbitrary<Integer> sizes() {
        return Arbitraries.integers().between(1, 150);
    }

    @Provide
    Arbitrary<Integer> bytes() {
        return Arbitraries.frequencyOf(
                Tuple.of(3, Arbitraries.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15)),
                Tuple.of(2, Arbitraries.integers().between(0x81, 0x8A)),
                Tuple.of(1, Arbitraries.integers().between(0, 255)));
    }

    @Provide
    Arbitrary<byte[]> payloads() {
        Arbitrary<Byte> often = Arbitraries.oneOf(Arbitraries.bytes(), Arbitraries.of((byte) 0, (byte) 1));
        Arbitrary<Integer> lengths = Arbitraries.oneOf(
                Arbitraries.of(0, 2, 3, 4, 5, 7, 8, 12, 30, 39, 48, 57, 58),
                Arbitraries.integers().between(0, 112));
        return lengths.flatMap(length -> often.array(byte[].class).ofSize(length));
    }

    @Provide
    Arbitrary<byte[]> rubbish() {
        Arbitrary<Byte> mostlySmall = Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.just((byte) 0)),
                Tuple.of(8, Arbitraries.bytes().between((byte) 1, (byte) 5)),
                Tuple.of(4, Arbitraries.bytes()));
        return Arbitraries.oneOf(mostlySmall, Arbitraries.bytes())
                .array(byte[].class)
                .ofMaxSize(1000);
    }
}
