package org.pumpwright.host.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.trace.Sample;

/** What every stand must do, however it is reached. Times are the board's. */
@Timeout(60)
public abstract class StandContract {
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final double FULL_SWING_SECONDS = 0.5;

    /** A stand in order, not yet opened; the test closes it. */
    protected abstract Stand stand() throws Exception;

    /** The same, but one that gives no sign of life while armed. */
    protected abstract Stand silentStand() throws Exception;

    @Test
    void sayWhoTheyAreAndStartSafeWhenOpened() throws Exception {
        try (Stand stand = stand()) {
            StandIdentity identity = stand.open();

            assertThat(identity.firmware()).isEqualTo("1.0.0");
            assertThat(identity.linkTimeOutMillis()).isBetween(100, 1000);
            Sample first = sample(stand);
            assertThat(first.armed()).isFalse();
            assertThat(first.applied().get(0)).isEqualTo(Duty.ZERO);
            assertThat(first.emergencyStopClosed()).isTrue();
            assertThat(first.guardClosed()).isTrue();
        }
    }

    @Test
    void sendSamplesInTheOrderOfTheirTime() throws Exception {
        try (Stand stand = stand()) {
            stand.open();
            Sample first = sample(stand);
            Sample before = first;
            for (int i = 0; i < 50; i++) {
                Sample next = sample(stand);
                assertThat(next.boardNanos()).isGreaterThan(before.boardNanos());
                before = next;
            }
            // Fifty times 20 ms; a board on a busy PC may be late.
            assertThat(before.boardSeconds() - first.boardSeconds()).isBetween(0.95, 3.0);
        }
    }

    @Test
    void refuseToDriveBeforeTheyAreArmed() throws Exception {
        try (Stand stand = stand()) {
            stand.open();

            assertThatThrownBy(() -> stand.drive(0, Duty.ofPercent(50), FULL_SWING_SECONDS))
                    .isInstanceOfSatisfying(
                            StandException.class, e -> assertThat(e.trouble()).isEqualTo(Trouble.REFUSED))
                    .hasMessageEndingWith("the board refused 'drive': the stand is not armed. Start the run again.");
        }
    }

    @Test
    void driveAndCountWhenArmed() throws Exception {
        try (Stand stand = stand()) {
            stand.open();
            stand.arm();
            long before = sample(stand).meters().get(0).edges();
            stand.drive(0, Duty.ofPercent(50), FULL_SWING_SECONDS);

            Sample driven = sampleAfter(stand, 2.5);

            assertThat(driven.armed()).isTrue();
            // Eight bits of PWM come within half a step of what was asked.
            assertThat(driven.applied().get(0).percent()).isBetween(49.7, 50.3);
            assertThat(driven.meters().get(0).edges() - before).isGreaterThan(60);
            assertThat(driven.meters().get(0).lastEdgeNanos())
                    .isBetween(driven.boardNanos() - 200_000_000L, driven.boardNanos());
        }
    }

    @Test
    void moveNoFasterThanTheRampThatWasAskedFor() throws Exception {
        try (Stand stand = stand()) {
            stand.open();
            stand.arm();
            Sample start = sample(stand);
            stand.drive(0, Duty.FULL, 4);

            for (Sample next = sample(stand); next.boardSeconds() < start.boardSeconds() + 1; next = sample(stand)) {
                double seconds = next.boardSeconds() - start.boardSeconds();
                assertThat(next.applied().get(0).fraction()).isLessThanOrEqualTo(seconds / 4 + 0.01);
            }
        }
    }

    @Test
    void areSafeSoonAfterTheyAreAsked() throws Exception {
        try (Stand stand = stand()) {
            stand.open();
            stand.arm();
            stand.drive(0, Duty.ofPercent(80), FULL_SWING_SECONDS);
            sampleAfter(stand, 1);

            stand.makeSafe();

            MadeSafe made = madeSafe(stand);
            assertThat(made.cause()).isEqualTo(Cause.HOST);
            Sample after = sample(stand);
            assertThat(after.armed()).isFalse();
            assertThat(after.applied().get(0)).isEqualTo(Duty.ZERO);
        }
    }

    @Test
    void makeThemselvesSafeWithinASecondOfTheLastSignOfLife() throws Exception {
        try (Stand stand = silentStand()) {
            stand.open();
            Sample before = sample(stand);
            stand.arm();
            stand.drive(0, Duty.ofPercent(30), FULL_SWING_SECONDS);

            MadeSafe made = madeSafe(stand);

            assertThat(made.cause()).isEqualTo(Cause.LINK_LOST);
            assertThat(made.boardNanos() - before.boardNanos()).isLessThan(1_000_000_000L);
            assertThat(sample(stand).applied().get(0)).isEqualTo(Duty.ZERO);
        }
    }

    @Test
    void areSafeAgainWhenOpenedAgain() throws Exception {
        try (Stand stand = stand()) {
            stand.open();
            stand.arm();
            stand.drive(0, Duty.ofPercent(30), FULL_SWING_SECONDS);
            sampleAfter(stand, 0.5);

            stand.close();
            stand.open();

            Sample first = sample(stand);
            assertThat(first.armed()).isFalse();
            assertThat(first.applied().get(0)).isEqualTo(Duty.ZERO);
        }
    }

    @Test
    void mayBeClosedTwiceAndAskedForSafeWhenClosed() throws Exception {
        Stand stand = stand();
        stand.open();
        stand.close();
        stand.makeSafe();
        stand.close();

        assertThatThrownBy(() -> stand.await(PATIENCE)).isInstanceOf(IllegalStateException.class);
    }

    protected static Sample sample(Stand stand) throws StandException {
        while (true) {
            Optional<StandSignal> signal = stand.await(PATIENCE);
            if (signal.isPresent() && signal.get() instanceof Measured measured) {
                return measured.sample();
            }
        }
    }

    protected static Sample sampleAfter(Stand stand, double seconds) throws StandException {
        Sample next = sample(stand);
        double until = next.boardSeconds() + seconds;
        while (next.boardSeconds() < until) {
            next = sample(stand);
        }
        return next;
    }

    protected static MadeSafe madeSafe(Stand stand) throws StandException {
        while (true) {
            Optional<StandSignal> signal = stand.await(PATIENCE);
            if (signal.isPresent() && signal.get() instanceof MadeSafe made) {
                return made;
            }
        }
    }
}
