package org.pumpwright.host.grade;

import java.util.List;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Trace;

/** Makes the meter of a trace one that is good from 1 gal/min only. */
final class LargeMeter {
    private LargeMeter() {}

    static Trace in(Trace trace) {
        MeterChannel meter = trace.channels().flowMeter();
        MeterChannel large = new MeterChannel(
                meter.index(),
                meter.k(),
                meter.relativeUncertainty(),
                FlowRate.ofGallonsPerMinute(1),
                meter.certificate());
        Channels channels = new Channels(List.of(large), trace.channels().analogs());
        return new Trace(channels, trace.samples(), trace.points());
    }
}
