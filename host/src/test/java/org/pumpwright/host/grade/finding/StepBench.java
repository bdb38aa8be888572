package org.pumpwright.host.grade.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.plan.Hold;
import org.pumpwright.host.plan.Measure;
import org.pumpwright.host.plan.PlanPoint;
import org.pumpwright.host.plan.Reading;
import org.pumpwright.host.plan.Settle;
import org.pumpwright.host.plan.Sweep;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Leg;
import org.pumpwright.host.trace.MeterChannel;

/** The stand and the steps that the tests of findings share. */
final class StepBench {
    private StepBench() {}

    /** A stand whose current sensor reads both ways, so that its zero can be seen. */
    static Channels channels() {
        double psi = Pressure.PASCALS_PER_PSI;
        return new Channels(
                List.of(meter(0), meter(1)),
                List.of(
                        AnalogChannel.straight(ChannelRole.VOLTS_AT_PINS, 0, 0, 20, 0.001, 0.010, "none"),
                        AnalogChannel.straight(ChannelRole.SUPPLY_AMPS, 1, -5, 45, 0.005, 0.03, "none"),
                        AnalogChannel.straight(
                                ChannelRole.OUTLET_PRESSURE, 2, -18.75 * psi, 187.5 * psi, 0, 0.75 * psi, "none"),
                        AnalogChannel.straight(ChannelRole.WATER_TEMPERATURE, 3, 273.15, 100, 0, 0.5, "none")));
    }

    private static MeterChannel meter(int index) {
        return new MeterChannel(
                index,
                KCurve.constant(KFactor.ofPulsesPerUsGallon(3000)),
                0.005,
                FlowRate.ofGallonsPerMinute(0.2),
                Certificate.undated("none"));
    }

    static Hold hold(String name, Reading reads, double percent, double seconds) {
        return new Hold(name, reads, Duty.ofPercent(percent), seconds, 0.5, 1, 0, 0);
    }

    static Ask ask(String name, Map<String, Double> simulated) {
        return new Ask(name, "Do it.", List.of(new Ask.Answer("done", Optional.empty())), simulated);
    }

    static Sweep sweep(double measureSeconds, Integer... percents) {
        List<PlanPoint> points = new ArrayList<>();
        for (int percent : percents) {
            points.add(new PlanPoint(points.size() + 1, Leg.UP, Duty.ofPercent(percent)));
        }
        for (int i = percents.length - 2; i > 0; i--) {
            points.add(new PlanPoint(points.size() + 1, Leg.DOWN, Duty.ofPercent(percents[i])));
        }
        points.add(new PlanPoint(points.size() + 1, Leg.REPEAT, Duty.ofPercent(percents[0])));
        return new Sweep("sweep", points, 0.5, new Settle(2, 10, 0.005), new Measure(measureSeconds, 0, 1, 60));
    }

    static Finding named(List<Finding> findings, String name) {
        return findings.stream()
                .filter(finding -> finding.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no finding '%s' in %s".formatted(name, findings)));
    }

    static Uncertain value(List<Finding> findings, String name) {
        Finding finding = named(findings, name);
        if (finding.outcome() instanceof Finding.Figure figure) {
            return figure.value();
        }
        throw new AssertionError(finding.toString());
    }

    static String word(List<Finding> findings, String name) {
        Finding finding = named(findings, name);
        if (finding.outcome() instanceof Finding.Word word) {
            return word.word();
        }
        throw new AssertionError(finding.toString());
    }

    /** Whether a true value lies within two standard uncertainties. */
    static boolean holds(Uncertain found, double truth) {
        return Math.abs(found.value() - truth) <= 2 * found.standardUncertainty();
    }
}
