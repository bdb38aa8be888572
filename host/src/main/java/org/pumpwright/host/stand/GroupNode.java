package org.pumpwright.host.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.calibration.Calibration;
import org.pumpwright.host.calibration.CodeRange;
import org.pumpwright.host.calibration.MonitorAmps;
import org.pumpwright.host.calibration.Polynomial;
import org.pumpwright.host.calibration.Ratiometric;
import org.pumpwright.host.calibration.SteinhartHart;
import org.pumpwright.host.calibration.Thermistor;
import org.pumpwright.host.calibration.UncertaintyParts;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.Temperature;
import org.pumpwright.host.stand.AnalogNode.FileUnit;

/** Makes calibrations of the groups that stand in a channel of a stand's file in place of a straight line. Thread-safe. */
final class GroupNode {
    /** A curve further than this from the thermistor's own resistance at 25 degrees belongs to another part. */
    private static final double MOST_OFF_AT_25_KELVIN = 0.1;

    private GroupNode() {}

    static Calibration polynomial(Node group, FileUnit unit) {
        Node named = group.at("unit");
        if (!named.text().equals(unit.word())) {
            named.refuse("is %s, %s are written in %s"
                    .formatted(named.found(), unit.role().words(), unit.word()));
        }
        List<Double> written =
                group.at("coefficients").items().stream().map(Node::number).toList();
        List<Double> si =
                new ArrayList<>(written.stream().map(c -> c * unit.siPerUnit()).toList());
        si.set(0, unit.si(written.get(0)));
        Order.check(group, "least_percent", "most_percent");
        CodeRange fitted = CodeRange.ofShares(share(group, "least_percent", 0), share(group, "most_percent", 100));
        return new Polynomial(si, fitted, parts(group, unit, "offset_uncertainty", "fit_uncertainty"));
    }

    static Calibration ratiometric(Node group, FileUnit unit) {
        double reference = group.number("reference_volts");
        Order.check(group, "low_volts", "high_volts");
        Order.check(group, "fault_below_volts", "fault_above_volts");
        double low = volts(group, "low_volts", reference) / reference;
        double high = volts(group, "high_volts", reference) / reference;
        CodeRange usual = Ratiometric.halfWayToTheRails(low, Math.max(low, high));
        CodeRange sound = new CodeRange(
                fault(group, "fault_below_volts", reference).orElse(usual.least()),
                fault(group, "fault_above_volts", reference).orElse(usual.most()));
        return new Ratiometric(
                low,
                high,
                unit.si(group.number(unit.word() + "_at_low")),
                unit.si(group.number(unit.word() + "_at_high")),
                parts(group, unit),
                sound);
    }

    private static Optional<Double> fault(Node group, String key, double reference) {
        return group.find(key).map(node -> volts(group, key, reference) / reference * Calibration.FULL_SCALE);
    }

    private static double volts(Node group, String key, double reference) {
        Node volts = group.at(key);
        if (volts.number() > reference) {
            volts.refuse("is %s, above reference_volts, %s"
                    .formatted(volts.found(), group.at("reference_volts").found()));
            return reference;
        }
        return volts.number();
    }

    static Calibration thermistor(Node group) {
        SteinhartHart curve = new SteinhartHart(
                group.number("steinhart_hart_a"), group.number("steinhart_hart_b"), group.number("steinhart_hart_c"));
        refuseOtherPart(group.at("ohms_at_25_celsius"), curve);
        Order.check(group, "least_celsius", "most_celsius");
        return new Thermistor(
                curve,
                group.number("pull_up_ohms"),
                Temperature.ofCelsius(group.number("least_celsius")).kelvin(),
                Temperature.ofCelsius(group.number("most_celsius")).kelvin(),
                new UncertaintyParts(
                        group.number("resistance_uncertainty_percent") / 100,
                        group.number("offset_uncertainty_celsius"),
                        optional(group, "fit_uncertainty_celsius"),
                        step(group)));
    }

    /** Coefficients of another thermistor give temperatures that look true. */
    private static void refuseOtherPart(Node ohms, SteinhartHart curve) {
        double celsius = new Temperature(Math.max(0, Math.min(9_999, curve.kelvin(ohms.number())))).celsius();
        if (!(Math.abs(celsius - 25) <= MOST_OFF_AT_25_KELVIN)) {
            ohms.refuse(String.format(
                    Locale.ROOT,
                    "is %s, where the curve gives %.2f °C, not 25: the coefficients belong to another part",
                    ohms.found(),
                    celsius));
        }
    }

    static Calibration monitorAmps(Node group, FileUnit unit) {
        OptionalDouble step = group.find("current_step_amps")
                .map(node -> OptionalDouble.of(node.number()))
                .orElse(OptionalDouble.empty());
        return new MonitorAmps(group.number("shunt_ohms"), step, parts(group, unit));
    }

    /** The standard uncertainties under the names that most kinds use; what is left out counts nothing. */
    static UncertaintyParts parts(Node group, FileUnit unit) {
        return parts(group, unit, "offset_uncertainty_" + unit.word(), "fit_uncertainty_" + unit.word());
    }

    private static UncertaintyParts parts(Node group, FileUnit unit, String offset, String fit) {
        return new UncertaintyParts(
                group.number("gain_uncertainty_percent") / 100,
                group.number(offset) * unit.siPerUnit(),
                optional(group, fit) * unit.siPerUnit(),
                step(group));
    }

    private static double step(Node group) {
        return group.find("converter_bits")
                .map(bits -> UncertaintyParts.stepOfBits((int) bits.number()))
                .orElse(0.0);
    }

    private static double share(Node group, String key, double otherwise) {
        return group.find(key).map(Node::number).orElse(otherwise) / 100;
    }

    private static double optional(Node group, String key) {
        return group.find(key).map(Node::number).orElse(0.0);
    }
}
