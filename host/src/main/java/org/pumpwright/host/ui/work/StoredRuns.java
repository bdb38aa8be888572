package org.pumpwright.host.ui.work;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.record.LookingUp;
import org.pumpwright.host.app.record.OnRecord;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.retest.Retest;
import org.pumpwright.host.report.retest.RunSpread;

/** Reads runs and bucket tests to look at them, and holds two runs of one unit against each other. Thread-safe. */
final class StoredRuns {
    private static final int MOST_OTHERS = 50;

    private final RecordBook book;
    private final LookingUp looking;
    private final Shelf shelf;

    /** @param shelf has the healthy curves */
    StoredRuns(RecordBook book, Shelf shelf) {
        this.book = book;
        this.looking = new LookingUp(book);
        this.shelf = shelf;
    }

    /** Name of the store, for people. */
    String store() {
        return book.choice().words();
    }

    /**
     * What is on record under this id. One that was changed after it was signed is shown too, and says so.
     *
     * @throws RunRecordException when what is kept beside a bucket test can't be read
     */
    StoredRun read(String id) throws OrderException, StoreException, RunRecordException {
        OnRecord whole = OnRecord.of(book, id);
        Entry entry = whole.entry();
        Optional<byte[]> beside = whole.attachments().stream().findFirst().flatMap(first -> first);
        Optional<RunRecord> run = Optional.empty();
        Optional<BucketRecord> test = Optional.empty();
        if (entry.kind() == EntryKind.BUCKET_TEST && beside.isPresent()) {
            test = Optional.of(BucketRecordFile.read(book.records().resolve("bucket.json"), beside.get()));
        } else if (entry.kind() == EntryKind.RUN || entry.kind() == EntryKind.GRADE) {
            run = beside.map(samples -> RunContent.read(entry.content(), samples));
        }
        return new StoredRun(entry, run, test, whole.seal(), looking.sameUnit(entry, MOST_OTHERS));
    }

    /**
     * Two runs of one unit.
     *
     * @param earlier the one before
     * @param later the one after
     * @param changes what moved between them
     */
    record Both(StoredRun earlier, StoredRun later, List<Row> changes) {}

    /**
     * Holds a run against another one.
     *
     * @throws IllegalArgumentException when they are not of one unit
     */
    Both compared(StoredRun one, String other)
            throws OrderException, DataFileException, StoreException, RunRecordException {
        StoredRun second = read(other);
        RunRecord run = one.run().orElseThrow(() -> gone(one));
        Retest retest = Retest.of(run, second.run().orElseThrow(() -> gone(second)));
        RunSpread spread = retest.sameCurve() ? spreadOf(retest.after()) : RunSpread.NOT_KNOWN;
        List<Row> changes = HistoryRows.changes(retest, spread);
        boolean inOrder = retest.before().id().equals(run.id());
        return new Both(inOrder ? one : second, inOrder ? second : one, changes);
    }

    private static OrderException gone(StoredRun run) {
        return new OrderException(
                "the samples of %s are not on record".formatted(run.entry().id()));
    }

    private RunSpread spreadOf(RunRecord run) throws OrderException, DataFileException {
        String label = run.curve().map(RunRecord.CurveUsed::label).orElse("");
        return shelf.curves().stream()
                .filter(curve -> curve.label().equals(label))
                .findFirst()
                .map(RunSpread::of)
                .orElse(RunSpread.NOT_KNOWN);
    }
}
