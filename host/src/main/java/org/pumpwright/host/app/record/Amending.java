package org.pumpwright.host.app.record;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.record.exchange.Facts;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.Finder;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Corrects an entry by another one that says what is right, who says so and why. The corrected entry stays as it is, and is
 * found as before; by what is right the amendment is found. Thread-safe.
 *
 * @param serial the right serial number
 * @param technician the right technician
 * @param claim the right claim number
 * @param by who corrects
 * @param reason why
 */
public record Amending(
        Optional<String> serial, Optional<String> technician, Optional<String> claim, String by, String reason) {

    /**
     * Amends an entry.
     *
     * @param at when
     * @return the amendment
     * @throws OrderException when there is no such entry, or nothing to correct
     * @throws StoreException when the store does not take it
     */
    public Entry amend(RecordBook book, String id, OffsetDateTime at) throws OrderException, StoreException {
        if (by.isBlank() || reason.isBlank()) {
            throw new OrderException("a named person amends, and says why. Give --by NAME and --reason TEXT.");
        }
        Entry wrong = OnRecord.entry(book.reading(), id);
        if (wrong.amends().isPresent()) {
            throw new OrderException("%s is an amendment itself. Amend %s once more instead."
                    .formatted(wrong.id(), wrong.amends().get().id()));
        }
        RecordStore store = book.store(book.choice().desk());
        List<Entry> before = store.amendments(wrong.id());
        Finder now = before.isEmpty()
                ? wrong.finder()
                : before.get(before.size() - 1).finder();
        Facts facts = new Facts()
                .with("amends", wrong.id())
                .with("by", by)
                .with("reason", reason)
                .with("corrections", corrections(now));
        return store.append(new Draft(
                wrong.kind(),
                "%s/amended-%d".formatted(wrong.id(), before.size() + 1),
                at,
                facts.json(),
                finder(now),
                List.of(),
                Optional.of(new Draft.Amendment(wrong.id(), reason))));
    }

    private Facts corrections(Finder now) throws OrderException {
        Map<String, Facts> corrections = new TreeMap<>();
        serial.ifPresent(right -> corrections.put("serial", correction(now.serial(), right)));
        claim.ifPresent(right -> corrections.put("claim", correction(now.claim(), right)));
        technician.ifPresent(right -> corrections.put("technician", correction(Optional.empty(), right)));
        if (corrections.isEmpty()) {
            throw new OrderException("nothing is corrected. Give what is right: --serial, --technician or --claim.");
        }
        Facts facts = new Facts();
        corrections.forEach(facts::with);
        return facts;
    }

    private static Facts correction(Optional<String> was, String right) {
        return new Facts().with("was", was).with("is", right);
    }

    private Finder finder(Finder now) {
        return new Finder(
                serial.or(now::serial),
                now.model(),
                now.customer(),
                claim.or(now::claim),
                now.verdict(),
                technician.map(name -> name + " " + now.words()).orElse(now.words()));
    }
}
