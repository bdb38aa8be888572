package org.pumpwright.host.claim;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.record.ledger.CanonicalJson;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Draft.Amendment;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.Finder;

/** Between acts at the desk and entries on record. Thread-safe. */
public final class ClaimEntries {
    private static final String PREFIX = "claim/";

    private ClaimEntries() {}

    /** Whether an entry is an act at the desk, of any claim. */
    public static boolean isAct(Entry entry) {
        return entry.id().startsWith(PREFIX);
    }

    /** Place of an act among those of its claim, from 1. */
    public static int place(Entry entry) {
        return Integer.parseInt(entry.id().substring(entry.id().lastIndexOf('/') + 1));
    }

    /** Id of the act with this place. Two desks that act at once ask for the same one, and one of them must look again. */
    public static String id(String claim, int place) {
        return "%s%s/%04d".formatted(PREFIX, claim, place);
    }

    /**
     * The entry that an act is to become.
     *
     * @param intake as it holds then
     * @param place among the acts of the claim, from 1
     * @param corrects what it corrects
     */
    public static Draft draft(ClaimIntake intake, int place, Act act, OffsetDateTime at, Optional<Amendment> corrects) {
        String content = Json.text(ActJson.content(act).put("claim", intake.claim()));
        return new Draft(
                ActJson.kind(act),
                id(intake.claim(), place),
                at,
                content,
                finder(intake, act),
                act instanceof Act.Received ? List.of(identity(intake.people())) : List.of(),
                corrects);
    }

    private static byte[] identity(People people) {
        return CanonicalJson.of(IntakeJson.identity(people).toString());
    }

    private static Finder finder(ClaimIntake intake, Act act) {
        return new Finder(
                given(intake.unit().serial()),
                given(intake.unit().model()),
                given(intake.people().customer()),
                Optional.of(intake.claim()),
                act.verdict().map(word -> word.toLowerCase(Locale.ROOT)),
                act.remembered().strip());
    }

    private static Optional<String> given(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }

    /**
     * The act that an entry holds.
     *
     * @param identity what is kept beside it; empty when it was left out, or the entry is no intake
     * @throws IllegalArgumentException when it holds none that is known
     */
    public static Act read(Entry entry, Optional<byte[]> identity) {
        People people = identity.map(bytes -> IntakeJson.people(Json.read(new String(bytes, StandardCharsets.UTF_8))))
                .orElse(new People("", "", ""));
        return ActJson.read(entry.finder().claim().orElse(""), Json.read(entry.content()), entry.at(), people);
    }
}
