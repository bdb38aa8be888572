package org.pumpwright.host.app.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.app.RecordNames;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.StoreException;

/** Looks up what was measured by one text that may be anything a person has at hand. Thread-safe. */
public final class LookingUp {
    private static final List<EntryKind> MEASURED = List.of(EntryKind.RUN, EntryKind.GRADE, EntryKind.BUCKET_TEST);

    private final RecordBook book;

    /** @param book is only read */
    public LookingUp(RecordBook book) {
        this.book = book;
    }

    /**
     * What is looked for.
     *
     * @param text the beginning of a serial number, a claim number or a customer's name, or three letters from anywhere; blank for all
     * @param verdict the whole word, as in files
     * @param from first day
     * @param most how many at most
     */
    public record Wanted(String text, Optional<String> verdict, Optional<LocalDate> from, int most) {}

    /**
     * Runs and bucket tests, the newest first; none where there is no store yet.
     *
     * @throws StoreException when it can't be looked up
     */
    public List<Entry> find(Wanted wanted) throws StoreException {
        if (!book.choice().mayHold()) {
            return List.of();
        }
        RecordStore store = book.reading();
        Map<String, Entry> found = new LinkedHashMap<>();
        for (Search search : searches(wanted)) {
            for (EntryKind kind : MEASURED) {
                store.search(search.ofKind(kind)).forEach(entry -> found.putIfAbsent(entry.id(), entry));
            }
        }
        return found.values().stream()
                .filter(entry -> entry.amends().isEmpty())
                .sorted(Comparator.comparing((Entry entry) -> entry.at().toInstant())
                        .thenComparing(Entry::id)
                        .reversed())
                .limit(wanted.most())
                .toList();
    }

    private static List<Search> searches(Wanted wanted) {
        String text = wanted.text().strip();
        List<Search> searches = new ArrayList<>();
        if (text.isEmpty()) {
            searches.add(search(wanted, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
            return searches;
        }
        Optional<String> word = Optional.of(text);
        searches.add(search(wanted, word, Optional.empty(), Optional.empty(), Optional.empty()));
        searches.add(search(wanted, Optional.empty(), word, Optional.empty(), Optional.empty()));
        searches.add(search(wanted, Optional.empty(), Optional.empty(), word, Optional.empty()));
        if (text.length() >= Search.LEAST_CONTAINS) {
            searches.add(search(wanted, Optional.empty(), Optional.empty(), Optional.empty(), word));
        }
        return searches;
    }

    private static Search search(
            Wanted wanted,
            Optional<String> serial,
            Optional<String> customer,
            Optional<String> claim,
            Optional<String> contains) {
        return new Search(
                Optional.empty(),
                serial,
                customer,
                claim,
                Optional.empty(),
                wanted.verdict(),
                wanted.from(),
                Optional.empty(),
                contains,
                wanted.most());
    }

    /**
     * Other runs of the unit that a run was made on, the newest first; none for a unit without a serial number.
     *
     * @throws StoreException when they can't be looked up
     */
    public List<Entry> sameUnit(Entry run, int most) throws StoreException {
        Optional<String> serial = run.finder().serial().filter(RecordNames::isSerial);
        if (serial.isEmpty()) {
            return List.of();
        }
        List<Entry> others = new ArrayList<>();
        for (Entry entry : find(new Wanted(serial.get(), Optional.empty(), Optional.empty(), most))) {
            boolean same = entry.finder().serial().equals(serial)
                    && entry.finder().model().equals(run.finder().model());
            if (same && !entry.id().equals(run.id()) && entry.kind() != EntryKind.BUCKET_TEST) {
                others.add(entry);
            }
        }
        return others;
    }
}
