package org.pumpwright.host.grade;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.grade.finding.Window;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.signal.PulseHealth;
import org.pumpwright.host.signal.PulseTrain;
import org.pumpwright.host.signal.Statistics;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;
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

    /** Every point of a trace that has enough samples to be read, in the order of the sweep; the unit hangs on drive 0. */
    public static List<PointReading> all(Trace trace) {
        return all(trace, 0);
    }

    /**
     * Every point of a trace that has enough samples to be read, in the order of the sweep.
     *
     * @param drive number of the drive that feeds the unit
     */
    public static List<PointReading> all(Trace trace, int drive) {
        return trace.points().stream()
                .filter(point -> trace.measured(point).size() >= LEAST_SAMPLES)
                .map(point -> of(new Window(trace.measured(point), trace.channels(), drive), point))
                .toList();
    }

    private static PointReading of(Window window, PointMark point) {
        PulseTrain train = window.train(window.channels().flowMeter().index());
        Window.Flow flow = window.flow();
        double[] amps = window.values(window.channels().required(ChannelRole.SUPPLY_AMPS));
        return new PointReading(
                point,
                Statistics.mean(window.duties()),
                train.pulses(),
                flow.value(),
                flow.belowRange(),
                window.required(ChannelRole.VOLTS_AT_PINS),
                window.required(ChannelRole.SUPPLY_AMPS),
                window.mean(ChannelRole.OUTLET_PRESSURE),
                PulseHealth.of(train),
                Statistics.coefficientOfVariation(amps));
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
}
