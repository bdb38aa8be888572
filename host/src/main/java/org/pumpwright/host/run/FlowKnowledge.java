package org.pumpwright.host.run;

import java.util.List;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.PulseFrequency;
import org.pumpwright.host.signal.PulseTrain;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.MeterCount;

/** How well the flow is known from a stretch of samples, the meter's calibration left out. Thread-safe. */
final class FlowKnowledge {
    private FlowKnowledge() {}

    /** Standard uncertainty of the mean flow by this meter as a share of it; infinite without a pulse. */
    static double share(List<Sample> stretch, int meter) {
        Sample first = stretch.get(0);
        Sample last = stretch.get(stretch.size() - 1);
        double seconds = (last.boardNanos() - first.boardNanos()) / 1e9;
        if (seconds <= 0
                || last.meters().get(meter).edges() == first.meters().get(meter).edges()) {
            return Double.POSITIVE_INFINITY;
        }
        List<MeterCount> counts =
                stretch.stream().map(sample -> sample.meters().get(meter)).toList();
        PulseTrain train = PulseTrain.of(
                counts.stream().mapToLong(MeterCount::edges).toArray(),
                counts.stream().mapToLong(MeterCount::lastEdgeNanos).toArray());
        Uncertain hertz = PulseFrequency.hertz(train, seconds);
        return hertz.value() > 0 ? hertz.standardUncertainty() / hertz.value() : Double.POSITIVE_INFINITY;
    }
}
