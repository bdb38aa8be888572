package org.pumpwright.host.app.claim;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.claim.RunEntry;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.RunContent;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.text.Language;

/** Packs a claim up with its papers; whoever asks for it, the same claim gives the same bytes. Thread-safe. */
public final class PacketDesk {
    private final RecordStore store;
    private final PhotoFolder photos;
    private final ClaimData data;

    /**
     * @param store is only read
     * @param photos where pictures are kept
     * @param data the desk's data files
     */
    public PacketDesk(RecordStore store, PhotoFolder photos, ClaimData data) {
        this.store = store;
        this.photos = photos;
        this.data = data;
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
            throws OrderException, DataFileException, StoreException {
        if (!zip.toString().endsWith(".zip")) {
            throw new OrderException("%s: a packet ends in .zip".formatted(zip));
        }
        ClaimReview.Reviewed whole = new ClaimReview(store, data).of(number);
        ClaimReview.Reviewed claim = wishes.withCustomer()
                ? whole
                : new ClaimReview.Reviewed(whole.file().withoutPeople(), whole.coverage(), whole.entries());
        PacketPapers papers = new PacketPapers(wishes.language(), wishes.paper());
        Map<String, byte[]> ofClaim = new TreeMap<>(papers.ofClaim(claim, lastRun(claim), photos));
        ofClaim.put("claim.txt", ClaimPage.of(claim, wishes.withCustomer()).getBytes(StandardCharsets.UTF_8));
        new ClaimPacket(store, photos).write(claim, ofClaim, papers.ofRuns(), wishes.withCustomer(), zip);
        return claim;
    }

    private Optional<RunRecord> lastRun(ClaimReview.Reviewed claim) throws StoreException {
        for (int i = claim.entries().size() - 1; i >= 0; i--) {
            Entry entry = claim.entries().get(i);
            if (RunEntry.is(entry) && !entry.attachments().isEmpty()) {
                return store.attachment(entry.attachments().get(0)).map(blob -> RunContent.read(entry.content(), blob));
            }
        }
        return Optional.empty();
    }
}
