package org.pumpwright.host.stand.simulated;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandContract;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandException.Trouble;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.wire.WireStand;
import org.pumpwright.host.stand.wire.WireTiming;
import org.pumpwright.protocol.ResetCause;

final class SimulatedStandTest extends StandContract {
    private final StandDescription description = TestStands.described("simulated");
    private final SimulatedBoard board = new SimulatedBoard(TestStands.healthyPump(), description.channels());
    private final SimulatedLine line = new SimulatedLine(board, 0);

    @Override
    protected Stand stand() {
        return stand(WireTiming.STANDARD);
    }

    @Override
    protected Stand silentStand() {
        return stand(TestStands.SILENT);
    }

    private Stand stand(WireTiming timing) {
        return new WireStand(description, () -> new SimulatedLine(board, 0), timing);
    }

    @Test
    void anEmergencyStopMakesSafeAndIsToldAsSuch() throws Exception {
        try (Stand stand = stand()) {
            stand.open();
            stand.arm();
            stand.drive(0, Duty.ofPercent(50), 0.5);
            sampleAfter(stand, 1);

            board.setInputs(false, true);

            assertThat(madeSafe(stand).words()).isEqualTo("the emergency stop was pressed");
            assertThatThrownBy(stand::arm)
                    .hasMessage("simulated board: the board refused 'arm': the emergency stop is pressed or its loop is"
                            + " open. Release it, press the stand's own START where it has one, and start again; if that does"
                            + " not help, look at the loop's fuse and wires.");
        }
    }

    @Test
    void anOpenGuardMakesSafeAndClosingItArmsNothing() throws Exception {
        try (Stand stand = stand()) {
            stand.open();
            stand.arm();
            board.setInputs(true, false);
            assertThat(madeSafe(stand).cause()).isEqualTo(Cause.GUARD_OPEN);

            board.setInputs(true, true);

            assertThat(sampleAfter(stand, 2).armed()).isFalse();
        }
    }

    @Test
    void aResetIsTroubleAndTheStandCanBeOpenedAgain() throws Exception {
        try (Stand stand = stand()) {
            long firstBoot = stand.open().bootId();
            stand.arm();
            stand.drive(0, Duty.ofPercent(50), 0.5);
            sampleAfter(stand, 1);

            board.reset(ResetCause.BROWN_OUT);

            assertThatThrownBy(() -> sampleAfter(stand, 5))
                    .isInstanceOfSatisfying(
                            StandException.class, e -> assertThat(e.trouble()).isEqualTo(Trouble.BOARD_RESET))
                    .hasMessage(
                            "simulated board: the board has started anew (brown-out). Check its supply and the cable,"
                                    + " then start the run again.");
            assertThat(stand.open().bootId()).isNotEqualTo(firstBoot);
            assertThat(sample(stand).applied().get(0)).isEqualTo(Duty.ZERO);
        }
    }

    @Test
    void aPulledPlugIsToldAsALostLine() throws Exception {
        try (Stand stand = new WireStand(description, () -> line, WireTiming.STANDARD)) {
            stand.open();
            sample(stand);

            line.unplug();

            assertThatThrownBy(() -> sampleAfter(stand, 1))
                    .isInstanceOfSatisfying(
                            StandException.class, e -> assertThat(e.trouble()).isEqualTo(Trouble.LINK_LOST));
        }
    }

    @Test
    void theSameUnitGivesTheSameSamples() throws Exception {
        assertThat(hashOfARun()).isEqualTo(hashOfARun());
    }

    private int hashOfARun() throws StandException {
        SimulatedBoard own = new SimulatedBoard(TestStands.healthyPump(), description.channels());
        try (Stand stand = new WireStand(description, () -> new SimulatedLine(own, 0), WireTiming.STANDARD)) {
            stand.open();
            stand.arm();
            stand.drive(0, Duty.ofPercent(40), 0.5);
            int hash = 1;
            for (int i = 0; i < 200; i++) {
                hash = 31 * hash + sample(stand).hashCode();
            }
            return hash;
        }
    }
}
