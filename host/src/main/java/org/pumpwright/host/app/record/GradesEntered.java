package org.pumpwright.host.app.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Regrading;
import org.pumpwright.host.app.Regrading.Outcome;
import org.pumpwright.host.record.ledger.Draft;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Puts on record the runs that are judged again, some at a time: each time costs a wait for the disk. A run itself is not held
 * on to. Confined to the thread that has it done.
 */
public final class GradesEntered implements Regrading.Listener {
    private static final int AT_ONCE = 50;

    private final RecordBook book;
    private final Regrading.Listener next;
    private final List<Draft> drafts = new ArrayList<>();
    private final List<String> marks = new ArrayList<>();
    private final List<String> ids = new ArrayList<>();
    private Optional<String> trouble = Optional.empty();

    /**
     * Enters what is judged, and hands it on.
     *
     * @param next hears of it afterwards
     */
    public GradesEntered(RecordBook book, Regrading.Listener next) {
        this.book = book;
        this.next = next;
    }

    @Override
    public void begins(int files) {
        next.begins(files);
    }

    @Override
    public void done(Outcome outcome) {
        if (outcome instanceof Outcome.Judged judged && judged.kept().isPresent() && trouble.isEmpty()) {
            enter(judged);
        }
        next.done(outcome);
    }

    private void enter(Outcome.Judged judged) {
        try {
            drafts.add(book.again(judged.record()));
            marks.add(judged.record().id());
        } catch (StoreException | IllegalArgumentException e) {
            stop(e);
        }
        if (drafts.size() >= AT_ONCE) {
            enterAll();
        }
    }

    private void enterAll() {
        if (drafts.isEmpty() || trouble.isPresent()) {
            return;
        }
        try {
            ids.addAll(book.enter(book.choice().desk(), drafts));
            marks.forEach(RecordFolder.outbox(book.records())::remove);
        } catch (StoreException | IllegalArgumentException e) {
            stop(e);
        }
        drafts.clear();
        marks.clear();
    }

    /** A store that fails is not asked again; what was judged waits in its folder. */
    private void stop(Exception e) {
        trouble = Optional.of(String.valueOf(e.getMessage()));
    }

    /** What came of it, when the last one is done. */
    public RecordBook.Entered entered() {
        enterAll();
        return new RecordBook.Entered(ids, book.waiting(), trouble.stream().toList());
    }
}
