package org.pumpwright.host.cli.record;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.Search;
import picocli.CommandLine.Option;

/** What is looked for; every option that is given must hold. */
final class SearchOptions {
    @Option(names = "--serial", paramLabel = "TEXT", description = "Serial number, or its beginning.")
    private @Nullable String serial;

    @Option(names = "--customer", paramLabel = "NAME", description = "Customer, or the name's beginning.")
    private @Nullable String customer;

    @Option(names = "--claim", paramLabel = "NUMBER", description = "Claim or job number, or its beginning.")
    private @Nullable String claim;

    @Option(names = "--model", paramLabel = "NAME", description = "Model, whole.")
    private @Nullable String model;

    @Option(
            names = "--verdict",
            paramLabel = "WORD",
            description = "pass, fail, inconclusive, invalid, not-tested; accepted, not-accepted for a bucket test.")
    private @Nullable String verdict;

    @Option(names = "--from", paramLabel = "DAY", description = "From this day on, such as 2026-03-02.")
    private @Nullable LocalDate from;

    @Option(names = "--to", paramLabel = "DAY", description = "Up to and with this day.")
    private @Nullable LocalDate to;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            description = "run, grade, bucket-test, curve, stand, intake, custody, photo, decision.")
    private @Nullable String kind;

    @Option(
            names = "--contains",
            paramLabel = "TEXT",
            description = "Three letters or more that stand anywhere: in names, ids, plans, causes.")
    private @Nullable String contains;

    @Option(
            names = "--most",
            paramLabel = "N",
            description = "At most so many, the newest; ${DEFAULT-VALUE} if not given.",
            defaultValue = "50")
    private int most;

    /** Whether nothing at all is asked for, but perhaps how many. */
    boolean everything() {
        return serial == null
                && customer == null
                && claim == null
                && model == null
                && verdict == null
                && from == null
                && to == null
                && kind == null
                && contains == null;
    }

    int most() {
        return most;
    }

    Search search() throws OrderException {
        return search(most);
    }

    Search search(int count) throws OrderException {
        try {
            return new Search(
                    kind(),
                    Optional.ofNullable(serial),
                    Optional.ofNullable(customer),
                    Optional.ofNullable(claim),
                    Optional.ofNullable(model),
                    Optional.ofNullable(verdict),
                    Optional.ofNullable(from),
                    Optional.ofNullable(to),
                    Optional.ofNullable(contains),
                    count);
        } catch (IllegalArgumentException e) {
            throw new OrderException(e.getMessage() + ".");
        }
    }

    private Optional<EntryKind> kind() throws OrderException {
        if (kind == null) {
            return Optional.empty();
        }
        Optional<EntryKind> known = EntryKind.ofWord(kind);
        if (known.isEmpty()) {
            throw new OrderException("there is no kind of entry '%s'. Known are: %s."
                    .formatted(
                            kind,
                            Arrays.stream(EntryKind.values())
                                    .map(EntryKind::word)
                                    .collect(Collectors.joining(", "))));
        }
        return known;
    }
}
