package org.pumpwright.host.grade;

import static org.pumpwright.host.grade.Phrases.format;
import static org.pumpwright.host.grade.StandChecks.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.quantity.UnitSystem;

/** Whether the stand's water side was fit: the meter counts, the nozzle is the right one, no air. Thread-safe. */
final class WaterChecks {
    private static final String NOZZLE = "nozzle";
    private static final double NOZZLE_SHARE = 0.10;

    /** A pressure counts as sure when it is this many times its uncertainty: its root is then known to 2.5 %. */
    private static final double SURE_PRESSURE = 20;

    private final GradingInput input;
    private final List<PointReading> driven;

    private WaterChecks(GradingInput input, List<PointReading> points) {
        this.input = input;
        driven = points.stream().filter(PointReading::driven).toList();
    }

    static List<StandCheck> of(GradingInput input, List<PointReading> points) {
        WaterChecks water = new WaterChecks(input, points);
        List<StandCheck> checks = new ArrayList<>();
        if (!water.driven.isEmpty()) {
            checks.add(water.meterCounts());
            water.nozzle().ifPresent(checks::add);
            checks.add(AirCheck.of(water.driven));
        }
        return checks;
    }

    /** Whether the nozzle could be measured; where it could and every check held, it is sound. */
    static boolean measuresNozzle(List<PointReading> points) {
        return highestPressure(points).filter(WaterChecks::measuresNozzle).isPresent();
    }

    static boolean measuresNozzle(PointReading top) {
        return isSure(top.pressure().orElseThrow()) && top.pulses() > 0;
    }

    /** A meter without pulses is at fault when the pressure, or without one the current, says that the unit pumps. */
    private StandCheck meterCounts() {
        Optional<PointReading> silent = driven.stream()
                .filter(point -> point.pulses() == 0)
                .filter(this::pumps)
                .max(byPressureOrDuty());
        String finding = silent.map(this::silence).orElse("the meter counted wherever the unit pumped");
        return check(
                "meter counts",
                silent.isEmpty(),
                finding,
                "check the meter's plug and rotor, and that the nozzle is not plugged, then run again");
    }

    private boolean pumps(PointReading point) {
        if (point.pressure().isPresent()) {
            return isSure(point.pressure().get());
        }
        // A meter that counted at another point is in order; and a weak unit may draw a usual current standing still.
        boolean neverCounted = driven.stream().allMatch(p -> p.pulses() == 0);
        return neverCounted
                && input.curve().map(curve -> loadedAsUsual(point, curve)).orElse(false);
    }

    private static boolean loadedAsUsual(PointReading point, HealthyCurve curve) {
        double volts = point.effectiveVolts(curve.freewheelVolts()).value();
        double amps = point.motorAmps().value();
        return amps >= curve.motorAmps(volts).low()
                && amps <= curve.motorAmps(volts).high();
    }

    private String silence(PointReading point) {
        String at = point.mark().commanded().print();
        return point.pressure()
                .map(p -> format("no pulse at %s, yet %s before the nozzle", at, print(p)))
                .orElseGet(() -> format(
                        "no pulse at %s, yet the unit drew %.1f A as if it pumped",
                        at, point.supplyAmps().value()));
    }

    /** Flow over the root of the pressure, at the point with the highest pressure. Empty without a pressure channel. */
    private Optional<StandCheck> nozzle() {
        return highestPressure(driven).map(this::nozzle);
    }

    static Optional<PointReading> highestPressure(List<PointReading> points) {
        return points.stream()
                .filter(PointReading::driven)
                .filter(point -> point.pressure().isPresent())
                .max(byPressureOrDuty());
    }

    private StandCheck nozzle(PointReading top) {
        Uncertain pressure = top.pressure().orElseThrow();
        if (!measuresNozzle(top)) {
            return check(NOZZLE, true, "not measured: " + "the pressure was at most " + print(pressure), "");
        }
        double wanted = input.stand().nozzleM3PerSecondPerRootPascal();
        double found = top.flow().value() / Math.sqrt(pressure.value());
        double off = found / wanted - 1;
        return check(
                NOZZLE,
                Math.abs(off) <= NOZZLE_SHARE,
                format(
                        "%s at %s, the stand's nozzle has %s (%s, 10 %% allowed)",
                        size(found), print(pressure), size(wanted), Phrases.percent(off)),
                off < 0
                        ? "clean the nozzle and the line behind the meter; if it stays, check the meter with the bucket"
                        : "check that the right nozzle is fitted and not worn; if it stays, check the meter with the bucket");
    }

    private static boolean isSure(Uncertain pressure) {
        return pressure.value() >= SURE_PRESSURE * pressure.standardUncertainty();
    }

    private static Comparator<PointReading> byPressureOrDuty() {
        return Comparator.comparingDouble(
                point -> point.pressure().map(Uncertain::value).orElse(point.duty()));
    }

    private String print(Uncertain pressure) {
        return new Pressure(pressure.value()).print(input.units());
    }

    private String size(double m3PerSecondPerRootPascal) {
        if (input.units() == UnitSystem.METRIC) {
            return format("%.2f L/min per root kPa", m3PerSecondPerRootPascal * 60_000 * Math.sqrt(1000));
        }
        double flowAtOnePsi = m3PerSecondPerRootPascal * Math.sqrt(Pressure.PASCALS_PER_PSI);
        return format("%.2f gal/min per root psi", new FlowRate(flowAtOnePsi).gallonsPerMinute());
    }
}
