package org.pumpwright.host.cli.claim;

import org.pumpwright.host.app.claim.ClaimList;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Missing;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Claims for other programs; nothing of the people in it. Thread-safe. */
final class ClaimJson {
    private ClaimJson() {}

    static String of(ClaimList.Line line) {
        return head(line.file())
                .put("days", line.days())
                .put("days_in_state", line.daysHere())
                .toString();
    }

    static String of(ClaimReview.Reviewed reviewed) {
        ClaimFile file = reviewed.file();
        ObjectNode json = head(file);
        ArrayNode missing = json.putArray("missing");
        file.missing().stream().map(Missing::word).forEach(missing::add);
        ArrayNode flags = json.putArray("flags");
        file.flags().forEach(flag -> {
            ObjectNode each = flags.addObject().put("code", flag.code().word());
            ArrayNode values = each.putArray("values");
            flag.values().forEach(values::add);
        });
        ArrayNode runs = json.putArray("runs");
        file.runs()
                .forEach(run -> runs.addObject()
                        .put("entry", run.entry())
                        .put("plan", run.plan())
                        .put("verdict", run.verdict().name().toLowerCase(java.util.Locale.ROOT)));
        reviewed.coverage().ifPresent(assessment -> {
            json.put("coverage_rules", assessment.rules());
            ArrayNode lines = json.putArray("coverage");
            assessment
                    .lines()
                    .forEach(line -> lines.addObject()
                            .put("rule", line.rule())
                            .put("holds", line.holds().name().toLowerCase(java.util.Locale.ROOT))
                            .put("where", line.where()));
        });
        return json.toString();
    }

    private static ObjectNode head(ClaimFile file) {
        ObjectNode json = JsonNodeFactory.instance
                .objectNode()
                .put("claim", file.number())
                .put("state", file.whereabouts().to().word())
                .put("practice", file.intake().practice())
                .put("received", file.intake().received().toString())
                .put("model", file.intake().unit().model())
                .put("serial", file.intake().unit().serial())
                .put("complaint_code", file.intake().complaint().code());
        file.finding()
                .ifPresent(finding -> json.put("category", finding.category().name())
                        .put("reproduced", finding.reproduced().word()));
        file.decision()
                .ifPresent(decision -> json.put("decision", decision.outcome().word()));
        return json;
    }
}
