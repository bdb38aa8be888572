package org.pumpwright.host.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.curve.Band;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.FeatureJudgement.Decision;
import org.pumpwright.host.grade.Judgements;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.MeterChannel;
import org.pumpwright.host.trace.PointMark;
import org.pumpwright.host.trace.Sample;
import org.pumpwright.host.trace.Trace;

/** An invented sweep of nine points: its trace and its judgement agree with each other. */
final class SampleSweep {
    static final Channels CHANNELS = new Channels(
            List.of(new MeterChannel(
                    0,
                    KCurve.constant(KFactor.ofPulsesPerUsGallon(3000)),
                    0.005,
                    FlowRate.ofGallonsPerMinute(0.2),
                    Certificate.undated("none: simulated"))),
            List.of(
                    AnalogChannel.straight(ChannelRole.VOLTS_AT_PINS, 0, 0, 20, 0.001, 0.01, "none: simulated"),
                    AnalogChannel.straight(ChannelRole.SUPPLY_AMPS, 1, 0, 40, 0.005, 0.03, "none: simulated")));

    private static final double[] PERCENT = {20, 30, 50, 75, 100};
    private static final Set<Double> JUDGED = Set.of(30.0, 50.0, 100.0);
    private static final double[] HEALTHY_GPM = {0.48, 1.05, 2.06, 3.08, 3.86};
    private static final double[] HEALTHY_AMPS = {2.4, 3.4, 5.4, 8.6, 10.6};
    private static final double K = 3.39;
    private static final double FLOW_SPREAD = 0.025;
    private static final double AMPS_SPREAD = 0.05;
    private static final long POINT_NANOS = 9_000_000_000L;
    private static final long SETTLE_NANOS = 3_000_000_000L;
    private static final long WINDOW_NANOS = 100_000_000L;

    private final double[] flowShare;
    private final double[] ampsShare;

    private record Visit(Leg leg, int step) {}

    private SampleSweep(double[] flowShare, double[] ampsShare) {
        this.flowShare = flowShare;
        this.ampsShare = ampsShare;
    }

    static SampleSweep healthy() {
        return of(new double[] {1.01, 0.99, 1.012, 1.005, 0.998}, new double[] {1.02, 0.98, 1.01, 1, 1.01});
    }

    /** A sweep whose flow and motor amps are these shares of the healthy means at 20, 30, 50, 75 and 100 %. */
    static SampleSweep of(double[] flowShare, double[] ampsShare) {
        return new SampleSweep(flowShare, ampsShare);
    }

    private static List<Visit> visits() {
        List<Visit> visits = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            visits.add(new Visit(Leg.UP, i));
        }
        for (int i = 3; i > 0; i--) {
            visits.add(new Visit(Leg.DOWN, i));
        }
        visits.add(new Visit(Leg.REPEAT, 0));
        return visits;
    }

    private double gpm(Visit visit) {
        double warm = visit.leg() == Leg.UP ? 1 : 1.012;
        return HEALTHY_GPM[visit.step()] * flowShare[visit.step()] * warm;
    }

    private double motorAmps(Visit visit) {
        double warm = visit.leg() == Leg.UP ? 1 : 0.985;
        return HEALTHY_AMPS[visit.step()] * ampsShare[visit.step()] * warm;
    }

    private static double duty(Visit visit) {
        return PERCENT[visit.step()] / 100;
    }

    private double voltsAtPins(Visit visit) {
        return 13.8 - 0.05 * motorAmps(visit) * duty(visit);
    }

    List<FeatureJudgement> judge() {
        List<FeatureJudgement> features = new ArrayList<>();
        for (Visit visit : visits()) {
            Duty duty = Duty.ofPercent(PERCENT[visit.step()]);
            double volts = duty(visit) * voltsAtPins(visit) - (1 - duty(visit)) * 0.8;
            boolean judged = visit.leg() == Leg.UP && JUDGED.contains(PERCENT[visit.step()]);
            double mean = FlowRate.ofGallonsPerMinute(HEALTHY_GPM[visit.step()]).m3PerSecond();
            double flow = FlowRate.ofGallonsPerMinute(gpm(visit)).m3PerSecond();
            features.add(judge(
                    Feature.at(Feature.Kind.FLOW, duty, visit.leg()),
                    volts,
                    Uncertain.of(flow, 0.008 * flow),
                    mean,
                    FLOW_SPREAD,
                    judged));
            double amps = motorAmps(visit);
            features.add(judge(
                    Feature.at(Feature.Kind.MOTOR_AMPS, duty, visit.leg()),
                    volts,
                    new Uncertain(amps, 0.012 * amps, 24),
                    HEALTHY_AMPS[visit.step()],
                    AMPS_SPREAD,
                    judged));
        }
        return features;
    }

    private static FeatureJudgement judge(
            Feature feature, double volts, Uncertain measured, double mean, double spread, boolean judged) {
        Band limits = new Band(mean * (1 - K * spread), mean, mean * (1 + K * spread));
        double guard = 1.645 * measured.standardUncertainty();
        return Judgements.of(feature, volts, measured, limits, guard, decide(measured.value(), limits, guard), judged);
    }

    private static Decision decide(double value, Band limits, double guard) {
        if (value < limits.low() - guard) {
            return Decision.LOW;
        }
        if (value > limits.high() + guard) {
            return Decision.HIGH;
        }
        if (value < limits.low() + guard) {
            return Decision.NEAR_LOW;
        }
        return value > limits.high() - guard ? Decision.NEAR_HIGH : Decision.INSIDE;
    }

    Trace trace() {
        List<Sample> samples = new ArrayList<>();
        List<PointMark> points = new ArrayList<>();
        long nanos = 0;
        double edges = 0;
        int number = 1;
        for (Visit visit : visits()) {
            long begin = nanos;
            double perWindow = gpm(visit) / 60 * 3000 * WINDOW_NANOS / 1e9;
            for (; nanos < begin + POINT_NANOS; nanos += WINDOW_NANOS) {
                edges += perWindow;
                samples.add(sample(visit, nanos + WINDOW_NANOS, edges, perWindow));
            }
            Duty duty = Duty.ofPercent(PERCENT[visit.step()]);
            points.add(new PointMark(number++, visit.leg(), duty, begin, begin + SETTLE_NANOS, nanos, true, true));
        }
        return new Trace(CHANNELS, samples, points);
    }

    private Sample sample(Visit visit, long nanos, double edges, double perWindow) {
        double sinceEdge = (edges - Math.floor(edges)) / perWindow;
        long lastEdge = nanos - Math.round(sinceEdge * WINDOW_NANOS);
        int volts = CHANNELS.required(ChannelRole.VOLTS_AT_PINS).code(voltsAtPins(visit));
        int amps = CHANNELS.required(ChannelRole.SUPPLY_AMPS).code(motorAmps(visit) * duty(visit));
        return new Sample(
                nanos,
                List.of(new Sample.MeterCount((long) Math.floor(edges), lastEdge)),
                List.of(
                        new Sample.AnalogReading(volts, volts - 60, volts + 60),
                        new Sample.AnalogReading(amps, Math.max(0, amps - 120), amps + 120)),
                List.of(Duty.ofPercent(PERCENT[visit.step()])),
                true,
                true,
                true);
    }
}
