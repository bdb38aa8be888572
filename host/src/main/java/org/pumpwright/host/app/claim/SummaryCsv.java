package org.pumpwright.host.app.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.ClaimIntake;
import org.pumpwright.host.claim.Finding;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.Sourced;

/** A claim as a table of names and values (RFC 4180); nothing of the people in it. Thread-safe. */
final class SummaryCsv {
    private final List<List<String>> rows = new ArrayList<>();

    private SummaryCsv() {}

    static String of(ClaimFile file) {
        SummaryCsv csv = new SummaryCsv();
        csv.row("what", "value", "source");
        csv.intake(file.intake());
        csv.row("state", file.whereabouts().to().word(), "");
        file.runs()
                .forEach(run ->
                        csv.row("run " + run.run(), "%s by %s".formatted(run.verdict(), run.plan()), run.technician()));
        file.finding().ifPresent(csv::finding);
        file.decision()
                .ifPresent(decision -> csv.row("decision", decision.outcome().word(), decision.signer()));
        csv.row("missing", file.missing().stream().map(Missing::word).collect(Collectors.joining(" ")), "");
        return csv.rows.stream()
                .map(row -> row.stream().map(SummaryCsv::quoted).collect(Collectors.joining(",")))
                .collect(Collectors.joining("\r\n", "", "\r\n"));
    }

    private void intake(ClaimIntake intake) {
        row("claim", intake.claim(), "");
        row("practice", Boolean.toString(intake.practice()), "");
        row("received", intake.received().toString(), "");
        row("kind", intake.unit().kind(), "");
        row("model", intake.unit().model(), "");
        row("serial", intake.unit().serial(), "");
        row("date code", intake.unit().dateCode().orElse(""), "");
        sourced("sold", intake.use().sold());
        sourced("delivered", intake.use().delivered());
        sourced("first used", intake.use().firstUsed());
        sourced("hours", intake.use().hours());
        sourced("acres", intake.use().acres());
        row("product", intake.planter().product(), "");
        row("complaint", intake.complaint().words(), "");
        row("complaint code", intake.complaint().code(), "");
        row("conditions", intake.complaint().conditions(), "");
    }

    private <T> void sourced(String what, Optional<Sourced<T>> value) {
        row(
                what,
                value.map(known -> known.value().toString()).orElse(""),
                value.map(known -> known.source().word()).orElse(""));
    }

    private void finding(Finding finding) {
        row("category", finding.category().name(), finding.signer());
        row("reproduced", finding.reproduced().word(), "");
        row("parts", String.join(" ", finding.parts()), "");
        row("basis", finding.basis(), "");
    }

    private void row(String what, String value, String source) {
        rows.add(List.of(what, value, source));
    }

    private static String quoted(String value) {
        return value.matches("[^\",\r\n]*") ? value : '"' + value.replace("\"", "\"\"") + '"';
    }
}
