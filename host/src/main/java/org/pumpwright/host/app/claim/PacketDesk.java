package org.pumpwright.host.app.claim;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.paper.PaperFile;
import org.pumpwright.host.app.paper.Papers;
import org.pumpwright.host.app.paper.Surroundings;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/**
 * Packs a claim up with its papers, or makes one of them alone to look at and to print; whoever asks for it, the same claim gives the same
 * bytes. Thread-safe.
 */
public final class PacketDesk {
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
    public PacketDesk(RecordBook book, RecordStore store, Path dataFolder, Path records) {
        this.book = book;
        this.store = store;
        this.dataFolder = dataFolder;
        this.records = records;
    }

    /** A paper that is made alone. */
    public enum Which {
        /** The desk's page: evidence, rules, finding and decision. */
        CLERK,
        /** What goes to the customer, made of the last run that says something. */
        CUSTOMER
    }

    /**
     * How it is to be packed.
     *
     * @param withCustomer whether the people are put in
     * @param language of the papers
     * @param paper their size
     */
    public record Wishes(boolean withCustomer, Language language, Sheet paper) {}

    /**
     * Packs a claim.
     *
     * @return what was packed
     * @throws OrderException when there is no such claim, it can't be written, or the file does not end in .zip
     */
    public ClaimReview.Reviewed pack(String number, Wishes wishes, Path zip)
            throws OrderException, DataFileException, RunRecordException, StoreException {
        if (!zip.toString().endsWith(".zip")) {
            throw new OrderException("%s: a packet ends in .zip".formatted(zip));
        }
        ClaimReview.Reviewed whole = reviewed(number);
        ClaimReview.Reviewed claim = wishes.withCustomer()
                ? whole
                : new ClaimReview.Reviewed(whole.file().withoutPeople(), whole.coverage(), whole.entries());
        PacketPapers papers = papers(claim, wishes);
        Map<String, byte[]> ofClaim = new TreeMap<>(papers.ofClaim(claim));
        ofClaim.put("claim.txt", PacketPapers.bytes(ClaimPage.of(claim, wishes.withCustomer())));
        new ClaimPacket(store, new PhotoFolder(records.resolve("photos")))
                .write(claim, ofClaim, papers.ofRuns(), wishes.withCustomer(), zip);
        return claim;
    }

    /**
     * Makes one paper alone.
     *
     * @param folder where it goes, made on first use
     * @return its file
     * @throws OrderException when there is no such paper of this claim yet, or it can't be written
     */
    public Path make(String number, Which which, Wishes wishes, Path folder)
            throws OrderException, DataFileException, RunRecordException, StoreException {
        ClaimReview.Reviewed claim = reviewed(number);
        PacketPapers papers = papers(claim, wishes);
        byte[] page = which == Which.CLERK
                ? papers.clerk(claim)
                : papers.customer()
                        .orElseThrow(() -> new OrderException(
                                "claim %s has no run yet that says something of the unit, so there is no customer's page."
                                        .formatted(number)));
        Path file = folder.resolve(number + (which == Which.CLERK ? "-clerk.pdf" : "-customer.pdf"));
        try {
            PaperFile.write(file, page);
        } catch (IOException e) {
            throw new OrderException("%s can't be written: %s. Free some space.".formatted(file, e.getMessage()));
        }
        return file;
    }

    private ClaimReview.Reviewed reviewed(String number)
            throws OrderException, DataFileException, RunRecordException, StoreException {
        return new ClaimReview(store, new ClaimData(dataFolder)).of(number);
    }

    private PacketPapers papers(ClaimReview.Reviewed claim, Wishes wishes)
            throws OrderException, RunRecordException, StoreException {
        Papers made = new Papers(
                new Surroundings(Optional.of(store), dataFolder, records),
                Texts.in(wishes.language()),
                UnitSystem.US,
                wishes.paper());
        return PacketPapers.of(book, claim, made, wishes.withCustomer());
    }
}
