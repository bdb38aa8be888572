package org.pumpwright.host.stand.wire;

import java.util.Locale;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.protocol.Event;
import org.pumpwright.protocol.Limits;

/**
 * Says in plain words why a board made safe, with the board's own limits and the stand's calibrations. Thread-safe.
 *
 * @param limits the board's limits
 * @param channels the stand's calibrations
 */
record SafeCauses(Limits limits, Channels channels) {
    MadeSafe signal(Event event, long boardNanos) {
        return switch (event.reason()) {
            case HOST_ASKED, NONE, RESET -> new MadeSafe(Cause.HOST, boardNanos, "the program asked for it");
            case LINK_LOST ->
                new MadeSafe(
                        Cause.LINK_LOST,
                        boardNanos,
                        "the board heard nothing from the program for %d ms".formatted(limits.linkTimeOutMs()));
            case EMERGENCY_STOP -> new MadeSafe(Cause.EMERGENCY_STOP, boardNanos, "the emergency stop was pressed");
            case GUARD_OPEN -> new MadeSafe(Cause.GUARD_OPEN, boardNanos, "the guard was opened");
            case LEVEL_LOW -> new MadeSafe(Cause.LEVEL_LOW, boardNanos, "the tank's level fell low");
            case OVERRIDE_IN ->
                new MadeSafe(Cause.OVERRIDE_IN, boardNanos, "the unit's mechanical override was pushed in");
            case CONTACTOR -> new MadeSafe(Cause.CONTACTOR, boardNanos, contactor(event));
            case HARDWARE ->
                new MadeSafe(Cause.HARDWARE, boardNanos, "the board found a fault in itself and is locked");
            case RUN_TIME ->
                new MadeSafe(
                        Cause.RUN_TIME,
                        boardNanos,
                        "a drive was on for longer than the board's limit of %d s"
                                .formatted(limits.runTimeMs() / 1000));
            case OVER_CURRENT ->
                new MadeSafe(
                        Cause.OVER_CURRENT,
                        boardNanos,
                        beyond(
                                event,
                                "current",
                                ChannelRole.SUPPLY_AMPS,
                                "above",
                                limits.supplyAmps(),
                                limits.supplyAmpsMs()));
            case OVER_PRESSURE ->
                new MadeSafe(
                        Cause.OVER_PRESSURE,
                        boardNanos,
                        beyond(
                                event,
                                "pressure",
                                ChannelRole.OUTLET_PRESSURE,
                                "above",
                                limits.pressure(),
                                limits.pressureMs()));
            case DEAD_HEAD ->
                new MadeSafe(
                        Cause.DEAD_HEAD,
                        boardNanos,
                        beyond(
                                event,
                                "pressure",
                                ChannelRole.OUTLET_PRESSURE,
                                "above",
                                limits.deadHeadPressure(),
                                limits.deadHeadMs()));
            case DRY_RUN ->
                new MadeSafe(
                        Cause.DRY_RUN,
                        boardNanos,
                        beyond(event, "current", ChannelRole.SUPPLY_AMPS, "below", limits.dryAmps(), limits.dryMs()));
            case OVER_VOLTAGE ->
                new MadeSafe(
                        Cause.OVER_VOLTAGE,
                        boardNanos,
                        beyond(event, "voltage", ChannelRole.VOLTS_AT_PINS, "above", limits.volts(), limits.voltsMs()));
        };
    }

    private static String contactor(Event event) {
        return event.detail() == 0
                ? "the contactor did not close: check its coil, the emergency stop's loop and the feedback contact"
                : "the contactor opened by itself: check its coil's supply and the emergency stop's loop";
    }

    private String beyond(Event event, String what, ChannelRole role, String side, long limit, long millis) {
        String words = String.format(Locale.ROOT, "the %s stayed %s the board's limit", what, side);
        return channels.analog(role)
                .map(channel -> words
                        + String.format(
                                Locale.ROOT,
                                " of %s for %d ms, at %s",
                                print(channel, Math.toIntExact(limit)),
                                millis,
                                print(channel, event.detail())))
                .orElse(words);
    }

    private static String print(AnalogChannel channel, int code) {
        double si = channel.si(code);
        return switch (channel.role()) {
            case SUPPLY_AMPS -> String.format(Locale.ROOT, "%.1f A", si);
            case VOLTS_AT_PINS -> String.format(Locale.ROOT, "%.1f V", si);
            case OUTLET_PRESSURE ->
                new org.pumpwright.host.quantity.Pressure(si).print(org.pumpwright.host.quantity.UnitSystem.US);
            case WATER_TEMPERATURE -> String.format(Locale.ROOT, "%.0f K", si);
        };
    }
}
