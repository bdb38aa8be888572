package org.pumpwright.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class BoardClockTest {
    private static final long RANGE = 1L << 32;
    private static final long HALF = 1L << 31;
    private static final long TICK_HZ = 2_000_000;

    private final BoardClock clock = new BoardClock(TICK_HZ);

    @Test
    void timeBetweenTwoSamplesIsExactAcrossTheRollOver() {
        long first = clock.advance(RANGE - 1_000_000);
        long second = clock.advance(1_000_000);
        assertThat(second - first).isEqualTo(2_000_000);
        assertThat(clock.seconds(second - first)).isCloseTo(1.0, within(1e-12));
    }

    @Test
    void anEdgeBeforeTheRollOverLiesBeforeASampleAfterIt() {
        long now = clock.advance(40);
        assertThat(now - clock.before(RANGE - 60)).isEqualTo(100);
        assertThat(clock.before(40)).isEqualTo(now);
        assertThat(now - clock.before(41)).isEqualTo(RANGE - 1);
        assertThat(clock.before(41)).isPositive();
    }

    @Test
    void anEventMayLieBeforeOrAfterTheNewestSample() {
        long now = clock.advance(40);
        assertThat(clock.near(50) - now).isEqualTo(10);
        assertThat(clock.near(RANGE - 60) - now).isEqualTo(-100);
        assertThat(clock.near(40)).isEqualTo(now);
    }

    @Test
    void askingForAMomentDoesNotMoveTheClock() {
        long now = clock.advance(40);
        clock.near(1000);
        clock.before(1000);
        assertThat(clock.before(40)).isEqualTo(now);
    }

    @Test
    void aLateSampleLeavesTheClock() {
        long now = clock.advance(5000);
        assertThat(clock.advance(4000)).isEqualTo(now);
    }

    @Test
    void aClockWithoutASampleKnowsNoMoment() {
        assertThatIllegalStateException()
                .isThrownBy(() -> clock.before(1))
                .withMessage("the board clock has no time yet: advance it by a sample first");
        clock.advance(1);
        clock.restart();
        assertThatIllegalStateException()
                .isThrownBy(() -> clock.near(1))
                .withMessage("the board clock has no time yet: advance it by a sample first");
    }

    @Test
    void aRateOfZeroAndATimeThatIsNoU32AreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BoardClock(0))
                .withMessage("tick rate 0 is outside 1..4294967295 (Hz)");
        clock.advance(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> clock.near(-1))
                .withMessage("board time -1 is outside 0..4294967295 (ticks)");
    }

    @Property(seed = "5104", tries = 1000)
    void momentsArePlacedExactlyWithinTheirReach(
            @ForAll @LongRange(max = RANGE - 1) long start,
            @ForAll @LongRange(max = HALF - 1) long step,
            @ForAll @LongRange(max = RANGE - 1) long ago,
            @ForAll @LongRange(min = -HALF, max = HALF - 1) long offset) {
        BoardClock placed = new BoardClock(TICK_HZ);
        long first = placed.advance(start);
        long now = placed.advance((start + step) & (RANGE - 1));
        assertThat(now - first).isEqualTo(step);
        assertThat(now - placed.before((now - ago) & (RANGE - 1))).isEqualTo(ago);
        assertThat(placed.near((now + offset) & (RANGE - 1)) - now).isEqualTo(offset);
    }
}
