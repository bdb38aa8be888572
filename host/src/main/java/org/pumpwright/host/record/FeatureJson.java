package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.list;
import static org.pumpwright.host.record.RecordLayout.number;
import static org.pumpwright.host.record.RecordLayout.object;
import static org.pumpwright.host.record.RecordLayout.word;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.grade.BudgetTerm;
import org.pumpwright.host.grade.Correction;
import org.pumpwright.host.grade.Feature;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Guard;
import org.pumpwright.host.grade.Limits;
import org.pumpwright.host.quantity.Duty;
import org.pumpwright.host.quantity.Uncertain;
import org.pumpwright.host.rule.Role;
import org.pumpwright.host.rule.Source;
import org.pumpwright.host.trace.Leg;
import tools.jackson.databind.node.ObjectNode;

/** A judged feature as JSON, every number in the unit that the feature names. Thread-safe. */
final class FeatureJson {
    private FeatureJson() {}

    static ObjectNode write(FeatureJudgement judged) {
        Feature feature = judged.feature();
        ObjectNode node = object().put("key", feature.key())
                .put("words", feature.words())
                .put("quantity", word(feature.quantity()))
                .put("unit", feature.unit().word());
        feature.place().ifPresent(place -> {
            node.put("duty_65536ths", place.duty().parts());
            place.leg().ifPresent(leg -> node.put("leg", word(leg)));
        });
        put(node, "effective_volts", judged.effectiveVolts());
        node.set("raw", number(judged.raw()));
        node.set("corrections", list(judged.corrections(), FeatureJson::correction));
        node.set("measured", number(judged.measured().value()));
        node.set("standard_uncertainty", number(judged.measured().standardUncertainty()));
        node.set("degrees_of_freedom", number(judged.measured().degreesOfFreedom()));
        node.set("budget", list(judged.budget(), FeatureJson::term));
        node.set("limits", limits(judged.limits()));
        node.set("guard", guard(judged.guard()));
        return node.put("decision", word(judged.decision()))
                .put("role", word(judged.role()))
                .put("remark", judged.remark());
    }

    static FeatureJudgement read(JsonPlace at) {
        return new FeatureJudgement(
                feature(at),
                optional(at.at("effective_volts")),
                at.at("raw").number(),
                at.at("corrections").list(FeatureJson::correction),
                new Uncertain(
                        at.at("measured").number(),
                        at.at("standard_uncertainty").number(),
                        at.at("degrees_of_freedom").number()),
                at.at("budget").list(FeatureJson::term),
                limits(at.at("limits")),
                guard(at.at("guard")),
                at.at("decision").choice(FeatureJudgement.Decision.class),
                at.at("role").choice(Role.class),
                at.at("remark").text());
    }

    private static Feature feature(JsonPlace at) {
        Optional<Duty> duty =
                at.at("duty_65536ths").ifThere(JsonPlace::smallInteger).map(Duty::new);
        Optional<Leg> leg = at.at("leg").ifThere(place -> place.choice(Leg.class));
        return new Feature(
                at.at("key").text(),
                at.at("words").text(),
                at.at("quantity").choice(Feature.Kind.class),
                FindingJson.unit(at.at("unit")),
                duty.map(parts -> new Feature.Place(parts, leg)));
    }

    private static ObjectNode correction(Correction correction) {
        ObjectNode node = object().put("name", correction.name());
        node.set("size", number(correction.size()));
        node.set("standard_uncertainty", number(correction.standardUncertainty()));
        return node.put("applied", correction.applied()).put("note", correction.note());
    }

    private static Correction correction(JsonPlace at) {
        return new Correction(
                at.at("name").text(),
                at.at("size").number(),
                at.at("standard_uncertainty").number(),
                at.at("applied").flag(),
                at.at("note").text());
    }

    private static ObjectNode term(BudgetTerm term) {
        ObjectNode node = object().put("name", term.name());
        node.set("standard_uncertainty", number(term.standardUncertainty()));
        return node.put("through", term.through());
    }

    private static BudgetTerm term(JsonPlace at) {
        return new BudgetTerm(
                at.at("name").text(),
                at.at("standard_uncertainty").number(),
                at.at("through").text());
    }

    private static ObjectNode limits(Limits limits) {
        ObjectNode node = object().put("set", limits.set());
        node.set("low", number(limits.low()));
        put(node, "centre", limits.centre());
        node.set("high", number(limits.high()));
        node.set("source", source(limits.source()));
        return node.put("meaning", limits.meaning());
    }

    private static Limits limits(JsonPlace at) {
        return new Limits(
                at.at("set").text(),
                at.at("low").number(),
                optional(at.at("centre")),
                at.at("high").number(),
                source(at.at("source")),
                at.at("meaning").text());
    }

    private static ObjectNode guard(Guard guard) {
        ObjectNode node = object();
        node.set("factor", number(guard.factor()));
        node.set("width", number(guard.width()));
        node.set("source", source(guard.source()));
        return node;
    }

    private static Guard guard(JsonPlace at) {
        return new Guard(at.at("factor").number(), at.at("width").number(), source(at.at("source")));
    }

    private static ObjectNode source(Source source) {
        return object().put("file", source.file())
                .put("version", source.version())
                .put("line", source.line());
    }

    private static Source source(JsonPlace at) {
        return new Source(
                at.at("file").text(),
                at.at("version").smallInteger(),
                at.at("line").smallInteger());
    }

    private static void put(ObjectNode node, String key, OptionalDouble value) {
        value.ifPresent(each -> node.set(key, number(each)));
    }

    private static OptionalDouble optional(JsonPlace at) {
        return at.node() == null ? OptionalDouble.empty() : OptionalDouble.of(at.number());
    }
}
