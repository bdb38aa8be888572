package org.pumpwright.host.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Every channel of a stand. The first meter carries the unit's flow. Thread-safe.
 *
 * @param meters at least one, the unit's flow first
 * @param analogs each role at most once
 */
public record Channels(List<MeterChannel> meters, List<AnalogChannel> analogs) {
    public Channels {
        meters = List.copyOf(meters);
        analogs = List.copyOf(analogs);
        if (meters.isEmpty()) {
            throw new IllegalArgumentException("a stand needs a meter: none is described");
        }
        long roles = analogs.stream().map(AnalogChannel::role).distinct().count();
        if (roles != analogs.size()) {
            throw new IllegalArgumentException("two analogue channels have the same role");
        }
    }

    /**
     * The same channels with another meter carrying the unit's flow.
     *
     * @throws IllegalArgumentException when no meter has this number on the board
     */
    public Channels withFlowMeter(int index) {
        MeterChannel flow = meters.stream()
                .filter(meter -> meter.index() == index)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the stand has no meter %d".formatted(index)));
        List<MeterChannel> order = new ArrayList<>(List.of(flow));
        meters.stream().filter(meter -> meter.index() != index).forEach(order::add);
        return new Channels(order, analogs);
    }

    public MeterChannel flowMeter() {
        return meters.get(0);
    }

    public Optional<AnalogChannel> analog(ChannelRole role) {
        return analogs.stream().filter(channel -> channel.role() == role).findFirst();
    }

    /**
     * The channel with this role.
     *
     * @throws IllegalStateException when the stand has none; a stand's description is checked before a run starts
     */
    public AnalogChannel required(ChannelRole role) {
        return analog(role)
                .orElseThrow(() -> new IllegalStateException("the stand has no channel for " + role.words()));
    }
}
