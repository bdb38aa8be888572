package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.protocol.ResetCause;

/** Reaches into a simulated board. Confined to the run thread. */
public final class SimulatedProvoker implements Provoker {
    private final SimulatedBoard board;
    private final Set<Provocation.Cause> open = EnumSet.noneOf(Provocation.Cause.class);

    /** @param board the board that the line under test leads to */
    public SimulatedProvoker(SimulatedBoard board) {
        this.board = board;
    }

    @Override
    public boolean can(Provocation.Cause cause) {
        return true;
    }

    @Override
    public boolean toy() {
        return true;
    }

    @Override
    public Duration patience() {
        return Duration.ofMillis(50);
    }

    @Override
    public void provoke(Provocation what) {
        switch (what.cause()) {
            case EMERGENCY_STOP, GUARD, LEVEL, OVERRIDE -> input(what);
            case FEEDBACK ->
                board.holdFeedback(
                        what.value() == Provocation.AUTO ? Optional.empty() : Optional.of(what.value() == 1));
            case VOLTS_CODE -> hold(ChannelRole.VOLTS_AT_PINS, what);
            case AMPS_CODE -> hold(ChannelRole.SUPPLY_AMPS, what);
            case PRESSURE_CODE -> hold(ChannelRole.OUTLET_PRESSURE, what);
            case CONVERTER -> board.stopConverter(what.value() == 0);
            case METER_HZ -> board.holdMeter(what.value());
            case RESTART -> board.reset(ResetCause.WATCHDOG);
        }
    }

    private void input(Provocation what) {
        if (what.value() == 1) {
            open.remove(what.cause());
        } else {
            open.add(what.cause());
        }
        board.setInputs(
                closed(Provocation.Cause.EMERGENCY_STOP),
                closed(Provocation.Cause.GUARD),
                closed(Provocation.Cause.LEVEL),
                closed(Provocation.Cause.OVERRIDE));
    }

    private boolean closed(Provocation.Cause input) {
        return !open.contains(input);
    }

    private void hold(ChannelRole role, Provocation what) {
        board.holdReading(role, what.value() == Provocation.AUTO ? OptionalInt.empty() : OptionalInt.of(what.value()));
    }
}
