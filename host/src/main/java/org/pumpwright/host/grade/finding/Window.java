package org.pumpwright.host.grade.finding;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.PulseFrequency;
import org.pumpwright.host.signal.PulseTrain;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.Sample;

/**
 * A row of samples and what they read, in SI units. Each uncertainty holds the scatter within the window and the calibration
 * of the channel. Nothing is subtracted for the reading at rest: a converter cannot show the negative half of a zero
 * error. Thread-safe.
 *
 * @param samples at least one
 * @param channels what their raw readings mean
 * @param drive number of the drive that feeds the unit
 */
public record Window(List<Sample> samples, Channels channels, int drive) {
    /** K is trusted from this many times the meter's least flow upwards (common practice, no source). */
    private static final double RANGE_FACTOR = 2;

    /**
     * A flow, m3/s.
     *
     * @param value the flow
     * @param belowRange true when it is under twice the meter's least: K does not hold there
     */
    public record Flow(Uncertain value, boolean belowRange) {}

    public int size() {
        return samples.size();
    }

    /** From the first sample to the last, s. */
    public double seconds() {
        return (last().boardNanos() - first().boardNanos()) / 1e9;
    }

    private Sample first() {
        return samples.get(0);
    }

    private Sample last() {
        return samples.get(samples.size() - 1);
    }

    /** The samples from this many seconds after the first one on. */
    Window after(double seconds) {
        return between(seconds, Double.POSITIVE_INFINITY);
    }

    /** The samples between two times after the first one, s. */
    Window between(double fromSeconds, double toSeconds) {
        long begin = first().boardNanos();
        List<Sample> some = samples.stream()
                .filter(sample -> {
                    double at = (sample.boardNanos() - begin) / 1e9;
                    return at >= fromSeconds && at <= toSeconds;
                })
                .toList();
        return new Window(some, channels, drive);
    }

    /** The second half: what a hold reads once it has settled. */
    Window secondHalf() {
        return after(seconds() / 2);
    }

    /** Times of the samples after the first one, s. */
    double[] times() {
        return column(sample -> (sample.boardNanos() - first().boardNanos()) / 1e9);
    }

    /** The duty that the unit's pin got, 0 to 1. */
    public double[] duties() {
        return column(sample -> sample.applied().get(drive).fraction());
    }

    /** Pulses of a meter from the first sample to the last. */
    long pulses(int meter) {
        return last().meters().get(meter).edges() - first().meters().get(meter).edges();
    }

    /** Edges counted up to each sample. */
    long[] edges(int meter) {
        return longs(sample -> sample.meters().get(meter).edges());
    }

    /** Time of the last edge before each sample, after the first sample, s; below 0 where it is older. */
    double[] lastEdges(int meter) {
        return column(sample -> (sample.meters().get(meter).lastEdgeNanos() - first().boardNanos()) / 1e9);
    }

    /** The edges of a meter with known times. */
    public PulseTrain train(int meter) {
        return PulseTrain.of(
                edges(meter), longs(sample -> sample.meters().get(meter).lastEdgeNanos()));
    }

    /** Pulses a second of a meter. */
    Uncertain hertz(int meter) {
        return PulseFrequency.hertz(train(meter), seconds());
    }

    /** Flow through the unit's meter. */
    public Flow flow() {
        return flow(channels.flowMeter());
    }

    /** Below its range a meter only tells that the flow is somewhere there: rectangular (JCGM 100, 4.3.7). */
    Flow flow(MeterChannel meter) {
        Uncertain flow = meter.flow(hertz(meter.index()));
        double range = RANGE_FACTOR * meter.least().m3PerSecond();
        boolean below = flow.value() < range;
        return new Flow(below ? flow.with(range / Math.sqrt(12), Double.POSITIVE_INFINITY) : flow, below);
    }

    /** Mean of a channel that every stand has. */
    public Uncertain required(ChannelRole role) {
        return mean(channels.required(role));
    }

    /** Mean of a channel; empty where the stand has none. */
    public Optional<Uncertain> mean(ChannelRole role) {
        return channels.analog(role).map(this::mean);
    }

    /**
     * Mean of a channel with its scatter alone, for comparing readings of one channel with each other: what the channel is off
     * by is to be added for the comparison as a whole (JCGM 100, 5.2.2).
     */
    Uncertain bare(ChannelRole role) {
        AnalogChannel channel = channels.required(role);
        return Statistics.uncertainMean(values(channel))
                .with(ConverterStep.stuck(this, channel) / Math.sqrt(12), Double.POSITIVE_INFINITY);
    }

    private Uncertain mean(AnalogChannel channel) {
        Uncertain mean = Statistics.uncertainMean(values(channel));
        return mean.with(channel.calibrationUncertainty(mean.value()), Double.POSITIVE_INFINITY);
    }

    /** Each sample's value of a channel. */
    public double[] values(AnalogChannel channel) {
        return column(channel::read);
    }

    double[] values(ChannelRole role) {
        return values(channels.required(role));
    }

    private double[] column(ToDoubleFunction<Sample> of) {
        return samples.stream().mapToDouble(of).toArray();
    }

    private long[] longs(ToLongFunction<Sample> of) {
        return samples.stream().mapToLong(of).toArray();
    }
}
