package org.pumpwright.host.record;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalDouble;
import org.pumpwright.host.record.BucketRecord.Amendment;
import org.pumpwright.host.record.BucketRecord.BudgetLine;
import org.pumpwright.host.record.BucketRecord.Check;
import org.pumpwright.host.record.BucketRecord.Condition;
import org.pumpwright.host.record.BucketRecord.Equipment;
import org.pumpwright.host.record.BucketRecord.Fit;
import org.pumpwright.host.record.BucketRecord.Flow;
import org.pumpwright.host.record.BucketRecord.Job;
import org.pumpwright.host.record.BucketRecord.KValue;
import org.pumpwright.host.record.BucketRecord.Meter;
import org.pumpwright.host.record.BucketRecord.Method;
import org.pumpwright.host.record.BucketRecord.Result;
import org.pumpwright.host.record.BucketRecord.Run;
import org.pumpwright.host.record.BucketRecord.Shop;
import org.pumpwright.host.record.BucketRecord.Source;
import org.pumpwright.host.record.BucketRecord.Wording;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A bucket test as JSON and back. Thread-safe. */
final class BucketRecordJson {
    private BucketRecordJson() {}

    static ObjectNode write(BucketRecord record) {
        ObjectNode node = RecordLayout.object()
                .put("format", BucketRecordFile.FORMAT)
                .put("id", record.id())
                .put("issued_at", record.issuedAt().toString())
                .put("software", record.software())
                .put("practice", record.practice());
        node.set("shop", shop(record.shop()));
        node.set("job", job(record.job()));
        node.set("meter", meter(record.meter()));
        node.set(
                "method",
                RecordLayout.object()
                        .put("id", record.method().id())
                        .put("words", record.method().words())
                        .put("fluid", record.method().fluid()));
        node.set("equipment", RecordLayout.list(record.equipment(), BucketRecordJson::equipment));
        node.set("conditions", RecordLayout.list(record.conditions(), BucketRecordJson::condition));
        node.set("flows", RecordLayout.list(record.flows(), BucketRecordJson::flow));
        node.set("result", result(record.result()));
        node.set("wording", wording(record.wording()));
        node.set(
                "source",
                RecordLayout.object()
                        .put("name", record.source().name())
                        .put("sha256", record.source().sha256())
                        .put("text", record.source().text()));
        return node;
    }

    static BucketRecord read(JsonPlace at) {
        return new BucketRecord(
                at.at("id").text(),
                OffsetDateTime.parse(at.at("issued_at").text()),
                at.at("software").text(),
                shop(at.at("shop")),
                job(at.at("job")),
                meter(at.at("meter")),
                new Method(
                        at.at("method").at("id").text(),
                        at.at("method").at("words").text(),
                        at.at("method").at("fluid").text()),
                at.at("equipment").list(BucketRecordJson::equipment),
                at.at("conditions").list(BucketRecordJson::condition),
                at.at("flows").list(BucketRecordJson::flow),
                result(at.at("result")),
                wording(at.at("wording")),
                new Source(
                        at.at("source").at("name").text(),
                        at.at("source").at("sha256").text(),
                        at.at("source").at("text").text()),
                at.at("practice").flag());
    }

    private static ObjectNode shop(Shop shop) {
        ObjectNode node = RecordLayout.object().put("title", shop.title()).put("name", shop.name());
        node.set("address", RecordLayout.texts(shop.address()));
        return node.put("country_code", shop.countryCode()).put("accreditation", shop.accreditation());
    }

    private static Shop shop(JsonPlace at) {
        return new Shop(
                at.at("title").text(),
                at.at("name").text(),
                at.at("address").list(JsonPlace::text),
                at.at("country_code").text(),
                at.at("accreditation").text());
    }

    private static ObjectNode job(Job job) {
        ObjectNode node = RecordLayout.object().put("customer", job.customer()).put("place", job.place());
        job.received().ifPresent(day -> node.put("received", day.toString()));
        return node.put("performed", job.performed().toString())
                .put("technician", job.technician())
                .put("signer", job.signer());
    }

    private static Job job(JsonPlace at) {
        return new Job(
                at.at("customer").text(),
                at.at("place").text(),
                at.at("received").ifThere(day -> LocalDate.parse(day.text())),
                LocalDate.parse(at.at("performed").text()),
                at.at("technician").text(),
                at.at("signer").text());
    }

    private static ObjectNode meter(Meter meter) {
        ObjectNode node = RecordLayout.object()
                .put("serial", meter.serial())
                .put("model", meter.model())
                .put("condition", meter.condition())
                .put("state", meter.state());
        meter.previousK().ifPresent(k -> node.set("previous_k_pulses_per_m3", RecordLayout.number(k)));
        meter.otherState().ifPresent(k -> node.set("other_state_k_pulses_per_m3", RecordLayout.number(k)));
        return node;
    }

    private static Meter meter(JsonPlace at) {
        return new Meter(
                at.at("serial").text(),
                at.at("model").text(),
                at.at("condition").text(),
                at.at("state").text(),
                number(at.at("previous_k_pulses_per_m3")),
                number(at.at("other_state_k_pulses_per_m3")));
    }

    private static OptionalDouble number(JsonPlace at) {
        return at.ifThere(JsonPlace::number).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static JsonNode equipment(Equipment equipment) {
        ObjectNode node = RecordLayout.object().put("role", equipment.role()).put("name", equipment.name());
        CertificateJson.write(equipment.certificate(), node);
        return node;
    }

    private static Equipment equipment(JsonPlace at) {
        return new Equipment(at.at("role").text(), at.at("name").text(), CertificateJson.read(at));
    }

    private static JsonNode condition(Condition condition) {
        ObjectNode node = RecordLayout.object().put("name", condition.name());
        node.set("value", RecordLayout.number(condition.value()));
        return node.put("unit", condition.unit());
    }

    private static Condition condition(JsonPlace at) {
        return new Condition(
                at.at("name").text(), at.at("value").number(), at.at("unit").text());
    }

    private static JsonNode flow(Flow flow) {
        ObjectNode node = RecordLayout.object();
        node.set("m3_per_second", RecordLayout.number(flow.m3PerSecond()));
        node.put("leg", flow.leg());
        node.set("runs", RecordLayout.list(flow.runs(), BucketRecordJson::run));
        node.set("k", kValue(flow.k()));
        node.set("relative_spread", RecordLayout.number(flow.relativeSpread()));
        node.set("relative_range", RecordLayout.number(flow.relativeRange()));
        node.set("budget", RecordLayout.list(flow.budget(), BucketRecordJson::budgetLine));
        return node;
    }

    private static Flow flow(JsonPlace at) {
        return new Flow(
                at.at("m3_per_second").number(),
                at.at("leg").text(),
                at.at("runs").list(BucketRecordJson::run),
                kValue(at.at("k")),
                at.at("relative_spread").number(),
                at.at("relative_range").number(),
                at.at("budget").list(BucketRecordJson::budgetLine));
    }

    private static JsonNode run(Run run) {
        ObjectNode node = RecordLayout.object();
        node.set("pulses", RecordLayout.integer(run.pulses()));
        node.set("m3", RecordLayout.number(run.m3()));
        node.set("seconds", RecordLayout.number(run.seconds()));
        node.put("reading", run.reading());
        node.set("k_pulses_per_m3", RecordLayout.number(run.k()));
        run.excluded().ifPresent(why -> node.put("excluded", why));
        return node;
    }

    private static Run run(JsonPlace at) {
        return new Run(
                at.at("pulses").integer(),
                at.at("m3").number(),
                at.at("seconds").number(),
                at.at("reading").text(),
                at.at("k_pulses_per_m3").number(),
                at.at("excluded").ifThere(JsonPlace::text));
    }

    private static ObjectNode kValue(KValue k) {
        ObjectNode node = RecordLayout.object();
        node.set("pulses_per_m3", RecordLayout.number(k.pulsesPerM3()));
        node.set("relative_standard_uncertainty", RecordLayout.number(k.relativeStandardUncertainty()));
        node.set("degrees_of_freedom", RecordLayout.number(k.degreesOfFreedom()));
        node.set("coverage_factor", RecordLayout.number(k.coverageFactor()));
        return node;
    }

    private static KValue kValue(JsonPlace at) {
        return new KValue(
                at.at("pulses_per_m3").number(),
                at.at("relative_standard_uncertainty").number(),
                at.at("degrees_of_freedom").number(),
                at.at("coverage_factor").number());
    }

    private static JsonNode budgetLine(BudgetLine line) {
        ObjectNode node = RecordLayout.object().put("source", line.source()).put("kind", line.kind());
        node.set("relative_standard_uncertainty", RecordLayout.number(line.relativeStandardUncertainty()));
        node.set("degrees_of_freedom", RecordLayout.number(line.degreesOfFreedom()));
        return node;
    }

    private static BudgetLine budgetLine(JsonPlace at) {
        return new BudgetLine(
                at.at("source").text(),
                at.at("kind").text(),
                at.at("relative_standard_uncertainty").number(),
                at.at("degrees_of_freedom").number());
    }

    private static ObjectNode result(Result result) {
        ObjectNode node = RecordLayout.object();
        node.set("single_k", kValue(result.single()));
        node.put("single_words", result.singleWords());
        node.set("lowest_m3_per_second", RecordLayout.number(result.lowest()));
        node.set("highest_m3_per_second", RecordLayout.number(result.highest()));
        node.set("worst_error", RecordLayout.number(result.worstError()));
        node.set("in_service_relative_expanded_uncertainty", RecordLayout.number(result.inService()));
        result.fit().ifPresent(fit -> node.set("fit", fit(fit)));
        node.set(
                "checks",
                RecordLayout.list(
                        result.checks(),
                        check -> RecordLayout.object()
                                .put("name", check.name())
                                .put("holds", check.holds())
                                .put("words", check.words())));
        return node.put("accepted", result.accepted());
    }

    private static Result result(JsonPlace at) {
        return new Result(
                kValue(at.at("single_k")),
                at.at("single_words").text(),
                at.at("lowest_m3_per_second").number(),
                at.at("highest_m3_per_second").number(),
                at.at("worst_error").number(),
                at.at("in_service_relative_expanded_uncertainty").number(),
                at.at("fit").ifThere(BucketRecordJson::fit),
                at.at("checks")
                        .list(check -> new Check(
                                check.at("name").text(),
                                check.at("holds").flag(),
                                check.at("words").text())),
                at.at("accepted").flag());
    }

    private static ObjectNode fit(Fit fit) {
        ObjectNode node = RecordLayout.object();
        node.set("k_infinity_pulses_per_m3", RecordLayout.number(fit.kInfinity()));
        node.set("u_k_infinity_pulses_per_m3", RecordLayout.number(fit.uKInfinity()));
        node.set("b_m3_per_second", RecordLayout.number(fit.b()));
        node.set("u_b_m3_per_second", RecordLayout.number(fit.uB()));
        node.set("residuals", RecordLayout.list(fit.residuals(), RecordLayout::number));
        return node;
    }

    private static Fit fit(JsonPlace at) {
        return new Fit(
                at.at("k_infinity_pulses_per_m3").number(),
                at.at("u_k_infinity_pulses_per_m3").number(),
                at.at("b_m3_per_second").number(),
                at.at("u_b_m3_per_second").number(),
                at.at("residuals").list(JsonPlace::number));
    }

    private static ObjectNode wording(Wording wording) {
        ObjectNode node = RecordLayout.object();
        node.set("deviations", RecordLayout.texts(wording.deviations()));
        node.set("opinions", RecordLayout.texts(wording.opinions()));
        node.put("decision_rule", wording.decisionRule());
        wording.nextCalibration().ifPresent(next -> node.put("next_calibration", next));
        wording.amends()
                .ifPresent(amends -> node.set(
                        "amends",
                        RecordLayout.object()
                                .put("record", amends.record())
                                .put("revision", amends.revision())
                                .put("reason", amends.reason())));
        return node.put("external", wording.external());
    }

    private static Wording wording(JsonPlace at) {
        List<String> deviations = at.at("deviations").list(JsonPlace::text);
        return new Wording(
                deviations,
                at.at("opinions").list(JsonPlace::text),
                at.at("decision_rule").text(),
                at.at("next_calibration").ifThere(JsonPlace::text),
                at.at("amends")
                        .ifThere(amends -> new Amendment(
                                amends.at("record").text(),
                                amends.at("revision").smallInteger(),
                                amends.at("reason").text())),
                at.at("external").text());
    }
}
