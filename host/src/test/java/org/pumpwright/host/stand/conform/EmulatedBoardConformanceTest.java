package org.pumpwright.host.stand.conform;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.EmulatedBoard;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.stand.wire.Line;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.Inputs;

/** The microcontroller's own program in the emulator, which waits for its host. */
@Timeout(240)
final class EmulatedBoardConformanceTest {
    /** The emulated chip's converter can't be stopped from outside. */
    private static final String NEEDS_A_DEAD_CONVERTER = "a converter that stands still locks until a reset";

    private final Channels channels = TestStands.described("serial").channels();
    private HeldPlant plant = new HeldPlant(TestStands.healthyPump(), channels);

    /**
     * How soon answers come is told by a clock that runs with the board's; what the kernel of a busy machine takes to hand bytes
     * on is in it. So where nothing else is broken, that is looked at a second time.
     */
    private static final String IS_ABOUT_TIME = "quick commands are answered within 50 ms";

    @Test
    void theMicrocontrollerHoldsEveryCheck() throws Exception {
        Conformance.Finding finding = conformance();
        boolean onlyLate = !finding.conforms()
                && finding.broken().stream().allMatch(check -> check.name().equals(IS_ABOUT_TIME));
        if (onlyLate) {
            finding = conformance();
        }

        assertThat(finding.checks())
                .filteredOn(check -> !check.name().equals(NEEDS_A_DEAD_CONVERTER))
                .hasSize(Conformance.names().size() - 1)
                .allSatisfy(check -> assertThat(check.outcome())
                        .as("%s: %s", check.name(), check.evidence())
                        .isEqualTo(Outcome.HELD));
        assertThat(finding.broken()).isEmpty();
    }

    private Conformance.Finding conformance() throws Exception {
        plant = new HeldPlant(TestStands.healthyPump(), channels);
        try (EmulatedBoard board = EmulatedBoard.inLockstep(plant, channels);
                Line line = board.line(board.port(), 250_000)) {
            return Conformance.of(line, new EmulatorProvoker(board), check -> {});
        }
    }

    /** Holds the plant at the emulator's pins, and gives the emulator its commands. */
    private final class EmulatorProvoker implements Provoker {
        private final EmulatedBoard board;
        private final Set<Provocation.Cause> open = EnumSet.noneOf(Provocation.Cause.class);

        EmulatorProvoker(EmulatedBoard board) {
            this.board = board;
        }

        @Override
        public boolean can(Provocation.Cause cause) {
            return cause != Provocation.Cause.CONVERTER;
        }

        @Override
        public Duration patience() {
            return Duration.ofMillis(100);
        }

        @Override
        public boolean toy() {
            return true;
        }

        @Override
        public void provoke(Provocation what) {
            switch (what.cause()) {
                case EMERGENCY_STOP, GUARD, LEVEL, OVERRIDE -> input(what);
                case VOLTS_CODE -> hold(ChannelRole.VOLTS_AT_PINS, what.value());
                case AMPS_CODE -> hold(ChannelRole.SUPPLY_AMPS, what.value());
                case PRESSURE_CODE -> hold(ChannelRole.OUTLET_PRESSURE, what.value());
                case METER_HZ -> plant.meter(what.value());
                case FEEDBACK, RESTART -> board.command(what.command());
                case CONVERTER -> throw new UnsupportedOperationException(what.command());
            }
        }

        private void input(Provocation what) {
            if (what.value() == 1) {
                open.remove(what.cause());
            } else {
                open.add(what.cause());
            }
            board.setInputs(new Inputs(
                    !open.contains(Provocation.Cause.EMERGENCY_STOP),
                    !open.contains(Provocation.Cause.GUARD),
                    !open.contains(Provocation.Cause.LEVEL),
                    !open.contains(Provocation.Cause.OVERRIDE),
                    false));
        }

        private void hold(ChannelRole role, int code) {
            if (code == Provocation.AUTO) {
                plant.release(role);
            } else {
                plant.hold(role, code);
            }
        }
    }
}
