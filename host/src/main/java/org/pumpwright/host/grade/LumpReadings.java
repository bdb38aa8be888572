package org.pumpwright.host.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.grade.lump.Lump;
import org.pumpwright.host.grade.lump.LumpFit;
import org.pumpwright.host.grade.lump.LumpInput;
import org.pumpwright.host.grade.lump.LumpPoint;
import org.pumpwright.host.grade.lump.Lumps;
import org.pumpwright.host.grade.lump.SharedErrors;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/**
 * The figures of a pump that its sweep can tell, as readings; a figure that would mislead becomes a word. What a channel's
 * points share is taken as a gain, the pressure's as a zero: those are what dominates in such sensors. Thread-safe.
 */
final class LumpReadings {
    /**
     * How far single points of a pump that is in order lie from the law, beside what the stand's noise explains: warming within
     * the sweep, friction that is not quite that of the law (common practice, no source).
     */
    private static final double FLOW_SHARE = 0.006;

    private static final double FLOW_M3_PER_SECOND =
            FlowRate.ofGallonsPerMinute(0.008).m3PerSecond();
    private static final double AMPS_SHARE = 0.01;
    private static final double AMPS = 0.03;

    /** A made or very quiet reading may show no scatter at all. */
    private static final double LEAST_SHARE = 1e-4;

    /** Standard uncertainty of a nozzle whose pressure is not read. */
    private static final double NOZZLE_SHARE = 0.03;

    private LumpReadings() {}

    static List<Finding> of(GradingInput input, HealthyCurve curve, List<PointReading> up) {
        List<PointReading> usable = up.stream()
                .filter(point -> point.flow().value() > 0 && !point.belowRange())
                .filter(point -> point.mark().settled())
                .filter(point -> point.supplyAmps().value() > 0)
                .toList();
        if (usable.isEmpty()) {
            return List.of();
        }
        List<LumpPoint> points =
                usable.stream().map(point -> point(input, curve, point)).toList();
        double nozzle = input.stand().nozzleM3PerSecondPerRootPascal();
        LumpFit fit = LumpFit.of(
                LumpInput.of(points, shared(input, usable), Optional.of(Uncertain.of(nozzle, NOZZLE_SHARE * nozzle))));
        if (fit instanceof LumpFit.Fitted fitted) {
            return findings(fitted.lumps());
        }
        return fit instanceof LumpFit.Refused refused
                ? List.of(new Finding(
                        RunReadings.STEP, "figures of the pump", new Finding.Word("not fitted"), refused.reason()))
                : List.of();
    }

    private static LumpPoint point(GradingInput input, HealthyCurve curve, PointReading point) {
        AnalogChannel volts = input.trace().channels().required(ChannelRole.VOLTS_AT_PINS);
        AnalogChannel amps = input.trace().channels().required(ChannelRole.SUPPLY_AMPS);
        Uncertain flow = point.flow();
        double meter = input.trace().channels().flowMeter().relativeUncertainty() * flow.value();
        return new LumpPoint(
                own(
                        point.effectiveVolts(curve.freewheelVolts()),
                        point.duty()
                                * volts.calibrationUncertainty(
                                        point.voltsAtPins().value()),
                        0),
                own(
                        point.motorAmps(),
                        amps.calibrationUncertainty(point.supplyAmps().value()) / point.duty(),
                        AMPS_SHARE * point.motorAmps().value() + AMPS),
                own(flow, meter, FLOW_SHARE * flow.value() + FLOW_M3_PER_SECOND),
                point.pressure()
                        .filter(read -> read.value() > 0)
                        .map(read -> own(
                                read,
                                input.trace()
                                        .channels()
                                        .required(ChannelRole.OUTLET_PRESSURE)
                                        .calibrationUncertainty(read.value()),
                                0)));
    }

    /** Without what all points share, with what the law leaves open. */
    private static Uncertain own(Uncertain read, double shared, double law) {
        double square = read.standardUncertainty() * read.standardUncertainty() - shared * shared;
        double least = Math.max(LEAST_SHARE * Math.abs(read.value()), 1e-12);
        double scatter = Math.max(Math.sqrt(Math.max(0, square)), least);
        return Uncertain.of(read.value(), Math.sqrt(scatter * scatter + law * law));
    }

    private static SharedErrors shared(GradingInput input, List<PointReading> points) {
        PointReading top = points.get(points.size() - 1);
        double volts = top.voltsAtPins().value();
        double amps = top.supplyAmps().value();
        AnalogChannel voltmeter = input.trace().channels().required(ChannelRole.VOLTS_AT_PINS);
        AnalogChannel ammeter = input.trace().channels().required(ChannelRole.SUPPLY_AMPS);
        SharedErrors.Channel pressure = top.pressure()
                .map(read -> new SharedErrors.Channel(
                        0,
                        input.trace()
                                .channels()
                                .required(ChannelRole.OUTLET_PRESSURE)
                                .calibrationUncertainty(read.value())))
                .orElse(SharedErrors.Channel.NONE);
        return new SharedErrors(
                new SharedErrors.Channel(voltmeter.calibrationUncertainty(volts) / volts, 0),
                new SharedErrors.Channel(Math.min(0.3, ammeter.calibrationUncertainty(amps) / amps), 0),
                new SharedErrors.Channel(input.trace().channels().flowMeter().relativeUncertainty(), 0),
                pressure);
    }

    private static List<Finding> findings(Lumps lumps) {
        List<Finding> found = new ArrayList<>();
        lumps.shown()
                .forEach((lump, value) -> found.add(new Finding(
                        RunReadings.STEP,
                        lump.words(),
                        new Finding.Figure(value, unit(lump)),
                        "fitted to all points")));
        lumps.withheld()
                .forEach(held -> found.add(
                        new Finding(RunReadings.STEP, held.lump().words(), new Finding.Word("withheld"), held.why())));
        return found;
    }

    private static FindingUnit unit(Lump lump) {
        return switch (lump) {
            case FLOW_PER_VOLT -> FindingUnit.M3_PER_SECOND_PER_VOLT;
            case NO_LOAD_AMPS -> FindingUnit.AMPS;
            case AMPS_PER_PRESSURE -> FindingUnit.AMPS_PER_PASCAL;
            case OHMS -> FindingUnit.OHMS;
            case SLIP -> FindingUnit.M3_PER_SECOND_PER_PASCAL;
            case START_DUTY, AMPS_DRIFT -> FindingUnit.SHARE;
        };
    }
}
