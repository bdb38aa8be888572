package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.pumpwright.host.calibration.KPoint;
import org.pumpwright.host.curve.CurvePoint;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.rule.CorrectionLimits;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.rule.KnownDoubt;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;
import org.pumpwright.host.trace.MeterChannel;

/**
 * Flow and motor amps of points, each with its corrections in their order and the parts of its uncertainty.
 *
 * <p>Only the meter's K is corrected for. The volts are taken care of by judging at the effective volts that the unit had. The
 * zero and the nozzle are told and left alone: the known-good runs behind the curve carry the same ones, their errors are
 * those of the same sensors, and to move only one of the two sides would part what belongs together. Thread-safe.
 */
final class PointFigures {
    static final String METER_K = "meter K";
    static final String CURRENT_SENSOR = "current sensor";
    private static final String VOLTMETER = "voltmeter";
    private static final String NOZZLE = "nozzle";
    private static final double SLOPE_STEP_VOLTS = 0.05;

    private final GradingInput input;
    private final HealthyCurve curve;
    private final GradingRules rules;
    private final NozzleFound nozzle;
    private final double restAmps;

    PointFigures(GradingInput input, HealthyCurve curve, List<PointReading> points) {
        this.input = input;
        this.curve = curve;
        rules = input.rulesOrStandard();
        nozzle = NozzleFound.of(points, input.stand());
        restAmps = RestReading.of(input.trace()).map(RestReading::amps).orElse(0.0);
    }

    /** What a quantity is made of, for what flow and motor amps have in common. */
    private record Quantity(
            KnownDoubt.Quantity kind, Uncertain read, double raw, double calibration, String sensor, double exponent) {}

    PointFigure flow(PointReading point) {
        MeterChannel meter = input.trace().channels().flowMeter();
        FlowRate flow = point.flowRate();
        double hertz = flow.m3PerSecond() * meter.k().at(flow).pulsesPerM3();
        List<KPoint> table = meter.k().points();
        double raw = hertz / table.get(table.size() - 1).k().pulsesPerM3();
        double throughK = meter.relativeUncertainty() * hertz * meter.k().flowPerHertz(flow);
        Quantity quantity = new Quantity(
                KnownDoubt.Quantity.FLOW,
                point.flow(),
                raw,
                throughK,
                METER_K,
                rules.nozzle().at(point.duty()).flow());
        List<Correction> corrections = new ArrayList<>();
        corrections.add(new Correction("zero", 0, 0, true, "no pulse came at rest"));
        corrections.add(new Correction(
                METER_K,
                flow.m3PerSecond() - raw,
                throughK,
                true,
                table.size() == 1 ? "one K for every flow" : "K of its flow against that of the largest"));
        return figure(point, quantity, corrections, CurvePoint::flowM3PerSecond);
    }

    PointFigure motorAmps(PointReading point) {
        AnalogChannel sensor = input.trace().channels().required(ChannelRole.SUPPLY_AMPS);
        Uncertain amps = point.motorAmps();
        Quantity quantity = new Quantity(
                KnownDoubt.Quantity.MOTOR_AMPS,
                amps,
                amps.value(),
                sensor.calibrationUncertainty(point.supplyAmps().value()) / point.duty(),
                CURRENT_SENSOR,
                rules.nozzle().at(point.duty()).motorAmps());
        List<Correction> corrections = new ArrayList<>();
        corrections.add(new Correction(
                "zero",
                -restAmps / point.duty(),
                0,
                false,
                format("read %+.3f A at rest; in the sensor's uncertainty", restAmps)));
        return figure(point, quantity, corrections, CurvePoint::motorAmps);
    }

    private PointFigure figure(
            PointReading point, Quantity quantity, List<Correction> corrections, ToDoubleFunction<CurvePoint> healthy) {
        Uncertain volts = point.effectiveVolts(curve.freewheelVolts());
        double throughVolts = Math.abs(slope(healthy, volts.value())) * volts.standardUncertainty();
        double throughNozzle = Math.abs(quantity.exponent * quantity.read.value())
                * (nozzle.measured()
                        ? rules.nozzle().measuredShare()
                        : rules.nozzle().unmeasuredShare());
        corrections.add(volts(point, healthy, throughVolts));
        corrections.add(nozzle(quantity, throughNozzle));
        double driven = drivenSeconds(point);
        corrections.add(new Correction("winding temperature", 0, 0, false, format("driven for %.0f s before", driven)));
        corrections.add(new Correction("water temperature", 0, 0, false, "in the uncertainty"));
        Uncertain all = quantity.read.with(throughVolts, volts.degreesOfFreedom());
        List<BudgetTerm> budget = new ArrayList<>();
        budget.add(new BudgetTerm("scatter and counting", scatter(quantity), ""));
        budget.add(new BudgetTerm(quantity.sensor, quantity.calibration, quantity.sensor));
        budget.add(new BudgetTerm("volts at the pins", throughVolts, VOLTMETER));
        if (throughNozzle > 0) {
            budget.add(new BudgetTerm(NOZZLE, throughNozzle, NOZZLE));
            all = all.with(throughNozzle, Double.POSITIVE_INFINITY);
        }
        for (KnownDoubt doubt : rules.doubts()) {
            if (doubt.quantity() == quantity.kind) {
                double u = doubt.share() * Math.abs(quantity.read.value());
                budget.add(new BudgetTerm(doubt.name(), u, doubt.name()));
                all = all.with(u, Double.POSITIVE_INFINITY);
            }
        }
        double centre = healthy.applyAsDouble(curve.at(volts.value()));
        String outOfRange = outOfRange(point, quantity, corrections, centre, driven);
        return new PointFigure(quantity.raw, corrections, all, budget, outOfRange);
    }

    /** What is left of the reading's uncertainty without the calibration: below the meter's range that of the range too. */
    private static double scatter(Quantity quantity) {
        double all = quantity.read.standardUncertainty();
        return Math.sqrt(Math.max(0, all * all - quantity.calibration * quantity.calibration));
    }

    private Correction volts(PointReading point, ToDoubleFunction<CurvePoint> healthy, double uncertainty) {
        double supply = input.stand().supplyVolts();
        double there = point.effectiveVolts(curve.freewheelVolts()).value();
        double wanted = point.duty() * supply - (1 - point.duty()) * curve.freewheelVolts();
        double size = healthy.applyAsDouble(curve.at(wanted)) - healthy.applyAsDouble(curve.at(there));
        return new Correction(
                "volts",
                size,
                uncertainty,
                false,
                format(
                        "%.2f V at the pins against %.2f V; taken care of by judging at %.2f effective volts",
                        point.voltsAtPins().value(), supply, there));
    }

    private Correction nozzle(Quantity quantity, double uncertainty) {
        if (!nozzle.measured()) {
            return new Correction(NOZZLE, 0, uncertainty, false, "not measured");
        }
        double size = quantity.read.value() * (StrictMath.pow(1 + nozzle.share(), -quantity.exponent) - 1);
        return new Correction(
                NOZZLE,
                size,
                uncertainty,
                false,
                format("found %+.1f %% off; the same nozzle is behind the curve", nozzle.share() * 100));
    }

    private double drivenSeconds(PointReading point) {
        return DrivenTime.seconds(
                input.trace(), input.plan().wiring().drive(), point.mark().measureFromNanos());
    }

    private String outOfRange(
            PointReading point, Quantity quantity, List<Correction> corrections, double centre, double driven) {
        CorrectionLimits limits = rules.corrections();
        double volts = point.voltsAtPins().value() / input.stand().supplyVolts() - 1;
        if (Math.abs(volts) > limits.voltsShare()) {
            return format(
                    "volts at the pins %+.1f %% off, at most %.0f %% may be judged",
                    volts * 100, limits.voltsShare() * 100);
        }
        if (Math.abs(nozzle.share()) > limits.nozzleShare()) {
            return format(
                    "nozzle %+.1f %% off, at most %.0f %% may be judged",
                    nozzle.share() * 100, limits.nozzleShare() * 100);
        }
        // What is only told moved nothing: judging at effective volts takes care of a sagging supply.
        double total = corrections.stream()
                .filter(Correction::applied)
                .mapToDouble(Correction::size)
                .sum();
        if (Math.abs(total) > limits.totalShare() * centre) {
            return format(
                    "corrections of %+.1f %% in all, at most %.0f %% may be judged",
                    total / centre * 100, limits.totalShare() * 100);
        }
        boolean warm = quantity.kind == KnownDoubt.Quantity.MOTOR_AMPS && driven > limits.warmUpSeconds();
        return warm
                ? format("driven for %.0f s before, amps are judged up to %.0f s", driven, limits.warmUpSeconds())
                : "";
    }

    /** Slope of the healthy mean per volt: how much an error of the volts moves the limits. */
    private double slope(ToDoubleFunction<CurvePoint> healthy, double volts) {
        double above = healthy.applyAsDouble(curve.at(volts + SLOPE_STEP_VOLTS));
        double below = healthy.applyAsDouble(curve.at(volts - SLOPE_STEP_VOLTS));
        return (above - below) / (2 * SLOPE_STEP_VOLTS);
    }
}
