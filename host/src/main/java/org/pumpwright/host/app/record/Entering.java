package org.pumpwright.host.app.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.Outbox;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.RunRecordFile;
import org.pumpwright.host.record.exchange.DraftText;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.StoreException;

/** One working-off of outboxes. Confined to one thread. */
final class Entering {

    private final RecordBook book;
    private final Map<String, RunRecord> fresh = new HashMap<>();
    private final List<String> entered = new ArrayList<>();
    private final List<String> troubles = new ArrayList<>();

    Entering(RecordBook book, List<RunRecord> fresh) {
        this.book = book;
        fresh.forEach(run -> this.fresh.put(run.id(), run));
    }

    List<String> entered() {
        return entered;
    }

    List<String> troubles() {
        return troubles;
    }

    /** Whether the store still answers. */
    boolean workOff(Path folder) {
        Outbox outbox = RecordFolder.outbox(folder);
        List<String> marks = outbox.waiting();
        // A stand before the runs that were made with it.
        List<String> notes = marks.stream().filter(Notes::isNote).toList();
        List<String> others = marks.stream().filter(mark -> !Notes.isNote(mark)).toList();
        return workOff(folder, outbox, notes) && workOff(folder, outbox, others);
    }

    private boolean workOff(Path folder, Outbox outbox, List<String> marks) {
        for (String mark : marks) {
            try {
                if (enter(folder, outbox, mark)) {
                    outbox.remove(mark);
                }
            } catch (StoreException e) {
                troubles.add(String.valueOf(e.getMessage()));
                if (e.reason() == StoreException.Reason.STORE_FAILED) {
                    return false;
                }
            } catch (RunRecordException e) {
                troubles.add(e.getMessage());
            } catch (IOException | IllegalArgumentException e) {
                troubles.add("%s: can't be put on record: %s."
                        .formatted(folder.resolve(Outbox.NAME).resolve(mark), e.getMessage()));
            }
        }
        return true;
    }

    /** Whether the mark has done its work. */
    private boolean enter(Path folder, Outbox outbox, String mark)
            throws StoreException, RunRecordException, IOException {
        if (Notes.isNote(mark)) {
            DraftText note = DraftText.read(outbox.text(mark));
            count(book.enter(note.chain(), note.draft()), note.draft().id());
            return true;
        }
        Optional<BucketMark> bucket = BucketMark.read(outbox.text(mark));
        if (bucket.isPresent()) {
            return enterBucket(bucket.get());
        }
        RunRecord run = fresh.get(mark);
        if (run == null) {
            Path file = RecordFolder.file(folder, mark);
            if (!Files.exists(file)) {
                // Nothing became of it, or the run is still under way.
                return !RecordFolder.isUnderWay(folder, mark);
            }
            run = RunRecordFile.read(file);
        }
        count(book.enter(run), Drafts.id(run));
        return true;
    }

    private boolean enterBucket(BucketMark mark) throws StoreException, RunRecordException {
        if (Files.exists(mark.file())) {
            Draft draft = Drafts.bucketTest(BucketRecordFile.read(mark.file()), mark.chain());
            count(book.enter(mark.chain(), draft), draft.id());
        }
        return true;
    }

    private void count(boolean isNew, String id) {
        if (isNew) {
            entered.add(id);
        }
    }
}
