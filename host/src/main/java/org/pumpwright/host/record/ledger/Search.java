package org.pumpwright.host.record.ledger;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What is looked for; every part that is given must hold. Thread-safe.
 *
 * @param kind only entries of this kind
 * @param serial serial number, whole or its beginning
 * @param customer name, whole or its beginning
 * @param claim claim number, whole or its beginning
 * @param model the whole word
 * @param verdict the whole word
 * @param from first day, by the shop's own date
 * @param to last day, by the shop's own date
 * @param contains three characters or more that stand anywhere in the words
 * @param most how many entries at most
 */
public record Search(
        Optional<EntryKind> kind,
        Optional<String> serial,
        Optional<String> customer,
        Optional<String> claim,
        Optional<String> model,
        Optional<String> verdict,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Optional<String> contains,
        int most) {
    /** Fewer characters are found everywhere. */
    public static final int LEAST_CONTAINS = 3;

    private static final int MOST = 10_000;

    public Search {
        if (most < 1 || most > MOST) {
            throw new IllegalArgumentException("%d entries were asked for, 1 to %d can be".formatted(most, MOST));
        }
        contains.filter(text -> text.strip().length() < LEAST_CONTAINS).ifPresent(text -> {
            throw new IllegalArgumentException(
                    "'%s' is too short to look for: give at least %d characters".formatted(text, LEAST_CONTAINS));
        });
    }

    /** Everything, the newest first. */
    public static Search newest(int most) {
        return new Search(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                most);
    }

    /** The same for one serial number, or its beginning. */
    public Search ofSerial(String wanted) {
        return new Search(kind, Optional.of(wanted), customer, claim, model, verdict, from, to, contains, most);
    }

    /** The same for words that stand anywhere. */
    public Search containing(String wanted) {
        return new Search(kind, serial, customer, claim, model, verdict, from, to, Optional.of(wanted), most);
    }

    /** The same for one kind. */
    public Search ofKind(EntryKind wanted) {
        return new Search(Optional.of(wanted), serial, customer, claim, model, verdict, from, to, contains, most);
    }
}
