package org.pumpwright.host.app.paper;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Shelf;
import org.pumpwright.host.app.bucket.ShopFile;
import org.pumpwright.host.app.claim.ClaimData;
import org.pumpwright.host.app.claim.ClaimReview;
import org.pumpwright.host.app.claim.ClaimShelf;
import org.pumpwright.host.claim.ClaimFile;
import org.pumpwright.host.claim.Photo;
import org.pumpwright.host.claim.photo.PhotoFolder;
import org.pumpwright.host.claim.photo.Thumbnail;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecordFile;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.record.RunRecordException;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;
import org.pumpwright.host.record.ledger.EntryKind;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.Search;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.report.retest.RunSpread;
import org.pumpwright.host.report.sheet.Picture;

/**
 * What papers say beside the run: the shop, the claim, its photos, a bucket test of the unit, how far runs differ by chance. What
 * isn't there is left out, and the page names it. Thread-safe.
 */
public final class Surroundings {
    private static final int MOST_TESTS = 50;

    private final Optional<RecordStore> store;
    private final Path data;
    private final PhotoFolder photos;

    /**
     * @param store is only read; empty where there is none
     * @param data the shop's data files
     * @param records the folder of records, in which photos are
     */
    public Surroundings(Optional<RecordStore> store, Path data, Path records) {
        this.store = store;
        this.data = data;
        this.photos = new PhotoFolder(records.resolve("photos"));
    }

    /** Name of the shop; empty where it has no file. */
    Optional<String> shop() {
        try {
            return Optional.of(ShopFile.read(data.resolve("shop.yaml")).shop().name());
        } catch (DataFileException e) {
            return Optional.empty();
        }
    }

    /** The claim that a run was made for; empty without one, or when none is on record. */
    Optional<ClaimFile> claim(RunRecord run) throws StoreException {
        return store.isEmpty() || run.intake().claim().isEmpty()
                ? Optional.empty()
                : new ClaimShelf(store.get()).find(run.intake().claim().get()).map(ClaimShelf.Claim::file);
    }

    /**
     * A claim with all that is known of it.
     *
     * @throws OrderException when it is not on record
     */
    ClaimReview.Reviewed review(String claim) throws OrderException, DataFileException, StoreException {
        if (store.isEmpty()) {
            throw new OrderException("claim %s is not on record here".formatted(claim));
        }
        return new ClaimReview(store.get(), new ClaimData(data)).of(claim);
    }

    /** Small versions of a claim's photos. */
    Map<Digest, Picture> thumbnails(ClaimFile file) throws OrderException {
        Map<Digest, Picture> small = new HashMap<>();
        for (Photo photo : file.photos()) {
            try {
                small.put(
                        photo.sha256(),
                        Picture.of(
                                Thumbnail.png(photos.read(photo)), photo.shows().word()));
            } catch (IOException e) {
                throw new OrderException(String.valueOf(e.getMessage()));
            }
        }
        return small;
    }

    /** The newest bucket test of this very unit. */
    Optional<BucketRecord> calibration(RunRecord run) throws StoreException, RunRecordException {
        String serial = run.subject().serial().strip();
        if (store.isEmpty() || serial.isEmpty() || serial.equals("not given") || serial.equals("no plate")) {
            return Optional.empty();
        }
        List<Entry> tests =
                store.get().search(Search.newest(MOST_TESTS).ofSerial(serial).ofKind(EntryKind.BUCKET_TEST));
        for (Entry test : tests) {
            boolean same =
                    test.finder().serial().filter(serial::equalsIgnoreCase).isPresent();
            if (same && test.amends().isEmpty() && !test.attachments().isEmpty()) {
                Optional<byte[]> file =
                        store.get().attachment(test.attachments().get(0));
                if (file.isPresent()) {
                    return Optional.of(BucketRecordFile.read(Path.of("bucket.json"), file.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** How far two runs of one unit differ by chance, as the curve on the shelf knows that both were held against. */
    RunSpread spread(RunRecord one, RunRecord other) throws OrderException, DataFileException {
        Optional<String> label = one.curve().map(RunRecord.CurveUsed::label);
        if (label.isEmpty() || !label.equals(other.curve().map(RunRecord.CurveUsed::label))) {
            return RunSpread.NOT_KNOWN;
        }
        for (HealthyCurve curve : new Shelf(data).curves()) {
            if (curve.label().equals(label.get())) {
                return RunSpread.of(curve);
            }
        }
        return RunSpread.NOT_KNOWN;
    }
}
