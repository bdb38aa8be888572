package org.pumpwright.host.cli.claim;

import java.nio.file.Path;
import java.time.Clock;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.claim.ClaimData;
import org.pumpwright.host.app.claim.ClaimDesk;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.app.claim.ClaimShelf;
import org.pumpwright.host.app.claim.DecisionDesk;
import org.pumpwright.host.app.claim.PacketDesk;
import org.pumpwright.host.app.claim.PhotoDesk;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.cli.StoreOptions;
import org.pumpwright.host.cli.Workshop;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;

/** The desk as one command needs it: opened, and closed at its end. Confined to one thread. */
final class OpenDesk implements AutoCloseable {
    private final RecordBook book;
    private final RecordStore store;
    private final ClaimData data;
    private final Path dataFolder;
    private final Path records;
    private final Clock clock;

    private OpenDesk(RecordBook book, RecordStore store, Workshop workshop, Path records) {
        this.book = book;
        this.store = store;
        dataFolder = workshop.home().resolve("fixtures");
        data = new ClaimData(dataFolder);
        this.records = records;
        clock = workshop.clock();
    }

    static OpenDesk of(Workshop workshop, StoreOptions options) throws OrderException, StoreException {
        RecordBook book = options.book(workshop);
        try {
            // Runs that wait for the record belong to claims too.
            book.workOff(java.util.List.of());
            return new OpenDesk(book, book.store(book.choice().desk()), workshop, options.records(workshop));
        } catch (StoreException | RuntimeException e) {
            book.close();
            throw e;
        }
    }

    RecordBook book() {
        return book;
    }

    /** The shop's data files. */
    Path dataFolder() {
        return dataFolder;
    }

    /** The folder of records. */
    Path records() {
        return records;
    }

    RecordStore store() {
        return store;
    }

    Clock clock() {
        return clock;
    }

    ClaimData data() {
        return data;
    }

    ClaimShelf claims() {
        return new ClaimShelf(store);
    }

    ClaimDesk desk() {
        return new ClaimDesk(store, clock);
    }

    DecisionDesk decisions() {
        return new DecisionDesk(desk(), data);
    }

    PacketDesk packets() {
        return new PacketDesk(book, store, dataFolder, records);
    }

    PhotoFolder photoFolder() {
        return new PhotoFolder(records.resolve("photos"));
    }

    PhotoDesk photos() {
        return new PhotoDesk(desk(), photoFolder(), clock.getZone());
    }

    ClaimReview review() {
        return new ClaimReview(store, data);
    }

    @Override
    public void close() {
        book.close();
    }
}
