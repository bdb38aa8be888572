package org.pumpwright.host.stand;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.calibration.KPoint;
import org.pumpwright.host.datafile.Node;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.trace.MeterChannel;

/** Makes a pulse meter of its part of a stand's file: one K-factor, or a table of them over the flow. Thread-safe. */
final class MeterNode {
    private static final String PULSES = "pulses_per_us_gallon";

    private MeterNode() {}

    static MeterChannel meter(Node node) {
        return new MeterChannel(
                node.whole("index"),
                curve(node),
                node.number("relative_uncertainty_percent") / 100,
                FlowRate.ofGallonsPerMinute(node.number("least_gpm")),
                CertificateNode.certificate(node));
    }

    private static KCurve curve(Node node) {
        Optional<Node> table = node.find("k_table");
        if (table.isEmpty()) {
            return KCurve.constant(KFactor.ofPulsesPerUsGallon(node.number(PULSES)));
        }
        if (node.find(PULSES).isPresent()) {
            table.get().refuse("stands beside " + PULSES + ": keep one of the two");
        }
        return table(table.get());
    }

    private static KCurve table(Node table) {
        List<KPoint> points = table.items().stream().map(MeterNode::point).toList();
        try {
            return new KCurve(points);
        } catch (IllegalArgumentException e) {
            table.refuse("cannot be used: " + e.getMessage());
            throw e;
        }
    }

    private static KPoint point(Node node) {
        return new KPoint(
                FlowRate.ofGallonsPerMinute(node.number("gpm")), KFactor.ofPulsesPerUsGallon(node.number(PULSES)));
    }
}
