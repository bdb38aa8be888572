package org.pumpwright.host.app.claim;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;

/** The desk of a shop as a face needs it for long: the store is opened by the first who asks, and again after it failed. Thread-safe. */
public final class DeskOfShop {
    private final RecordBook book;
    private final ClaimData data;
    private final Path dataFolder;
    private final Path records;
    private final Clock clock;

    /**
     * @param book what the shop has on record
     * @param dataFolder the shop's data files
     * @param records where records and pictures are kept
     * @param clock the shop's time and zone
     */
    public DeskOfShop(RecordBook book, Path dataFolder, Path records, Clock clock) {
        this.book = book;
        this.data = new ClaimData(dataFolder);
        this.dataFolder = dataFolder;
        this.records = records;
        this.clock = clock;
    }

    /** The desk's data files. */
    public ClaimData data() {
        return data;
    }

    /** The shop's time and zone. */
    public Clock clock() {
        return clock;
    }

    /** Where the store is, for people. */
    public String store() {
        return book.choice().words();
    }

    /** Whether there is a store, or can be one that others have made. */
    public boolean mayHold() {
        return book.choice().mayHold();
    }

    /** Puts acts on record. */
    public ClaimDesk desk() throws StoreException {
        return new ClaimDesk(opened(), clock);
    }

    /** Lists claims. */
    public ClaimList list() throws StoreException {
        return new ClaimList(new ClaimShelf(opened()));
    }

    /** Finds claims. */
    public ClaimShelf claims() throws StoreException {
        return new ClaimShelf(opened());
    }

    /** Notes at claims what is done with their units at the bench. */
    public ArrivalDesk arrivals() throws StoreException {
        return new ArrivalDesk(desk(), claims());
    }

    /** Looks at one claim among everything else; runs that wait for the record come first, for they may be of this claim. */
    public ClaimReview review() throws StoreException {
        book.workOff(List.of());
        return new ClaimReview(opened(), data);
    }

    /** Signs findings and decisions. */
    public DecisionDesk decisions() throws StoreException {
        return new DecisionDesk(desk(), data);
    }

    /** Takes pictures. */
    public PhotoDesk photos() throws StoreException {
        return new PhotoDesk(desk(), photoFolder(), clock.getZone());
    }

    /** Where pictures are. */
    public PhotoFolder photoFolder() {
        return new PhotoFolder(records.resolve("photos"));
    }

    /** Packs claims up, and makes single papers of them. */
    public PacketDesk packets() throws StoreException {
        return new PacketDesk(book, opened(), dataFolder, records);
    }

    private RecordStore opened() throws StoreException {
        return book.store(book.choice().desk());
    }
}
