package org.pumpwright.host.stand;

import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.Pressure;
import org.pumpwright.host.quantity.Temperature;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.ChannelRole;

/** Makes an analogue channel of its part of a stand's file, where each role has keys in a unit of its own. Thread-safe. */
final class AnalogNode {
    private AnalogNode() {}

    static AnalogChannel channel(Node node) {
        return switch (node.text("role")) {
            case "volts-at-pins" -> channel(node, ChannelRole.VOLTS_AT_PINS, "volts", 0, 1);
            case "supply-amps" -> channel(node, ChannelRole.SUPPLY_AMPS, "amps", 0, 1);
            case "outlet-pressure" -> channel(node, ChannelRole.OUTLET_PRESSURE, "psi", 0, Pressure.PASCALS_PER_PSI);
            case "water-temperature" ->
                channel(
                        node,
                        ChannelRole.WATER_TEMPERATURE,
                        "celsius",
                        Temperature.ofCelsius(0).kelvin(),
                        1);
            default -> throw new IllegalArgumentException("no channel has the role " + node.text("role"));
        };
    }

    private static AnalogChannel channel(
            Node node, ChannelRole role, String unit, double siAtUnitZero, double siPerUnit) {
        double atZero = node.number(unit + "_at_zero");
        Node fullScale = node.at(unit + "_at_full_scale");
        double span = fullScale.number() - atZero;
        if (span == 0) {
            fullScale.refuse("is %s, it must differ from %s_at_zero".formatted(fullScale.found(), unit));
        }
        return new AnalogChannel(
                role,
                node.whole("index"),
                siAtUnitZero + atZero * siPerUnit,
                span * siPerUnit,
                node.number("gain_uncertainty_percent") / 100,
                node.number("offset_uncertainty_" + unit) * siPerUnit,
                node.text("certificate"));
    }
}
