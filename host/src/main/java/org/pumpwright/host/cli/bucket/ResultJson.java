package org.pumpwright.host.cli.bucket;

import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.quantity.Volume;
import org.pumpwright.host.record.BucketRecord;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of a bucket test as one JSON object. Thread-safe. */
final class ResultJson {
    private ResultJson() {}

    static String of(BucketRecord record, BucketCalibration.Kept kept) {
        BucketRecord.Result result = record.result();
        ObjectNode node = JsonMapper.builder().build().createObjectNode();
        node.put("accepted", result.accepted());
        node.put("k_pulses_per_m3", result.single().pulsesPerM3());
        node.put("k_pulses_per_us_gallon", result.single().pulsesPerM3() * Volume.M3_PER_US_GALLON);
        node.put("k_pulses_per_litre", result.single().pulsesPerM3() / 1000);
        node.put("relative_expanded_uncertainty", result.single().relativeExpandedUncertainty());
        node.put("coverage_factor", result.single().coverageFactor());
        node.put("in_service_relative_expanded_uncertainty", result.inService());
        ArrayNode flows = node.putArray("flows");
        for (BucketRecord.Flow flow : record.flows()) {
            flows.addObject()
                    .put("m3_per_second", flow.m3PerSecond())
                    .put("k_pulses_per_m3", flow.k().pulsesPerM3())
                    .put("relative_expanded_uncertainty", flow.k().relativeExpandedUncertainty())
                    .put("relative_range", flow.relativeRange());
        }
        ArrayNode checks = node.putArray("checks");
        result.checks()
                .forEach(check -> checks.addObject()
                        .put("name", check.name())
                        .put("holds", check.holds())
                        .put("words", check.words()));
        return node.put("practice", record.practice())
                .put("record", kept.record().toString())
                .put("report", kept.page().toString())
                .put("label", kept.label().toString())
                .put("certificate", kept.certificate().toString())
                .toString();
    }
}
