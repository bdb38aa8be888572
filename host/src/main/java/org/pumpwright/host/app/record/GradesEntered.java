package org.pumpwright.host.app.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.RecordFolder;
import org.pumpwright.host.app.Regrading;
import org.pumpwright.host.app.Regrading.Outcome;
import org.pumpwright.host.record.ledger.StoreException;

/**
 * Puts on record each run that is judged again as soon as it is kept, so that none is held on to. Confined to the thread that
 * has it done.
 */
public final class GradesEntered implements Regrading.Listener {
    private final RecordBook book;
    private final Regrading.Listener next;
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

    /** A store that fails is not asked again; what was judged waits in its folder. */
    private void enter(Outcome.Judged judged) {
        try {
            if (book.enter(judged.record())) {
                ids.add(Drafts.id(judged.record()));
            }
            RecordFolder.outbox(book.records()).remove(judged.record().id());
        } catch (StoreException | IllegalArgumentException e) {
            trouble = Optional.of(String.valueOf(e.getMessage()));
        }
    }

    /** What came of it. */
    public RecordBook.Entered entered() {
        return new RecordBook.Entered(ids, book.waiting(), trouble.stream().toList());
    }
}
