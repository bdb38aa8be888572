package org.pumpwright.host.stand;

import java.util.List;
import org.pumpwright.host.calibration.Calibration;
import org.pumpwright.host.calibration.CodeRange;
import org.pumpwright.host.calibration.MonitorVolts;
import org.pumpwright.host.calibration.StraightLine;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Temperature;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/**
 * Makes an analogue channel of its part of a stand's file. Each role has keys in a unit of its own for a straight line, and may
 * have a group instead that names another kind of calibration. Thread-safe.
 */
final class AnalogNode {
    private static final List<String> GROUPS =
            List.of("polynomial", "ratiometric", "thermistor", "bus_monitor", "shunt_monitor");

    private AnalogNode() {}

    /**
     * The unit in which a role is written in the file.
     *
     * @param word as it stands in keys
     * @param siAtZero SI value of 0 of the unit
     * @param siPerUnit SI value of a difference of 1
     */
    record FileUnit(ChannelRole role, String word, double siAtZero, double siPerUnit) {
        double si(double value) {
            return siAtZero + value * siPerUnit;
        }
    }

    static AnalogChannel channel(Node node) {
        FileUnit unit = unit(node.text("role"));
        return new AnalogChannel(
                unit.role(), node.whole("index"), calibration(node, unit), CertificateNode.certificate(node));
    }

    private static FileUnit unit(String role) {
        return switch (role) {
            case "volts-at-pins" -> new FileUnit(ChannelRole.VOLTS_AT_PINS, "volts", 0, 1);
            case "supply-amps" -> new FileUnit(ChannelRole.SUPPLY_AMPS, "amps", 0, 1);
            case "outlet-pressure" -> new FileUnit(ChannelRole.OUTLET_PRESSURE, "psi", 0, Pressure.PASCALS_PER_PSI);
            case "water-temperature" ->
                new FileUnit(
                        ChannelRole.WATER_TEMPERATURE,
                        "celsius",
                        Temperature.ofCelsius(0).kelvin(),
                        1);
            default -> throw new IllegalArgumentException("no channel has the role " + role);
        };
    }

    private static Calibration calibration(Node node, FileUnit unit) {
        List<String> kinds =
                GROUPS.stream().filter(g -> node.find(g).isPresent()).toList();
        if (kinds.isEmpty()) {
            return straight(node, unit);
        }
        String kind = kinds.get(0);
        Node group = node.at(kind);
        refuseBeside(node, unit, kinds);
        try {
            return switch (kind) {
                case "polynomial" -> GroupNode.polynomial(group, unit);
                case "ratiometric" -> GroupNode.ratiometric(group, unit);
                case "thermistor" -> GroupNode.thermistor(group);
                case "bus_monitor" -> new MonitorVolts(GroupNode.parts(group, unit));
                default -> GroupNode.monitorAmps(group, unit);
            };
        } catch (Order.Refused e) {
            throw e;
        } catch (IllegalArgumentException e) {
            group.refuse("cannot be used: " + e.getMessage());
            throw e;
        }
    }

    private static void refuseBeside(Node node, FileUnit unit, List<String> kinds) {
        List<String> straight = List.of(
                unit.word() + "_at_zero",
                unit.word() + "_at_full_scale",
                "offset_uncertainty_" + unit.word(),
                "gain_uncertainty_percent",
                "converter_bits",
                "fault_below_percent",
                "fault_above_percent");
        straight.forEach(key -> node.find(key)
                .ifPresent(found -> found.refuse(
                        "belongs to a straight line, but the channel has " + kinds.get(0) + ": keep one of the two")));
        kinds.stream()
                .skip(1)
                .forEach(kind -> node.at(kind).refuse("stands beside " + kinds.get(0) + ": keep one of the two"));
    }

    private static Calibration straight(Node node, FileUnit unit) {
        double atZero = node.number(unit.word() + "_at_zero");
        Node fullScale = node.at(unit.word() + "_at_full_scale");
        double span = fullScale.number() - atZero;
        if (span == 0) {
            fullScale.refuse("is %s, it must differ from %s_at_zero".formatted(fullScale.found(), unit.word()));
        }
        return new StraightLine(
                unit.si(atZero), span * unit.siPerUnit(), GroupNode.parts(node, unit), soundShares(node));
    }

    private static CodeRange soundShares(Node node) {
        Order.check(node, "fault_below_percent", "fault_above_percent");
        double least = node.find("fault_below_percent").map(Node::number).orElse(0.0);
        double most = node.find("fault_above_percent").map(Node::number).orElse(100.0);
        return CodeRange.ofShares(least / 100, most / 100);
    }
}
