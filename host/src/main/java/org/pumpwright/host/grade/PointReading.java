package org.pumpwright.host.grade;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.PulseFrequency;
import org.pumpwright.host.signal.PulseHealth;
import org.pumpwright.host.signal.PulseTrain;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/**
 * What one point of a sweep measured, in SI units. Each uncertainty holds the scatter during the point and the calibration
 * of the channel. Nothing is subtracted for the reading at rest: a converter cannot show the negative half of a zero error.
 * Thread-safe.
 *
 * @param mark which point
 * @param duty mean duty that the pin got, 0 to 1
 * @param pulses pulses of the flow meter
 * @param flow m3/s
 * @param belowRange true when the flow is under twice the meter's least: K does not hold there
 * @param voltsAtPins V
 * @param supplyAmps A
 * @param pressure outlet pressure, Pa; empty where the stand has no such channel
 * @param pulseHealth evenness of the pulses
 * @param ampsVariation standard deviation of the single amps readings over their mean
 */
public record PointReading(
        PointMark mark,
        double duty,
        long pulses,
        Uncertain flow,
        boolean belowRange,
        Uncertain voltsAtPins,
        Uncertain supplyAmps,
        Optional<Uncertain> pressure,
        PulseHealth pulseHealth,
        double ampsVariation) {
    /** Fewer samples than this are no measurement. */
    private static final int LEAST_SAMPLES = 3;

    /** K is trusted from this many times the meter's least flow upwards (common practice, no source). */
    private static final double RANGE_FACTOR = 2;

    /** Every point of a trace that has enough samples to be read, in the order of the sweep. */
    public static List<PointReading> all(Trace trace) {
        return trace.points().stream()
                .filter(point -> trace.measured(point).size() >= LEAST_SAMPLES)
                .map(point -> of(trace, point))
                .toList();
    }

    private static PointReading of(Trace trace, PointMark point) {
        List<Sample> samples = trace.measured(point);
        PulseTrain train = train(samples, trace.channels().flowMeter());
        double seconds =
                (samples.get(samples.size() - 1).boardNanos() - samples.get(0).boardNanos()) / 1e9;
        FlowReading flow = FlowReading.of(train, seconds, trace.channels().flowMeter());
        AnalogChannel amps = trace.channels().required(ChannelRole.SUPPLY_AMPS);
        return new PointReading(
                point,
                Statistics.mean(column(samples, s -> s.applied().get(0).fraction())),
                train.pulses(),
                flow.flow(),
                flow.belowRange(),
                mean(samples, trace.channels().required(ChannelRole.VOLTS_AT_PINS)),
                mean(samples, amps),
                trace.channels().analog(ChannelRole.OUTLET_PRESSURE).map(channel -> mean(samples, channel)),
                PulseHealth.of(train),
                Statistics.coefficientOfVariation(column(samples, s -> reading(s, amps))));
    }

    private record FlowReading(Uncertain flow, boolean belowRange) {
        static FlowReading of(PulseTrain train, double seconds, MeterChannel meter) {
            Uncertain hertz = PulseFrequency.hertz(train, seconds);
            Uncertain flow = meter.flow(hertz);
            double range = RANGE_FACTOR * meter.least().m3PerSecond();
            boolean below = flow.value() < range;
            // Below its range a meter only tells that the flow is somewhere there: rectangular (JCGM 100, 4.3.7).
            return new FlowReading(below ? flow.with(range / Math.sqrt(12), Double.POSITIVE_INFINITY) : flow, below);
        }
    }

    /** Motor current, A: the supply current flows for the share of the duty only. Needs a duty above 0. */
    public Uncertain motorAmps() {
        return supplyAmps.times(1 / duty);
    }

    /** Effective volts, V, for a driver whose freewheel diode drops this much. */
    public Uncertain effectiveVolts(double freewheelVolts) {
        double volts = duty * voltsAtPins.value() - (1 - duty) * freewheelVolts;
        return new Uncertain(volts, duty * voltsAtPins.standardUncertainty(), voltsAtPins.degreesOfFreedom());
    }

    /** True when the drive was on: a pin at 0 drives nothing. */
    boolean driven() {
        return duty > 0;
    }

    boolean up() {
        return mark.leg() == Leg.UP;
    }

    FlowRate flowRate() {
        return new FlowRate(flow.value());
    }

    private static PulseTrain train(List<Sample> samples, MeterChannel meter) {
        return PulseTrain.of(
                longs(samples, s -> s.meters().get(meter.index()).edges()),
                longs(samples, s -> s.meters().get(meter.index()).lastEdgeNanos()));
    }

    private static Uncertain mean(List<Sample> samples, AnalogChannel channel) {
        Uncertain mean = Statistics.uncertainMean(column(samples, s -> reading(s, channel)));
        return mean.with(channel.calibrationUncertainty(mean.value()), Double.POSITIVE_INFINITY);
    }

    private static double reading(Sample sample, AnalogChannel channel) {
        return channel.read(sample);
    }

    private static double[] column(List<Sample> samples, ToDoubleFunction<Sample> of) {
        return samples.stream().mapToDouble(of).toArray();
    }

    private static long[] longs(List<Sample> samples, ToLongFunction<Sample> of) {
        return samples.stream().mapToLong(of).toArray();
    }
}
