package org.pumpwright.host.app.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.RecordNames;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.stand.StandDescription;

/**
 * What the shop has on record, opened when it is first needed. What is safe in a folder is put on record from there: a store
 * that fails costs nothing but a second try. Thread-safe.
 */
public final class RecordBook implements AutoCloseable {
    private static final int MOST_VISITS = 50;

    private final StoreChoice choice;
    private final List<Path> folders;
    private final Map<String, RecordStore> open = new HashMap<>();
    private @Nullable RecordStore reading;

    /**
     * A book that is still closed.
     *
     * @param records folder in which runs are safe before they are on record
     * @param spare the folder where they are when that did not take them
     */
    public RecordBook(StoreChoice choice, Path records, Path spare) {
        this.choice = choice;
        folders = List.of(records, spare);
    }

    /** Which store it is. */
    public StoreChoice choice() {
        return choice;
    }

    /**
     * The store, for entries of a chain.
     *
     * @throws StoreException when it can't be opened
     */
    public synchronized RecordStore store(String chain) throws StoreException {
        RecordStore there = open.get(chain);
        if (there != null) {
            return there;
        }
        RecordStore opened = choice.open(chain);
        open.put(chain, opened);
        return opened;
    }

    /**
     * The store, to look things up only.
     *
     * @throws StoreException when it can't be opened, or there is none yet
     */
    public synchronized RecordStore reading() throws StoreException {
        RecordStore there = reading;
        if (there == null) {
            there = open.isEmpty()
                    ? choice.openToRead()
                    : open.values().iterator().next();
            reading = there;
        }
        return there;
    }

    /**
     * What came of putting things on record.
     *
     * @param ids of the new entries
     * @param waiting how many things are safe and not on record yet
     * @param troubles why, and what to do
     */
    public record Entered(List<String> ids, int waiting, List<String> troubles) {
        public Entered {
            ids = List.copyOf(ids);
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * Puts on record what waits for it, the oldest first. A store that fails ends it; something that can't be read is told and
     * stops nothing else.
     *
     * @param fresh runs that are at hand and so need not be read again; each is kept in a folder too
     */
    public Entered workOff(List<RunRecord> fresh) {
        Entering entering = new Entering(this, fresh);
        for (Path folder : folders) {
            if (!entering.workOff(folder)) {
                break;
            }
        }
        return new Entered(entering.entered(), waiting(), entering.troubles());
    }

    /** How many things wait to be put on record. */
    public int waiting() {
        return folders.stream()
                .mapToInt(folder -> RecordFolder.outbox(folder).waiting().size())
                .sum();
    }

    /**
     * Puts something on record unless it is there already.
     *
     * @return whether it is new
     * @throws StoreException when it is not on record, or something else is under its id
     */
    boolean enter(String chain, Draft draft) throws StoreException {
        RecordStore store = store(chain);
        Optional<Entry> there = store.find(draft.id());
        if (there.isEmpty()) {
            try {
                store.append(draft);
                return true;
            } catch (StoreException e) {
                // Another program may have put the same thing on record in the same moment.
                there = e.reason() == StoreException.Reason.ID_TAKEN ? store.find(draft.id()) : Optional.empty();
                if (there.isEmpty()) {
                    throw e;
                }
            }
        }
        if (!there.get().content().equals(draft.content())) {
            throw new StoreException(
                    StoreException.Reason.ID_TAKEN,
                    "something else is on record as %s; nothing was changed. Compare the two: pumpwright record show %s."
                            .formatted(draft.id(), draft.id()));
        }
        return false;
    }

    /**
     * Puts several things on record in one go.
     *
     * @return ids of those that were not there already
     * @throws StoreException as for one
     */
    List<String> enter(String chain, List<Draft> drafts) throws StoreException {
        try {
            return store(chain).append(drafts).stream().map(Entry::id).toList();
        } catch (StoreException e) {
            if (e.reason() != StoreException.Reason.ID_TAKEN) {
                throw e;
            }
        }
        List<String> fresh = new ArrayList<>();
        for (Draft draft : drafts) {
            if (enter(chain, draft)) {
                fresh.add(draft.id());
            }
        }
        return fresh;
    }

    /** What a run that was judged again is on record as. */
    Draft again(RunRecord run) throws StoreException {
        return Drafts.run(run, customer(store(choice.desk()), run.intake().claim()));
    }

    /**
     * Puts a run on record unless it is there already: on its stand's chain, or the desk's when it was judged again.
     *
     * @return whether it is new
     */
    boolean enter(RunRecord run) throws StoreException {
        String chain =
                run.regradedFrom().isPresent() ? choice.desk() : run.stand().id();
        Optional<String> customer = customer(store(chain), run.intake().claim());
        return enter(chain, Drafts.run(run, customer));
    }

    /**
     * Puts something on record that was made long ago, on the desk's chain: whoever enters it late answers for it.
     *
     * @return whether it is new
     */
    boolean enterLate(Draft draft) throws StoreException {
        return enter(choice.desk(), draft);
    }

    /** Whose unit a claim is about; empty when nobody has noted it. */
    Optional<String> customerOf(Optional<String> claim) throws StoreException {
        return claim.isEmpty() ? Optional.empty() : customer(store(choice.desk()), claim);
    }

    /** The folder in which runs are safe. */
    public Path records() {
        return folders.get(0);
    }

    /** Whose unit a claim is about; empty when nobody has noted it. */
    Optional<String> customer(RecordStore store, Optional<String> claim) throws StoreException {
        if (claim.isEmpty()) {
            return Optional.empty();
        }
        // What corrects an intake is younger.
        Optional<String> customer = Optional.empty();
        for (Entry entry : store.ofClaim(claim.get())) {
            if (entry.kind() == EntryKind.INTAKE) {
                customer = entry.finder().customer();
            }
        }
        return customer;
    }

    /**
     * What is on record of a unit from before, the newest first: intakes, runs, bucket tests. Nothing for a unit without a
     * serial number.
     *
     * @param claim for which it is here now, whose intake is no earlier visit
     * @throws StoreException when it can't be looked up
     */
    public List<Entry> visits(String serial, Optional<String> claim) throws StoreException {
        if (!RecordNames.isSerial(serial) || !choice.mayHold()) {
            return List.of();
        }
        List<Entry> visits = new ArrayList<>();
        for (Entry entry : reading().search(Search.newest(MOST_VISITS).ofSerial(serial.strip()))) {
            boolean now = claim.isPresent() && entry.finder().claim().equals(claim);
            boolean visit = entry.kind() == EntryKind.RUN
                    || entry.kind() == EntryKind.BUCKET_TEST
                    || (entry.kind() == EntryKind.INTAKE && !now);
            if (visit
                    && entry.finder().serial().map(known -> same(known, serial)).orElse(false)) {
                visits.add(entry);
            }
        }
        return visits;
    }

    private static boolean same(String one, String other) {
        return one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
    }

    /**
     * Notes a stand as its file describes it now, to be put on record before the runs it made. One that is on record already
     * costs one look-up.
     *
     * @throws IOException when the file can't be read or the note not be kept
     */
    public void noteStand(StandDescription stand, Path file, OffsetDateTime at) throws IOException {
        Draft draft = Drafts.stand(stand, at, Files.readAllBytes(file));
        Notes.put(folders, "stand-" + stand.id(), stand.id(), draft);
    }

    /**
     * Notes a healthy curve that was made or approved.
     *
     * @param what {@code built} or {@code approved}
     * @throws IOException when the file can't be read or the note not be kept
     */
    public void noteCurve(HealthyCurve curve, String what, Path file, OffsetDateTime at) throws IOException {
        Draft draft = Drafts.curve(curve, what, at, Files.readAllBytes(file));
        Notes.put(folders, "curve-%s-%s".formatted(curve.id(), what), choice.desk(), draft);
    }

    /**
     * Marks a bucket test that is about to be kept in a file.
     *
     * @param stand the stand it was made on; empty for one from a sheet
     * @throws IOException when the mark can't be kept
     */
    public void markBucketTest(String id, Path file, Optional<String> stand) throws IOException {
        RecordFolder.outbox(folders.get(0)).put(id, new BucketMark(stand.orElse(choice.desk()), file).text());
    }

    @Override
    public synchronized void close() {
        if (reading != null && !open.containsValue(reading)) {
            reading.close();
        }
        open.values().forEach(RecordStore::close);
        open.clear();
        reading = null;
    }
}
