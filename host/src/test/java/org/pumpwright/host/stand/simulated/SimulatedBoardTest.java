package org.pumpwright.host.stand.simulated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.protocol.Acknowledge;
import org.pumpwright.protocol.Arm;
import org.pumpwright.protocol.Blob;
import org.pumpwright.protocol.BlobCommit;
import org.pumpwright.protocol.BlobWrite;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.EventsFrom;
import org.pumpwright.protocol.FrameDecoder;
import org.pumpwright.protocol.FrameEncoder;
import org.pumpwright.protocol.Hello;
import org.pumpwright.protocol.HostMessage;
import org.pumpwright.protocol.Identity;
import org.pumpwright.protocol.Limits;
import org.pumpwright.protocol.MessageType;
import org.pumpwright.protocol.Octets;
import org.pumpwright.protocol.ReadLimits;
import org.pumpwright.protocol.Received;
import org.pumpwright.protocol.Refuse;
import org.pumpwright.protocol.RefuseReason;
import org.pumpwright.protocol.ResetCause;
import org.pumpwright.protocol.SafeReason;
import org.pumpwright.protocol.SampleKind;
import org.pumpwright.protocol.SelfTestPart;
import org.pumpwright.protocol.ShortSample;
import org.pumpwright.protocol.Stream;
import org.pumpwright.protocol.line.Crc16;
import org.pumpwright.protocol.line.Wire;

/** What the conformance script does not see from its end of the line. */
final class SimulatedBoardTest {
    private final SimulatedBoard board = new SimulatedBoard(
            TestStands.healthyPump(), TestStands.described("simulated").channels());
    private final List<BoardMessage> heard = new ArrayList<>();
    private final FrameDecoder decoder = FrameDecoder.synchronised(this::take);

    @BeforeEach
    void open() {
        board.receive(new byte[] {0});
        run(1);
        heard.clear();
    }

    @Test
    void aThousandShortSamplesASecondComeAMillisecondApart() {
        say(new Stream(1, SampleKind.SHORT));
        heard.clear();

        run(1000);

        List<ShortSample> samples = all(ShortSample.class);
        assertThat(samples).hasSize(1000);
        for (int i = 1; i < samples.size(); i++) {
            assertThat((samples.get(i).time() - samples.get(i - 1).time()) & 0xFFFF_FFFFL)
                    .isEqualTo(2000);
        }
    }

    @Test
    void itsLimitsAreThoseOfTheMicrocontrollerBoard() {
        say(new ReadLimits());

        assertThat(all(Limits.class).get(0).values())
                .containsExactly(49152L, 50L, 2400000L, 58982L, 100L, 52429L, 5000L, 0L, 5000L, 55706L, 50L, 750L);
    }

    @Test
    void itsUniqueIdIsTheBeginningOfItsIdentityBlobAfterTheNextReset() {
        byte[] id = "PW-00017".getBytes(StandardCharsets.US_ASCII);
        say(new BlobWrite(Blob.IDENTITY, 0, Octets.of(id)));
        run(20);
        say(new BlobCommit(Blob.IDENTITY, id.length, Crc16.of(id, 0, id.length)));
        run(20);

        board.reset(ResetCause.EXTERNAL);
        open();
        say(new Hello());

        assertThat(all(Identity.class).get(0).uniqueId()).hasToString("50572d3030303137");
    }

    @Test
    void aSecondWriteIsRefusedAsBusyUntilTheFirstIsStored() {
        board.receive(FrameEncoder.encode(new BlobWrite(Blob.CALIBRATION, 0, Octets.of(new byte[32])), 1));
        board.receive(FrameEncoder.encode(new BlobWrite(Blob.CALIBRATION, 32, Octets.of(new byte[32])), 2));
        run(50);

        assertThat(all(Refuse.class)).extracting(Refuse::reason).containsExactly(RefuseReason.BUSY);
        heard.clear();
        say(new BlobWrite(Blob.CALIBRATION, 32, Octets.of(new byte[32])));
        run(50);
        assertThat(all(Refuse.class)).isEmpty();
    }

    @Test
    void aHelloThatCarriesSomethingIsRefused() {
        board.receive(FrameEncoder.encodeRaw(Wire.VERSION, MessageType.HELLO.code(), 7, new byte[] {1, 2, 3}));
        run(5);

        assertThat(heard).containsExactly(new Refuse(7, MessageType.HELLO.code(), RefuseReason.WRONG_LENGTH, 3));
    }

    @Test
    void aMakeSafeThatCarriesSomethingIsObeyedAndRefused() {
        arm();

        board.receive(FrameEncoder.encodeRaw(Wire.VERSION, MessageType.MAKE_SAFE.code(), 7, new byte[] {1}));
        run(5);

        assertThat(all(Event.class)).extracting(Event::reason).containsExactly(SafeReason.HOST_ASKED);
        assertThat(all(Refuse.class))
                .containsExactly(new Refuse(7, MessageType.MAKE_SAFE.code(), RefuseReason.WRONG_LENGTH, 1));
        assertThat(all(Acknowledge.class)).isEmpty();
    }

    @Test
    void aConverterThatStandsStillLocksAndAWeldedContactorIsStillFound() {
        arm();
        board.holdFeedback(Optional.of(true));
        board.stopConverter(true);

        run(49);
        assertThat(all(Event.class)).isEmpty();
        run(2);
        assertThat(all(Event.class))
                .extracting(Event::kind, Event::reason, Event::detail)
                .containsExactly(tuple(EventKind.LOCKED, SafeReason.HARDWARE, SelfTestPart.CONVERTER.bit()));
        run(300);
        say(new Arm(1));
        assertThat(all(Event.class)).hasSize(1);
        assertThat(all(Refuse.class))
                .extracting(Refuse::reason, Refuse::detail)
                .containsExactly(tuple(
                        RefuseReason.LOCKED, SelfTestPart.CONVERTER.bit() | SelfTestPart.CONTACTOR_FEEDBACK.bit()));
    }

    @Test
    void aFeedbackThatIsClosedAtPowerUpKeepsFromArmingAndLocksNothing() {
        board.holdFeedback(Optional.of(true));
        board.reset(ResetCause.POWER_ON);
        open();
        run(1000);
        heard.clear();
        say(new Hello());
        say(new Arm(all(Identity.class).get(0).bootId()));

        assertThat(all(Event.class)).isEmpty();
        assertThat(all(Refuse.class)).extracting(Refuse::reason).containsExactly(RefuseReason.CONTACTOR_CLOSED);
    }

    private void arm() {
        say(new Arm(1));
        run(30);
        assertThat(all(Event.class)).extracting(Event::kind).containsExactly(EventKind.ARMED);
        heard.clear();
    }

    @Test
    void itHoldsItsStartForAHostThatMissedIt() {
        say(new EventsFrom(1));

        assertThat(all(Event.class)).extracting(Event::number).containsExactly(1);
    }

    private void say(HostMessage message) {
        board.receive(FrameEncoder.encode(message, 0));
        run(1);
    }

    private void run(int millis) {
        for (int i = 0; i < millis; i++) {
            board.millisecond();
        }
        decoder.receive(board.takeOutput());
    }

    private void take(Received received) {
        if (received instanceof Received.Good good && good.message() instanceof BoardMessage message) {
            heard.add(message);
        }
    }

    private <M extends BoardMessage> List<M> all(Class<M> kind) {
        return heard.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
