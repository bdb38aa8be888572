package org.pumpwright.host.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;

/** Makes a claim's file of its entries. Confined to one thread. */
public final class ClaimFold {
    private final List<CustodyMove> moves = new ArrayList<>();
    private final List<Photo> photos = new ArrayList<>();
    private final Map<String, Observation> observations = new TreeMap<>();
    private final List<Waiver> waivers = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<CoverageDecision> decisions = new ArrayList<>();
    private final List<Correction> corrections = new ArrayList<>();
    private final Map<String, Act> acts = new TreeMap<>();
    private @Nullable ClaimIntake intake;
    private @Nullable Decontamination rinsed;

    private ClaimFold() {}

    /** Finds what is kept beside an entry. */
    @FunctionalInterface
    public interface Beside {
        /** The bytes with this digest; empty when they were left out. */
        Optional<byte[]> bytes(Digest digest);
    }

    /**
     * The claim's file, without flags; empty when no intake is among the entries.
     *
     * @param entries of one claim, in any order: acts at the desk and runs
     * @param beside where identity is kept
     * @throws IllegalArgumentException when an entry holds what is not known
     */
    public static Optional<ClaimFile> of(List<Entry> entries, Beside beside) {
        ClaimFold fold = new ClaimFold();
        entries.stream()
                .filter(ClaimEntries::isAct)
                .sorted(Comparator.comparingInt(ClaimEntries::place))
                .forEach(entry -> fold.add(entry, beside));
        List<ClaimRun> runs = entries.stream()
                .filter(RunEntry::is)
                .map(RunEntry::read)
                .sorted(Comparator.comparing((ClaimRun run) -> run.startedAt().toInstant())
                        .thenComparing(ClaimRun::run))
                .toList();
        return fold.file(runs);
    }

    private void add(Entry entry, Beside beside) {
        Optional<byte[]> identity = entry.attachments().isEmpty()
                ? Optional.empty()
                : beside.bytes(entry.attachments().get(0));
        Act act = ClaimEntries.read(entry, identity);
        entry.amends()
                .ifPresent(amends -> corrections.add(new Correction(
                        amends.id(),
                        entry.id(),
                        amends.reason(),
                        entry.at(),
                        Changes.between(acts.get(amends.id()), act))));
        entry.amends().map(amends -> amends.id()).ifPresent(observations::remove);
        acts.put(entry.id(), act);
        add(entry.id(), act);
    }

    private void add(String id, Act act) {
        if (act instanceof Act.Received received) {
            intake = received.intake();
        } else if (act instanceof Act.Moved moved) {
            moves.add(moved.move());
        } else if (act instanceof Act.Pictured pictured) {
            photos.add(pictured.photo());
        } else if (act instanceof Act.Observed observed) {
            observations.put(id, observed.observation());
        } else if (act instanceof Act.Rinsed done) {
            rinsed = new Decontamination(Optional.empty(), Optional.of(done.person()), done.rinses());
        } else if (act instanceof Act.Waived waived) {
            waivers.add(waived.waiver());
        } else if (act instanceof Act.Found found) {
            findings.add(found.finding());
        } else if (act instanceof Act.Decided decided) {
            decisions.add(decided.decision());
        }
    }

    private Optional<ClaimFile> file(List<ClaimRun> runs) {
        ClaimIntake known = intake;
        if (known == null) {
            return Optional.empty();
        }
        Decontamination done = rinsed;
        ClaimIntake now = done == null
                ? known
                : known.with(
                        new Decontamination(known.decontamination().declared(), done.confirmedBy(), done.rinses()));
        List<CustodyMove> path = new ArrayList<>(List.of(arrival(known)));
        path.addAll(moves);
        ClaimFile file = new ClaimFile(
                now,
                path,
                photos,
                List.copyOf(observations.values()),
                waivers,
                runs,
                findings,
                decisions,
                corrections,
                List.of(),
                List.of());
        return Optional.of(file.lacking(MissingItems.of(file)));
    }

    private static CustodyMove arrival(ClaimIntake intake) {
        String person = intake.takenBy().isEmpty() ? "not given" : intake.takenBy();
        return new CustodyMove(
                intake.received(),
                CustodyState.RECEIVED,
                person,
                "desk",
                intake.unit().tag(),
                Optional.empty());
    }
}
