package org.pumpwright.host.app.claim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.Act;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.ClaimEntries;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.CoverageAssessment;
import org.pumpwright.host.claim.CoverageDecision;
import org.pumpwright.host.claim.CustodyMove;
import org.pumpwright.host.claim.CustodyState;
import org.pumpwright.host.claim.FlagFinder;
import org.pumpwright.host.claim.FlagFinder.Earlier;
import org.pumpwright.host.claim.FlagFinder.Traced;
import org.pumpwright.host.claim.RunEntry;
import org.pumpwright.host.claim.UnitAsReceived;
import org.pumpwright.host.claim.coverage.Circumstances;
import org.pumpwright.host.claim.coverage.Circumstances.EarlierClaim;
import org.pumpwright.host.claim.coverage.Coverage;
import org.pumpwright.host.claim.coverage.CoverageRules;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.StoreException;

/** Looks at a claim among everything else that is on record: flags for a person, and what the coverage rules say. Thread-safe. */
public final class ClaimReview {
    private static final int MOST_OF_A_SERIAL = 1000;
    private static final int MOST_RUNS = 5000;
    private static final int MOST = 10_000;

    private final RecordStore store;
    private final ClaimShelf claims;
    private final ClaimData data;

    /**
     * @param store is only read
     * @param data the desk's data files
     */
    public ClaimReview(RecordStore store, ClaimData data) {
        this.store = store;
        this.claims = new ClaimShelf(store);
        this.data = data;
    }

    /**
     * A claim with all that is known of it.
     *
     * @param file as it stands, with flags
     * @param coverage what the rules say; empty where none hold
     * @param entries its entries, by chain and place
     */
    public record Reviewed(ClaimFile file, Optional<CoverageAssessment> coverage, List<Entry> entries) {
        public Reviewed {
            entries = List.copyOf(entries);
        }
    }

    /**
     * Reviews a claim.
     *
     * @throws OrderException when there is no such claim
     */
    public Reviewed of(String number) throws OrderException, DataFileException, StoreException {
        ClaimShelf.Claim claim = claims.require(number);
        ClaimFile file = claim.file();
        List<Entry> sameSerial = sameSerial(file);
        FlagFinder.Surroundings around = new FlagFinder.Surroundings(
                claim.entries(),
                earlier(file, sameSerial),
                otherRuns(file),
                data.labels(),
                data.dateCode(file.intake().unit().model()));
        ClaimFile flagged = file.flagged(FlagFinder.of(file, around));
        Optional<CoverageRules> rules = data.coverage(file.intake().received().toLocalDate());
        if (rules.isEmpty()) {
            return new Reviewed(flagged, Optional.empty(), claim.entries());
        }
        Circumstances circumstances = new Circumstances(flagged, earlierClaims(file, sameSerial), goodwillGiven(file));
        return new Reviewed(flagged, Optional.of(Coverage.assess(rules.get(), circumstances)), claim.entries());
    }

    private List<Entry> sameSerial(ClaimFile file) throws StoreException {
        UnitAsReceived unit = file.intake().unit();
        if (!unit.hasSerial()) {
            return List.of();
        }
        return store.search(Search.newest(MOST_OF_A_SERIAL).ofSerial(unit.serial())).stream()
                .filter(entry -> entry.finder().serial().filter(unit::isSerial).isPresent())
                .filter(entry ->
                        entry.finder().claim().filter(file.number()::equals).isEmpty())
                .filter(entry ->
                        entry.at().toInstant().isBefore(file.intake().received().toInstant()))
                .toList();
    }

    /** The newest first; of an intake that was corrected, what holds. */
    private static List<Earlier> earlier(ClaimFile file, List<Entry> sameSerial) {
        Map<String, Earlier> earlier = new LinkedHashMap<>();
        for (Entry entry : sameSerial) {
            String model = entry.finder().model().orElse("");
            if (entry.kind() == EntryKind.INTAKE
                    && ClaimEntries.isAct(entry)
                    && ClaimEntries.read(entry, Optional.empty()) instanceof Act.Received received) {
                String claim = entry.finder().claim().orElse(entry.id());
                earlier.putIfAbsent(
                        claim,
                        new Earlier(
                                claim,
                                model,
                                received.intake().received(),
                                Optional.of(received.intake().use())));
            } else if (entry.kind() == EntryKind.RUN && entry.finder().claim().isEmpty()) {
                earlier.putIfAbsent(entry.id(), new Earlier(entry.id(), model, entry.at(), Optional.empty()));
            }
        }
        return earlier.values().stream()
                .filter(each -> !each.what().equals(file.number()))
                .toList();
    }

    private List<Traced> otherRuns(ClaimFile file) throws StoreException {
        return store.search(Search.newest(MOST_RUNS).ofKind(EntryKind.RUN)).stream()
                .filter(RunEntry::is)
                .filter(entry ->
                        entry.finder().claim().filter(file.number()::equals).isEmpty())
                .filter(entry -> !entry.attachments().isEmpty())
                .map(entry -> new Traced(entry.id(), entry.attachments().get(0)))
                .toList();
    }

    private List<EarlierClaim> earlierClaims(ClaimFile file, List<Entry> sameSerial) throws StoreException {
        Set<String> numbers = new LinkedHashSet<>();
        sameSerial.forEach(entry -> entry.finder().claim().ifPresent(numbers::add));
        List<EarlierClaim> earlier = new ArrayList<>();
        for (String number : numbers) {
            Optional<ClaimFile> found = claims.find(number).map(ClaimShelf.Claim::file);
            found.filter(each -> each.whereabouts().to() == CustodyState.RETURNED)
                    .ifPresent(each -> earlier.add(
                            new EarlierClaim(number, each.intake().complaint().code(), day(each.whereabouts()))));
        }
        return earlier.stream()
                .filter(each -> !each.claim().equals(file.number()))
                .toList();
    }

    private static LocalDate day(CustodyMove move) {
        return move.at().toLocalDate();
    }

    private Amount goodwillGiven(ClaimFile file) throws StoreException {
        int year = file.intake().received().getYear();
        Search decided = new Search(
                Optional.of(EntryKind.DECISION),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(CoverageDecision.Outcome.GOODWILL.word()),
                Optional.of(LocalDate.of(year, 1, 1)),
                Optional.of(LocalDate.of(year, 12, 31)),
                Optional.empty(),
                MOST);
        Set<String> numbers = new LinkedHashSet<>();
        store.search(decided).forEach(entry -> entry.finder().claim().ifPresent(numbers::add));
        numbers.remove(file.number());
        long cents = 0;
        for (String number : numbers) {
            cents += claims.find(number)
                    .flatMap(claim -> claim.file().decision())
                    .filter(decision -> decision.outcome() == CoverageDecision.Outcome.GOODWILL)
                    .flatMap(CoverageDecision::amount)
                    .map(Amount::cents)
                    .orElse(0L);
        }
        return new Amount(cents);
    }
}
