package org.pumpwright.host.stand.simulated;

import java.util.OptionalInt;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.Limit;
import org.pumpwright.protocol.Limits;

/**
 * The limits that a simulated board starts with: those of the microcontroller board, 30 A, 150 psi, 131.25 psi for 5 s at
 * a closed line, 17 V, as readings of the channels described. Thread-safe.
 */
final class OwnLimits {
    private static final double AMPS = 30;
    private static final double PASCALS = 150 * 6894.757293168;
    private static final double DEAD_HEAD_PASCALS = 131.25 * 6894.757293168;
    private static final double VOLTS = 17;
    private static final int QUICK_MILLIS = 50;
    private static final int PRESSURE_MILLIS = 100;
    private static final int SLOW_MILLIS = 5000;
    private static final int RUN_MILLIS = 2_400_000;
    private static final int LINK_MILLIS = 750;

    private OwnLimits() {}

    static Limits of(Channels channels) {
        Limits limits = Limits.widest()
                .with(Limit.SUPPLY_AMPS_TIME, QUICK_MILLIS)
                .with(Limit.RUN_TIME, RUN_MILLIS)
                .with(Limit.PRESSURE_TIME, PRESSURE_MILLIS)
                .with(Limit.DEAD_HEAD_TIME, SLOW_MILLIS)
                .with(Limit.DRY_TIME, SLOW_MILLIS)
                .with(Limit.VOLTS_TIME, QUICK_MILLIS)
                .with(Limit.LINK_TIME_OUT, LINK_MILLIS);
        limits = with(limits, Limit.SUPPLY_AMPS, code(channels, ChannelRole.SUPPLY_AMPS, AMPS));
        limits = with(limits, Limit.PRESSURE, code(channels, ChannelRole.OUTLET_PRESSURE, PASCALS));
        limits = with(limits, Limit.DEAD_HEAD_PRESSURE, code(channels, ChannelRole.OUTLET_PRESSURE, DEAD_HEAD_PASCALS));
        return with(limits, Limit.VOLTS, code(channels, ChannelRole.VOLTS_AT_PINS, VOLTS));
    }

    private static OptionalInt code(Channels channels, ChannelRole role, double si) {
        return channels.analog(role)
                .map((AnalogChannel channel) -> OptionalInt.of(channel.code(si)))
                .orElse(OptionalInt.empty());
    }

    private static Limits with(Limits limits, Limit limit, OptionalInt code) {
        return code.isPresent() ? limits.with(limit, code.getAsInt()) : limits;
    }
}
