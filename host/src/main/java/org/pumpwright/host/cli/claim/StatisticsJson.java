package org.pumpwright.host.cli.claim;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.claim.StatisticsDesk.Question;
import org.pumpwright.host.claim.statistics.FleetFindings;
import org.pumpwright.host.claim.statistics.Interval;
import org.pumpwright.host.claim.statistics.Middle;
import org.pumpwright.host.claim.statistics.ModeLife;
import org.pumpwright.host.claim.statistics.ReturnCounts;
import org.pumpwright.host.claim.statistics.ReturnStatistics;
import org.pumpwright.host.claim.statistics.ServiceRow;
import org.pumpwright.host.claim.statistics.Share;
import org.pumpwright.host.claim.statistics.ShopFigures;
import org.pumpwright.host.claim.statistics.WeibullFit;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Statistics of returns as one line of JSON: ages in months, shares of 1, every estimate with its 95 % interval. Thread-safe. */
final class StatisticsJson {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private StatisticsJson() {}

    static String of(Question question, ReturnStatistics statistics) {
        ObjectNode node = JSON.createObjectNode()
                .put("event", "return_statistics")
                .put("practice", question.practice())
                .put("until", question.until().toString())
                .put("interval_level", Interval.LEVEL);
        question.model().ifPresent(model -> node.put("model", model));
        question.from().ifPresent(day -> node.put("from", day.toString()));
        counts(node.putObject("returns"), statistics.counts());
        ArrayNode modes = node.putArray("confirmed_by_mode");
        statistics.modes().forEach(mode -> {
            ObjectNode one = modes.addObject();
            mode.mode().ifPresent(code -> one.put("mode", code));
            share(one, "share", Optional.of(mode.share()));
        });
        shop(node.putObject("shop"), statistics.shop());
        statistics.fleet().ifPresent(fleet -> fleet(node.putObject("fleet"), fleet));
        return JSON.writeValueAsString(node);
    }

    private static void counts(ObjectNode node, ReturnCounts counts) {
        node.put("returned", counts.returns())
                .put("concluded", counts.concluded())
                .put("open", counts.open())
                .put("confirmed_failures", counts.confirmed())
                .put("no_fault_found", counts.noFaultFound())
                .put("inconclusive", counts.inconclusive())
                .put("not_testable", counts.notTestable());
        share(node, "no_fault_found_share", counts.noFaultFoundShare());
        share(node, "confirmed_share", counts.confirmedShare());
    }

    private static void shop(ObjectNode node, ShopFigures shop) {
        node.put("repeat_days", ShopFigures.REPEAT_DAYS).put("open", shop.open());
        shop.oldestOpenDays().ifPresent(days -> node.put("oldest_open_days", days));
        share(node, "repeats", shop.repeats());
        middle(node, "turnaround_days", shop.turnaroundDays());
        middle(node, "touch_minutes", shop.touchMinutes());
    }

    private static void fleet(ObjectNode node, FleetFindings fleet) {
        node.put("shipped", fleet.shipped()).put("failed", fleet.failed());
        ArrayNode unplaced = node.putArray("left_out");
        fleet.unplaced().forEach(unplaced::add);
        ArrayNode rows = node.putArray("months_in_service");
        fleet.rows().forEach(row -> row(rows.addObject(), row));
        ArrayNode lives = node.putArray("lives");
        fleet.modes().forEach(life -> life(lives.addObject(), life));
        ObjectNode batches = node.putObject("batches")
                .put("looked_at", fleet.batches().findings().size())
                .put("alert_below", fleet.batches().alertBelow())
                .put("expected_false_alerts", fleet.batches().expectedFalseAlerts());
        ArrayNode found = batches.putArray("findings");
        fleet.batches()
                .findings()
                .forEach(batch -> found.addObject()
                        .put("batch", batch.batch())
                        .put("shipped", batch.shipped())
                        .put("failures", batch.failures())
                        .put("expected", batch.expected())
                        .put("chance", batch.chance())
                        .put("alert", batch.alert()));
    }

    private static void row(ObjectNode node, ServiceRow row) {
        node.put("batch", row.batch())
                .put("shipped_in", row.shippedIn().toString())
                .put("shipped", row.shipped())
                .put("still_serving", row.stillServing())
                .put("serving_months", row.servingMonths());
        numbers(node.putArray("returned"), row.returned());
        numbers(node.putArray("confirmed"), row.confirmed());
    }

    private static void life(ObjectNode node, ModeLife life) {
        life.mode().ifPresent(mode -> node.put("mode", mode));
        node.put("suspensions", life.suspensions());
        ArrayNode months = node.putArray("failure_months");
        life.failureMonths().forEach(months::add);
        if (life instanceof ModeLife.Listed listed) {
            node.put("not_fitted", listed.reason());
        }
        if (life instanceof ModeLife.Fitted fitted) {
            fit(node, fitted.fit(), fitted.watchedMonths());
        }
    }

    private static void fit(ObjectNode node, WeibullFit fit, double watched) {
        node.put("watched_months", watched).put("beta", fit.beta());
        interval(node, "beta_interval", fit.betaInterval());
        node.put("eta_months", fit.eta());
        interval(node, "eta_interval", fit.etaInterval());
        node.put("b10_months", fit.b10());
        interval(node, "b10_interval", fit.b10Interval());
    }

    private static void share(ObjectNode node, String name, Optional<Share> share) {
        share.ifPresent(known -> interval(
                node.putObject(name)
                        .put("count", known.hits())
                        .put("of", known.of())
                        .put("value", known.value()),
                "interval",
                known.interval()));
    }

    private static void middle(ObjectNode node, String name, Optional<Middle> middle) {
        middle.ifPresent(known -> node.putObject(name)
                .put("units", known.count())
                .put("least", known.least())
                .put("median", known.median())
                .put("greatest", known.greatest()));
    }

    /** Lower and upper end; an upper end without limit is null. */
    private static void interval(ObjectNode node, String name, Interval interval) {
        ArrayNode ends = node.putArray(name).add(interval.low());
        if (Double.isInfinite(interval.high())) {
            ends.addNull();
        } else {
            ends.add(interval.high());
        }
    }

    private static void numbers(ArrayNode node, List<Integer> numbers) {
        numbers.forEach(node::add);
    }
}
