package org.pumpwright.host.run;

import java.util.List;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.run.RunEvent.LiveValues;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.MeterCount;

/** Values for people to watch, from a stretch of samples. Confined to the run thread. */
final class LiveView {
    private final Channels channels;

    LiveView(Channels channels) {
        this.channels = channels;
    }

    /** Means over the stretch; the flow from its first to its last edge, 0 with fewer than two. */
    LiveValues over(List<Sample> stretch) {
        return new LiveValues(
                flow(stretch),
                FlowKnowledge.share(stretch, channels.flowMeter().index()),
                mean(ChannelRole.SUPPLY_AMPS, stretch),
                mean(ChannelRole.VOLTS_AT_PINS, stretch));
    }

    private FlowRate flow(List<Sample> stretch) {
        int meter = channels.flowMeter().index();
        MeterCount first = stretch.get(0).meters().get(meter);
        MeterCount last = stretch.get(stretch.size() - 1).meters().get(meter);
        long edges = last.edges() - first.edges();
        double seconds = (last.lastEdgeNanos() - first.lastEdgeNanos()) / 1e9;
        return edges < 1 || seconds <= 0
                ? new FlowRate(0)
                : channels.flowMeter().flow(edges / seconds);
    }

    private double mean(ChannelRole role, List<Sample> stretch) {
        AnalogChannel channel = channels.required(role);
        double code = stretch.stream()
                .mapToInt(sample -> sample.analogs().get(channel.index()).mean())
                .average()
                .orElse(0);
        return channel.si(code);
    }
}
