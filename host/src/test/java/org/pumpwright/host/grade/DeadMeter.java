package org.pumpwright.host.grade;

import java.util.List;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.host.trace.Trace;

/** Takes every edge out of a trace. */
final class DeadMeter {
    private DeadMeter() {}

    static Trace in(Trace trace) {
        List<Sample> silent = trace.samples().stream()
                .map(s -> new Sample(
                        s.boardNanos(),
                        List.of(new MeterCount(0, 0)),
                        s.analogs(),
                        s.applied(),
                        s.armed(),
                        s.emergencyStopClosed(),
                        s.guardClosed()))
                .toList();
        return new Trace(trace.channels(), silent, trace.points());
    }
}
