package org.pumpwright.host.app.claim;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.paper.Papers;
import org.pumpwright.host.app.paper.Surroundings;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.text.Texts;

/** Makes single papers of a claim, to look at and to print; they are those of its packet. Thread-safe. */
public final class ClaimPaperDesk {
    private final RecordBook book;
    private final RecordStore store;
    private final Path dataFolder;
    private final Path records;

    /**
     * @param book what the shop has on record
     * @param store is only read
     * @param dataFolder the shop's data files
     * @param records where records and pictures are kept
     */
    public ClaimPaperDesk(RecordBook book, RecordStore store, Path dataFolder, Path records) {
        this.book = book;
        this.store = store;
        this.dataFolder = dataFolder;
        this.records = records;
    }

    /** Which paper. */
    public enum Which {
        /** The desk's page: evidence, rules, finding and decision. */
        CLERK,
        /** What goes to the customer, made of the last run that says something. */
        CUSTOMER
    }

    /**
     * Makes a paper.
     *
     * @param folder where it goes, made on first use
     * @return its file
     * @throws OrderException when there is no such paper of this claim yet, or it can't be written
     */
    public Path make(String number, Which which, PacketDesk.Wishes wishes, Path folder)
            throws OrderException, DataFileException, RunRecordException, StoreException {
        ClaimReview.Reviewed claim = new ClaimReview(store, new ClaimData(dataFolder)).of(number);
        Papers made = new Papers(
                new Surroundings(Optional.of(store), dataFolder, records),
                Texts.in(wishes.language()),
                UnitSystem.US,
                wishes.paper());
        PacketPapers papers = PacketPapers.of(book, claim, made, true);
        byte[] page = which == Which.CLERK
                ? papers.clerk(claim)
                : papers.customer()
                        .orElseThrow(() -> new OrderException(
                                "claim %s has no run yet that says something of the unit, so there is no customer's page."
                                        .formatted(number)));
        String name = which == Which.CLERK ? "clerk.pdf" : "customer.pdf";
        return written(folder, number + "-" + name, page);
    }

    private static Path written(Path folder, String name, byte[] page) throws OrderException {
        Path file = folder.resolve(name);
        try {
            Files.createDirectories(folder);
            return Files.write(file, page);
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s. Free some space.".formatted(file, e.getMessage()));
        }
    }
}
