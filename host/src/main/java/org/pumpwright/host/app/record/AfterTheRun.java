package org.pumpwright.host.app.record;

import java.io.IOException;
import java.util.List;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.RunRecord;

/** Puts a run on record that was just kept in its folder, and the stand as it was then. Thread-safe. */
public final class AfterTheRun {
    private final RecordBook book;
    private final Shelf shelf;

    /** @param shelf has the files of the stands */
    public AfterTheRun(RecordBook book, Shelf shelf) {
        this.book = book;
        this.shelf = shelf;
    }

    /** Puts it on record with all that waits besides; what the store does not take goes on waiting, and the reason is told. */
    public RecordBook.Entered enter(RunRecord run) {
        try {
            String stand = run.stand().id();
            book.noteStand(shelf.stand(stand), shelf.standFile(stand), run.startedAt());
        } catch (IOException | OrderException | DataFileException e) {
            // The run itself is what matters; the stand is noted again at the next one.
            return book.workOff(List.of(run));
        }
        return book.workOff(List.of(run));
    }
}
