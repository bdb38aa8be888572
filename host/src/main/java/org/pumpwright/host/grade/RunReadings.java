package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/** What the points of a pump's sweep say together: volts and lead at the most amps, droop, and what the unit is made of. Thread-safe. */
final class RunReadings {
    static final String STEP = "sweep, all points";

    /** At less current the sag is too small to tell a resistance from noise. */
    private static final double LEAST_AMPS = 2;

    private static final double FULL = 1.0;
    private static final double HALF = 0.5;
    private static final double DUTY_SHARE = 0.005;

    private final GradingInput input;
    private final List<PointReading> up;

    private RunReadings(GradingInput input, List<PointReading> points) {
        this.input = input;
        up = points.stream().filter(point -> point.driven() && point.up()).toList();
    }

    static List<Finding> of(GradingInput input, List<PointReading> points) {
        if (input.plan().kind() != UnitKind.PUMP_12V) {
            return List.of();
        }
        RunReadings readings = new RunReadings(input, points);
        List<Finding> found = new ArrayList<>();
        readings.most().ifPresent(most -> {
            found.add(readings.voltsAtMost(most));
            readings.lead(most).ifPresent(found::add);
        });
        input.curve().ifPresent(curve -> {
            readings.droop(curve, points).ifPresent(found::add);
            found.addAll(LumpReadings.of(input, curve, readings.up));
        });
        return found;
    }

    private Optional<PointReading> most() {
        return up.stream()
                .max(Comparator.comparingDouble(point -> point.supplyAmps().value()));
    }

    private Finding voltsAtMost(PointReading most) {
        return new Finding(
                STEP,
                "volts at the pins at the most amps",
                new Finding.Figure(most.voltsAtPins(), FindingUnit.VOLTS),
                format(
                        "%.1f A at %s",
                        most.supplyAmps().value(), most.mark().commanded().print()));
    }

    /** Both readings are the same voltmeter's: its zero falls out of the sag, its gain counts for the sag only. */
    private Optional<Finding> lead(PointReading most) {
        Uncertain amps = most.supplyAmps();
        Optional<RestReading> rest = RestReading.of(input.trace());
        if (amps.value() < LEAST_AMPS || rest.isEmpty()) {
            return Optional.empty();
        }
        double sag = rest.get().volts() - most.voltsAtPins().value();
        double ohms = sag / amps.value();
        AnalogChannel voltmeter = input.trace().channels().required(ChannelRole.VOLTS_AT_PINS);
        double all = most.voltsAtPins().standardUncertainty();
        double calibration = voltmeter.calibrationUncertainty(most.voltsAtPins().value());
        double scatter = Math.sqrt(Math.max(0, all * all - calibration * calibration));
        double gain = calibration * Math.abs(sag) / Math.max(most.voltsAtPins().value(), 1);
        Uncertain value = Uncertain.of(ohms, scatter / amps.value())
                .with(gain / amps.value(), Double.POSITIVE_INFINITY)
                .with(Math.abs(ohms) * amps.relative(), amps.degreesOfFreedom());
        return Optional.of(new Finding(
                STEP,
                "supply and lead",
                new Finding.Figure(value, FindingUnit.OHMS),
                format("volts at rest less %.2f V at %.1f A", most.voltsAtPins().value(), amps.value())));
    }

    private Optional<PointReading> at(double duty) {
        return up.stream()
                .filter(point -> Math.abs(point.mark().commanded().fraction() - duty) < DUTY_SHARE)
                .filter(point -> point.flow().value() > 0 && !point.belowRange())
                .findFirst();
    }

    private Optional<Finding> droop(HealthyCurve curve, List<PointReading> points) {
        Optional<PointReading> full = at(FULL);
        Optional<PointReading> half = at(HALF);
        if (full.isEmpty() || half.isEmpty()) {
            return Optional.empty();
        }
        PointFigures figures = new PointFigures(input, curve, points);
        Uncertain ratio = Ratio.of(figures.flow(full.get()), figures.flow(half.get()));
        return Optional.of(new Finding(
                STEP,
                "flow at 100 % over flow at 50 %",
                new Finding.Figure(ratio, FindingUnit.NUMBER),
                "what both flows share, as the meter's K, falls out"));
    }
}
