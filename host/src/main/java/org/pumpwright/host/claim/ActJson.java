package org.pumpwright.host.claim;

import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.EntryKind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Acts as content of entries. Thread-safe. */
final class ActJson {
    private ActJson() {}

    static EntryKind kind(Act act) {
        if (act instanceof Act.Received) {
            return EntryKind.INTAKE;
        }
        if (act instanceof Act.Moved || act instanceof Act.Rinsed) {
            return EntryKind.CUSTODY;
        }
        if (act instanceof Act.Pictured) {
            return EntryKind.PHOTO;
        }
        if (act instanceof Act.Observed || act instanceof Act.Waived) {
            return EntryKind.OBSERVATION;
        }
        return act instanceof Act.Found ? EntryKind.FINDING : EntryKind.DECISION;
    }

    static ObjectNode content(Act act) {
        if (act instanceof Act.Received received) {
            return named("received", IntakeJson.content(received.intake()));
        }
        if (act instanceof Act.Moved moved) {
            return named("moved", move(moved.move()));
        }
        if (act instanceof Act.Pictured pictured) {
            return named("pictured", photo(pictured.photo()));
        }
        if (act instanceof Act.Observed observed) {
            return named("observed", observation(observed.observation()));
        }
        if (act instanceof Act.Rinsed rinsed) {
            return named("rinsed", Json.object().put("person", rinsed.person()).put("rinses", rinsed.rinses()));
        }
        if (act instanceof Act.Waived waived) {
            return named("waived", waiver(waived.waiver()));
        }
        if (act instanceof Act.Found found) {
            return named("found", finding(found.finding()));
        }
        return named("decided", decision(((Act.Decided) act).decision()));
    }

    private static ObjectNode named(String act, ObjectNode json) {
        return json.put("act", act);
    }

    /**
     * The act that an entry holds.
     *
     * @param people who stands beside an intake
     * @throws IllegalArgumentException when it holds none that is known
     */
    static Act read(String claim, JsonNode json, OffsetDateTime at, People people) {
        String act = Json.text(json, "act");
        return switch (act) {
            case "received" -> new Act.Received(IntakeJson.read(claim, json, people));
            case "moved" -> new Act.Moved(move(json, at));
            case "pictured" -> new Act.Pictured(photo(json, at));
            case "observed" ->
                new Act.Observed(new Observation(
                        Observation.Seen.ofWord(Json.text(json, "seen")),
                        Json.text(json, "words"),
                        Json.text(json, "person"),
                        at));
            case "rinsed" ->
                new Act.Rinsed(Json.text(json, "person"), json.path("rinses").intValue(0));
            case "waived" ->
                new Act.Waived(new Waiver(
                        Words.choice(Waiver.Step.class, "step", Json.text(json, "step")),
                        Json.text(json, "person"),
                        Json.text(json, "reason"),
                        at));
            case "found" -> new Act.Found(finding(json, at));
            case "decided" -> new Act.Decided(decision(json, at));
            default ->
                throw new IllegalArgumentException(
                        "an entry of claim %s says '%s', which is not known here: it was made by a newer program"
                                .formatted(claim, act));
        };
    }

    private static ObjectNode move(CustodyMove move) {
        ObjectNode json = Json.object()
                .put("to", move.to().word())
                .put("person", move.person())
                .put("place", move.place());
        Json.put(json, "tag", move.tag());
        return Json.put(json, "colour", move.colour(), word -> word);
    }

    private static CustodyMove move(JsonNode json, OffsetDateTime at) {
        return new CustodyMove(
                at,
                CustodyState.ofWord(Json.text(json, "to")),
                Json.text(json, "person"),
                Json.text(json, "place"),
                Json.text(json, "tag"),
                Json.optional(json, "colour"));
    }

    private static ObjectNode photo(Photo photo) {
        return Json.object()
                .put("sha256", photo.sha256().hex())
                .put("bytes", photo.bytes())
                .put("format", Words.of(photo.format()))
                .put("shows", photo.shows().word())
                .put("taken_at", photo.takenAt().toString())
                .put("taken_by_clock_of", photo.by().word())
                .put("file_name", photo.fileName())
                .put("person", photo.person());
    }

    private static Photo photo(JsonNode json, OffsetDateTime at) {
        return new Photo(
                new Digest(Json.text(json, "sha256")),
                json.path("bytes").intValue(0),
                Words.choice(Photo.Format.class, "format", Json.text(json, "format")),
                Photo.Shows.ofWord(Json.text(json, "shows")),
                LocalDateTime.parse(Json.text(json, "taken_at")),
                Words.choice(Photo.TimeBy.class, "clock", Json.text(json, "taken_by_clock_of")),
                Json.text(json, "file_name"),
                Json.text(json, "person"),
                at);
    }

    private static ObjectNode observation(Observation observation) {
        ObjectNode json = Json.object().put("seen", observation.seen().word()).put("person", observation.person());
        return Json.put(json, "words", observation.words());
    }

    private static ObjectNode waiver(Waiver waiver) {
        return Json.object()
                .put("step", waiver.step().word())
                .put("person", waiver.person())
                .put("reason", waiver.reason());
    }

    private static ObjectNode finding(Finding finding) {
        ObjectNode json = Json.object()
                .put("category", finding.category().name())
                .put("reproduced", finding.reproduced().word())
                .put("basis", finding.basis())
                .put("signer", finding.signer());
        Json.put(json, "parts", finding.parts());
        return Json.put(json, "tests", finding.tests());
    }

    private static Finding finding(JsonNode json, OffsetDateTime at) {
        return new Finding(
                Category.ofWord(Json.text(json, "category")),
                Reproduced.ofWord(Json.text(json, "reproduced")),
                Json.text(json, "basis"),
                Json.texts(json, "parts"),
                Json.texts(json, "tests"),
                Json.text(json, "signer"),
                at);
    }

    private static ObjectNode decision(CoverageDecision decision) {
        ObjectNode json = Json.object()
                .put("outcome", decision.outcome().word())
                .put("reason", decision.reason())
                .put("signer", decision.signer());
        Json.put(json, "second_signer", decision.second(), name -> name);
        Json.put(json, "rules", decision.rules(), label -> label);
        return Json.put(json, "amount", decision.amount(), Amount::text);
    }

    private static CoverageDecision decision(JsonNode json, OffsetDateTime at) {
        return new CoverageDecision(
                CoverageDecision.Outcome.ofWord(Json.text(json, "outcome")),
                Json.text(json, "reason"),
                Json.text(json, "signer"),
                Json.optional(json, "second_signer"),
                Json.optional(json, "rules"),
                Json.optional(json, "amount").map(Amount::of),
                at);
    }
}
