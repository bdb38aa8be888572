package org.pumpwright.host.stand.wire;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;
import org.pumpwright.protocol.BoardMessage;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.EventKind;
import org.pumpwright.protocol.SampleKind;

/** A line that loses the word that the board made safe: it must be noticed all the same. */
@Timeout(30)
final class LostEventTest {
    private static final WireTiming SHORT_SAMPLES = WireTiming.STANDARD.withSamples(5, SampleKind.SHORT);

    private final StandDescription description = TestStands.described("simulated");
    private int toLose;
    private final SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());

    @Test
    void theBoardIsAskedForTheReasonThatWasLost() throws Exception {
        MadeSafe made = guardOpened(1, WireTiming.STANDARD);

        assertThat(made.cause()).isEqualTo(Cause.GUARD_OPEN);
        assertThat(made.words()).isEqualTo("the guard was opened");
    }

    @Test
    void theSamplesTellThatTheBoardIsSafeEvenWhenItsReasonIsLostForGood() throws Exception {
        MadeSafe made = guardOpened(Integer.MAX_VALUE, WireTiming.STANDARD);

        assertThat(made.cause()).isEqualTo(Cause.UNKNOWN);
        assertThat(made.words()).isEqualTo("the board made safe, its reason was lost on the line");
    }

    @Test
    void withShortSamplesTheBoardIsAskedToo() throws Exception {
        assertThat(guardOpened(1, SHORT_SAMPLES).cause()).isEqualTo(Cause.GUARD_OPEN);
    }

    @Test
    void shortSamplesTellThatTheBoardIsSafeToo() throws Exception {
        assertThat(guardOpened(Integer.MAX_VALUE, SHORT_SAMPLES).cause()).isEqualTo(Cause.UNKNOWN);
    }

    @Test
    void aReasonThatWasAskedForIsToldOnce() throws Exception {
        toLose = 1;
        try (WireStand stand = new WireStand(description, this::opened, SHORT_SAMPLES)) {
            stand.open();
            stand.arm();
            board.setInputs(true, false);
            assertThat(madeSafe(stand).cause()).isEqualTo(Cause.GUARD_OPEN);
            for (int i = 0; i < 100; i++) {
                assertThat(stand.await(Duration.ofMillis(100)).orElseThrow()).isInstanceOf(Measured.class);
            }
        }
    }

    private MadeSafe guardOpened(int wordsLost, WireTiming timing) throws StandException {
        toLose = wordsLost;
        try (WireStand stand = new WireStand(description, this::opened, timing)) {
            stand.open();
            stand.arm();
            board.setInputs(true, false);
            return madeSafe(stand);
        }
    }

    private static MadeSafe madeSafe(WireStand stand) throws StandException {
        for (int i = 0; i < 200; i++) {
            Optional<StandSignal> signal = stand.await(Duration.ofMillis(100));
            if (signal.isPresent() && signal.get() instanceof MadeSafe made) {
                return made;
            }
        }
        throw new AssertionError("nobody noticed");
    }

    private Line opened() {
        return new RewritingLine(
                new SimulatedLine(board, 0), message -> isLost(message) ? Optional.empty() : Optional.of(message));
    }

    private boolean isLost(BoardMessage message) {
        return message instanceof Event event && event.kind() == EventKind.MADE_SAFE && toLose-- > 0;
    }
}
