package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Sample.AnalogReading;
import org.pumpwright.host.trace.Sample.MeterCount;
import org.pumpwright.host.trace.Trace;

/**
 * Makes a trace to order: a unit exactly on the healthy curve unless told otherwise, on a stand in order unless told
 * otherwise. The curve is a straight line, so that expected figures can be worked out by hand.
 */
final class SyntheticRun {
    private static final long PERIOD_NANOS = 20_000_000;
    private static final int REST_SAMPLES = 25;
    private static final int SETTLE_SAMPLES = 5;
    private static final int MEASURE_SAMPLES = 250;

    private final List<Sample> samples = new ArrayList<>();
    private final List<PointMark> marks = new ArrayList<>();
    private final Map<Integer, Double> flowFactors = new HashMap<>();
    private final Map<Integer, Double> ampsFactors = new HashMap<>();
    private Channels channels = Bench.channels();
    private double restVolts = Bench.SUPPLY_VOLTS;
    private double supplyOhms = 0.05;
    private double restAmps;
    private int restPulses;
    private double pressureFactor = 1;
    private double voltsOffWhileDriven;
    private double dutyError;
    private double wander;
    private int settledUpTo = 101;
    private int enoughUpTo = 101;
    private int lastDutyPercent = 101;
    private boolean armed = true;

    private long nanos = 1_000_000_000;
    private double phase;
    private long edges;
    private long lastEdgeNanos;
    private double wanderState;
    private final Random random = new Random(42);

    static SyntheticRun healthy() {
        return new SyntheticRun();
    }

    SyntheticRun flow(int dutyPercent, double factor) {
        flowFactors.put(dutyPercent, factor);
        return this;
    }

    SyntheticRun amps(int dutyPercent, double factor) {
        ampsFactors.put(dutyPercent, factor);
        return this;
    }

    SyntheticRun everywhere(double flowFactor, double ampsFactor) {
        Bench.DUTY_PERCENT.forEach(d -> flow(d, flowFactor).amps(d, ampsFactor));
        return this;
    }

    SyntheticRun without(ChannelRole role) {
        channels = new Channels(
                channels.meters(),
                channels.analogs().stream().filter(c -> c.role() != role).toList());
        return this;
    }

    SyntheticRun restVolts(double volts) {
        restVolts = volts;
        return this;
    }

    SyntheticRun supplyOhms(double ohms) {
        supplyOhms = ohms;
        return this;
    }

    SyntheticRun restAmps(double amps) {
        restAmps = amps;
        return this;
    }

    SyntheticRun restPulses(int pulses) {
        restPulses = pulses;
        return this;
    }

    /** Pressure over what the stand's nozzle would need for the flow. */
    SyntheticRun pressureFactor(double factor) {
        pressureFactor = factor;
        return this;
    }

    SyntheticRun voltsOffWhileDriven(double volts) {
        voltsOffWhileDriven = volts;
        return this;
    }

    SyntheticRun dutyError(double share) {
        dutyError = share;
        return this;
    }

    /** Standard deviation of a flow that wanders, as air slugs make it, as a share of the flow. */
    SyntheticRun wander(double share) {
        wander = share;
        return this;
    }

    SyntheticRun unsettledFrom(int dutyPercent) {
        settledUpTo = dutyPercent;
        return this;
    }

    SyntheticRun tooFewPulsesFrom(int dutyPercent) {
        enoughUpTo = dutyPercent;
        return this;
    }

    SyntheticRun endsBefore(int dutyPercent) {
        lastDutyPercent = dutyPercent;
        return this;
    }

    SyntheticRun neverArmed() {
        armed = false;
        return this;
    }

    /** The straight healthy curve: flow 0.1 + 0.3 U gal/min with 2.5 %, motor current 1 + 0.8 U A with 7 %. */
    static HealthyCurve curve() {
        return curve(20, 2.76, 1, 14.5);
    }

    static HealthyCurve curve(int units, double factor, double fromVolts, double toVolts) {
        return new HealthyCurve(
                "line",
                3,
                "A straight line",
                Bench.CONDITIONS,
                true,
                units,
                factor,
                "95 % of units with 95 % confidence",
                Bench.FREEWHEEL_VOLTS,
                List.of(curvePoint(fromVolts), curvePoint(toVolts)),
                "tests",
                "2026-01-01");
    }

    private static CurvePoint curvePoint(double volts) {
        return new CurvePoint(volts, healthyFlow(volts), 0.025, healthyAmps(volts), 0.07);
    }

    static double healthyFlow(double volts) {
        return FlowRate.ofGallonsPerMinute(0.1 + 0.3 * volts).m3PerSecond();
    }

    static double healthyAmps(double volts) {
        return 1 + 0.8 * volts;
    }

    GradingInput input() {
        return Bench.input(trace(), curve());
    }

    Grade grade() {
        return Grader.grade(input());
    }

    Grade grade(Function<Trace, GradingInput> toInput) {
        return Grader.grade(toInput.apply(trace()));
    }

    Trace trace() {
        rest();
        for (PlanPoint point : Bench.plan().points()) {
            int percent = (int) Math.round(point.duty().percent());
            if (percent >= lastDutyPercent && point.leg() == Leg.UP) {
                break;
            }
            visit(point, percent);
        }
        return new Trace(channels, samples, marks);
    }

    private void rest() {
        for (int i = 0; i < REST_SAMPLES; i++) {
            if (i > 0 && i <= restPulses) {
                edges++;
                lastEdgeNanos = nanos + 1_000_000;
            }
            sample(0, restVolts, restAmps, 0, 0);
        }
    }

    private void visit(PlanPoint point, int percent) {
        double duty = point.duty().fraction() + dutyError;
        double volts = restVolts;
        double motorAmps = 0;
        for (int i = 0; i < 60; i++) {
            motorAmps = healthyAmps(effective(duty, volts)) * ampsFactors.getOrDefault(percent, 1.0);
            volts = restVolts - voltsOffWhileDriven - supplyOhms * duty * motorAmps;
        }
        double flow = healthyFlow(effective(duty, volts)) * flowFactors.getOrDefault(percent, 1.0);
        double pressure = Math.pow(flow / Bench.NOZZLE, 2) * pressureFactor;
        long set = nanos;
        for (int i = 0; i < SETTLE_SAMPLES; i++) {
            sample(duty, volts, duty * motorAmps, pressure, flow);
        }
        long from = nanos;
        for (int i = 0; i < MEASURE_SAMPLES; i++) {
            sample(duty, volts, duty * motorAmps, pressure, flow);
        }
        boolean settled = percent < settledUpTo;
        boolean enough = percent < enoughUpTo;
        marks.add(new PointMark(point.number(), point.leg(), point.duty(), set, from, nanos, settled, enough));
    }

    private static double effective(double duty, double volts) {
        return duty * volts - (1 - duty) * Bench.FREEWHEEL_VOLTS;
    }

    private void sample(double duty, double volts, double amps, double pressure, double flow) {
        wanderState = 0.8 * wanderState + 0.6 * random.nextGaussian();
        double pulses = flow
                * channels.flowMeter().k().at(new FlowRate(flow)).pulsesPerM3()
                * (1 + wander * wanderState)
                * PERIOD_NANOS
                / 1e9;
        double before = phase;
        phase += pulses;
        if (Math.floor(phase) > Math.floor(before)) {
            edges += (long) (Math.floor(phase) - Math.floor(before));
            lastEdgeNanos = nanos + Math.round((Math.floor(phase) - before) / pulses * PERIOD_NANOS);
        }
        nanos += PERIOD_NANOS;
        List<AnalogReading> analogs = new ArrayList<>(List.of(reading(0), reading(0), reading(0), reading(0)));
        put(analogs, ChannelRole.VOLTS_AT_PINS, volts);
        put(analogs, ChannelRole.SUPPLY_AMPS, amps);
        put(analogs, ChannelRole.OUTLET_PRESSURE, pressure);
        Duty applied = new Duty((int) Math.round(duty * Duty.FULL_PARTS));
        samples.add(new Sample(
                nanos, List.of(new MeterCount(edges, lastEdgeNanos)), analogs, List.of(applied), armed, true, true));
    }

    private void put(List<AnalogReading> analogs, ChannelRole role, double si) {
        Optional<AnalogChannel> channel = channels.analog(role);
        channel.ifPresent(c -> analogs.set(c.index(), reading(c.code(si))));
    }

    private static AnalogReading reading(int code) {
        return new AnalogReading(code, code, code);
    }
}
