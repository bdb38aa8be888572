package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.app.Regrading.Outcome;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecord.CurveUsed;
import org.pumpwright.host.run.StopButton;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Tells stored runs that are judged again as JSON, one object a line; the last line is the summary. */
final class RegradeLines implements RegradeFace {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final PrintWriter out;
    private final StopButton stop;

    RegradeLines(PrintWriter out, StopButton stop) {
        this.out = out;
        this.stop = stop;
    }

    @Override
    public void begins(int files) {
        print(event("begins").put("files", files));
    }

    @Override
    public void done(Outcome outcome) {
        if (outcome instanceof Outcome.Judged judged) {
            print(judged(judged));
        } else if (outcome instanceof Outcome.NotJudged not) {
            print(event("not_graded").put("file", not.file().toString()).put("trouble", not.why()));
        } else if (outcome instanceof Outcome.PassedOver over) {
            print(event("passed_over").put("file", over.file().toString()).put("reason", over.why()));
        }
        if (out.checkError()) {
            stop.press("the reader of the lines is gone");
        }
    }

    private static ObjectNode judged(Outcome.Judged judged) {
        RunRecord record = judged.record();
        ObjectNode node = event("graded")
                .put("file", judged.file().toString())
                .put("run", judged.runId())
                .put("serial", record.subject().serial())
                .put("verdict_before", word(judged.before()))
                .put("verdict", word(record.grade().verdict()))
                .put("changed", judged.changed())
                .put("curve", record.curve().map(CurveUsed::label).orElse(null))
                .put("rules", record.rules().orElse(null))
                .put("curve_made_from_this_run", judged.ofTheCurvesOwn());
        judged.kept().ifPresent(kept -> {
            node.put("record", kept.record().toString()).put("page", kept.page().toString());
            kept.trouble().ifPresent(trouble -> node.put("trouble", trouble));
        });
        ArrayNode reasons = node.putArray("reasons");
        record.grade().reasons().forEach(reasons::add);
        return node;
    }

    @Override
    public void over(RegradeTally tally, Optional<String> stopped) {
        ObjectNode node = event("summary")
                .put("files", tally.files())
                .put("graded", tally.judged())
                .put("changed", tally.changed())
                .put("not_graded", tally.notJudged())
                .put("passed_over", tally.passedOver());
        ArrayNode changes = node.putArray("changes");
        tally.changes()
                .forEach((change, count) -> changes.addObject()
                        .put("from", word(change.from()))
                        .put("to", word(change.to()))
                        .put("runs", count));
        stopped.ifPresent(why -> node.put("stopped", why));
        print(node);
    }

    private static ObjectNode event(String name) {
        return JSON.createObjectNode().put("event", name);
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private void print(ObjectNode node) {
        out.println(JSON.writeValueAsString(node));
    }
}
