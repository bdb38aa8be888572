package org.pumpwright.host.claim;

import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An intake as content of an entry. Who brought the unit and whose it is stands apart, beside the entry, so that the entry can
 * be handed to a factory without it and its digest still holds. Thread-safe.
 */
final class IntakeJson {
    private IntakeJson() {}

    /** Everything but the people. */
    static ObjectNode content(ClaimIntake intake) {
        ObjectNode json = Json.object();
        json.put("received", intake.received().toString());
        json.set("unit", unit(intake.unit()));
        json.set("use", use(intake.use()));
        json.set("planter", planter(intake.planter()));
        json.set("complaint", complaint(intake.complaint()));
        json.set("decontamination", decontamination(intake.decontamination()));
        Json.put(json, "value", intake.value(), Amount::text);
        Json.put(json, "taken_by", intake.takenBy());
        json.put("practice", intake.practice());
        return json;
    }

    /** The people. */
    static ObjectNode identity(People people) {
        ObjectNode json = Json.object();
        Json.put(json, "brought_by", people.broughtBy());
        Json.put(json, "contact", people.contact());
        Json.put(json, "customer", people.customer());
        ObjectNode whole = Json.object();
        whole.set("identity", json);
        return whole;
    }

    static ClaimIntake read(String claim, JsonNode json, People people) {
        return new ClaimIntake(
                claim,
                Json.time(json, "received"),
                people,
                unit(json.path("unit")),
                use(json.path("use")),
                planter(json.path("planter")),
                complaint(json.path("complaint")),
                decontamination(json.path("decontamination")),
                Json.optional(json, "value").map(Amount::of),
                Json.text(json, "taken_by"),
                json.path("practice").booleanValue(false));
    }

    static People people(JsonNode beside) {
        JsonNode json = beside.path("identity");
        return new People(Json.text(json, "brought_by"), Json.text(json, "contact"), Json.text(json, "customer"));
    }

    private static ObjectNode unit(UnitAsReceived unit) {
        ObjectNode json = Json.object();
        Json.put(json, "kind", unit.kind());
        Json.put(json, "model", unit.model());
        Json.put(json, "serial", unit.serial());
        Json.put(json, "date_code", unit.dateCode(), code -> code);
        Json.put(json, "accessories", unit.accessories());
        Json.put(json, "seal", unit.seal());
        return Json.put(json, "tag", unit.tag());
    }

    private static UnitAsReceived unit(JsonNode json) {
        return new UnitAsReceived(
                Json.text(json, "kind"),
                Json.text(json, "model"),
                Json.text(json, "serial"),
                Json.optional(json, "date_code"),
                Json.text(json, "accessories"),
                Json.text(json, "seal"),
                Json.text(json, "tag"));
    }

    private static ObjectNode use(TimeInUse use) {
        ObjectNode json = Json.object();
        Json.sourced(json, "sold", use.sold());
        Json.sourced(json, "delivered", use.delivered());
        Json.sourced(json, "first_used", use.firstUsed());
        Json.sourced(json, "hours", use.hours());
        Json.sourced(json, "acres", use.acres());
        use.registered().ifPresent(known -> json.put("registered", known));
        return json;
    }

    private static TimeInUse use(JsonNode json) {
        return new TimeInUse(
                Json.day(json, "sold"),
                Json.day(json, "delivered"),
                Json.day(json, "first_used"),
                Json.count(json, "hours"),
                Json.count(json, "acres"),
                flag(json, "registered"));
    }

    private static ObjectNode planter(OnThePlanter planter) {
        ObjectNode json = Json.object();
        Json.put(json, "make_up", planter.makeUp());
        Json.put(json, "product", planter.product());
        return Json.put(json, "last_flush", planter.lastFlush());
    }

    private static OnThePlanter planter(JsonNode json) {
        return new OnThePlanter(Json.text(json, "make_up"), Json.text(json, "product"), Json.text(json, "last_flush"));
    }

    private static ObjectNode complaint(ComplaintAsMade said) {
        ObjectNode json = Json.object();
        Json.put(json, "words", said.words());
        Json.put(json, "code", said.code());
        Json.put(json, "conditions", said.conditions());
        return Json.put(json, "already_swapped", said.alreadySwapped());
    }

    private static ComplaintAsMade complaint(JsonNode json) {
        return new ComplaintAsMade(
                Json.text(json, "words"),
                Json.text(json, "code"),
                Json.text(json, "conditions"),
                Json.text(json, "already_swapped"));
    }

    private static ObjectNode decontamination(Decontamination state) {
        ObjectNode json = Json.object();
        state.declared().ifPresent(known -> json.put("declared", known));
        Json.put(json, "confirmed_by", state.confirmedBy(), name -> name);
        return json.put("rinses", state.rinses());
    }

    static Decontamination decontamination(JsonNode json) {
        return new Decontamination(
                flag(json, "declared"),
                Json.optional(json, "confirmed_by"),
                json.path("rinses").intValue(0));
    }

    private static Optional<Boolean> flag(JsonNode json, String key) {
        return json.path(key).booleanValueOpt();
    }
}
