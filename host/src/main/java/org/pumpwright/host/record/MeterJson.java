package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.list;
import static org.pumpwright.host.record.RecordLayout.number;
import static org.pumpwright.host.record.RecordLayout.object;

import java.util.List;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.calibration.KPoint;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.trace.MeterChannel;
import tools.jackson.databind.node.ObjectNode;

/** A pulse meter as JSON: one K as a number of its own, a table as a list of points. Thread-safe. */
final class MeterJson {
    private static final String ONE_K = "k_pulses_per_m3";
    private static final String TABLE = "k_table";
    private static final String FLOW = "flow_m3_per_second";

    private MeterJson() {}

    static ObjectNode write(MeterChannel meter) {
        ObjectNode node = object().put("index", meter.index());
        List<KPoint> points = meter.k().points();
        if (meter.k().equals(KCurve.constant(points.get(0).k()))) {
            node.set(ONE_K, number(points.get(0).k().pulsesPerM3()));
        } else {
            node.set(TABLE, list(points, MeterJson::point));
        }
        node.set("k_relative_uncertainty", number(meter.relativeUncertainty()));
        node.set("least_m3_per_second", number(meter.least().m3PerSecond()));
        CertificateJson.write(meter.certificate(), node);
        return node;
    }

    static MeterChannel read(JsonPlace at) {
        return new MeterChannel(
                at.at("index").smallInteger(),
                curve(at),
                at.at("k_relative_uncertainty").number(),
                new FlowRate(at.at("least_m3_per_second").number()),
                CertificateJson.read(at));
    }

    private static KCurve curve(JsonPlace at) {
        return at.at(TABLE)
                .ifThere(table -> new KCurve(table.list(MeterJson::point)))
                .orElseGet(() -> KCurve.constant(new KFactor(at.at(ONE_K).number())));
    }

    private static ObjectNode point(KPoint point) {
        ObjectNode node = object();
        node.set(FLOW, number(point.flow().m3PerSecond()));
        node.set(ONE_K, number(point.k().pulsesPerM3()));
        return node;
    }

    private static KPoint point(JsonPlace at) {
        return new KPoint(
                new FlowRate(at.at(FLOW).number()), new KFactor(at.at(ONE_K).number()));
    }
}
