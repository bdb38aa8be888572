package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Stretch;
import org.pumpwright.host.trace.Trace;

/**
 * What the stand showed at rest: armed, so the supply is switched through, and not yet driven. Thread-safe.
 *
 * @param volts mean volts at the pins
 * @param amps mean supply amps
 * @param pulses pulses of the flow meter
 * @param seconds how long it was watched
 */
record RestReading(double volts, double amps, long pulses, double seconds) {

    /**
     * The rest before the first step, or where a trace marks none the time before anything was driven; empty when no sample
     * was taken then.
     */
    static Optional<RestReading> of(Trace trace) {
        List<Sample> samples = samples(trace);
        if (samples.isEmpty()) {
            return Optional.empty();
        }
        Sample first = samples.get(0);
        Sample last = samples.get(samples.size() - 1);
        int meter = trace.channels().flowMeter().index();
        return Optional.of(new RestReading(
                mean(samples, trace.channels().required(ChannelRole.VOLTS_AT_PINS)),
                mean(samples, trace.channels().required(ChannelRole.SUPPLY_AMPS)),
                last.meters().get(meter).edges() - first.meters().get(meter).edges(),
                (last.boardNanos() - first.boardNanos()) / 1e9));
    }

    /** The samples taken then. */
    static List<Sample> samples(Trace trace) {
        return trace.stretches().stream()
                .filter(stretch -> stretch.kind() == Stretch.Kind.REST)
                .findFirst()
                .map(rest -> atRest(trace.during(rest)))
                .orElseGet(() -> atRest(trace.samples()));
    }

    private static List<Sample> atRest(List<Sample> samples) {
        List<Sample> rest = new ArrayList<>();
        for (Sample sample : samples) {
            if (!sample.applied().stream().allMatch(Duty.ZERO::equals)) {
                break;
            }
            if (sample.armed()) {
                rest.add(sample);
            }
        }
        return rest;
    }

    private static double mean(List<Sample> samples, AnalogChannel channel) {
        return Statistics.mean(
                samples.stream().mapToDouble(s -> channel.read(s)).toArray());
    }
}
