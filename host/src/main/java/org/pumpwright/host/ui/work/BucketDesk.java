package org.pumpwright.host.ui.work;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.app.bucket.BucketGuide;
import org.pumpwright.host.app.bucket.Sheet;
import org.pumpwright.host.app.bucket.ShopFile;
import org.pumpwright.host.app.record.RecordBook;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.RunRecordException;

/** Works a guided test out, keeps it and puts it on record. Thread-safe. */
public final class BucketDesk {
    private final Path shop;
    private final Path folder;
    private final RecordBook book;
    private final BucketCalibration calibration;

    /**
     * @param home folder of the program, with the shop's settings
     * @param records folder of records
     * @param book takes the tests
     */
    public BucketDesk(Path home, Path records, RecordBook book, Clock clock) {
        this.shop = home.resolve("fixtures/shop.yaml");
        this.folder = records.resolve("buckets");
        this.book = book;
        this.calibration = new BucketCalibration(folder, clock);
    }

    /**
     * A test that is kept.
     *
     * @param record what came of it
     * @param papers its files
     * @param entry its entry on record; empty while it waits to be put there
     * @param troubles why it is not on record yet; empty when it is
     */
    public record Kept(
            BucketRecord record, BucketCalibration.Kept papers, Optional<String> entry, List<String> troubles) {
        public Kept {
            troubles = List.copyOf(troubles);
        }
    }

    /** Where runs are written while they are made. */
    Path folder() {
        return folder;
    }

    Kept keep(BucketGuide.Done test, Sheet sheet, String stand, UnitSystem units)
            throws OrderException, DataFileException, RunRecordException {
        BucketCalibration.Wishes wishes = new BucketCalibration.Wishes(
                ShopFile.read(shop), Optional.empty(), Optional.empty(), Optional.empty(), test.simulated());
        BucketRecord record = calibration.work(sheet, wishes).record();
        List<String> troubles = new ArrayList<>();
        try {
            book.markBucketTest(record.id(), calibration.file(record), Optional.of(stand));
        } catch (IOException e) {
            troubles.add("%s can't be marked for the record: %s".formatted(calibration.file(record), e.getMessage()));
        }
        BucketCalibration.Kept papers = calibration.keep(record, units);
        RecordBook.Entered entered = book.workOff(List.of());
        troubles.addAll(entered.troubles());
        Optional<String> entry =
                entered.ids().stream().filter(id -> id.endsWith(record.id())).findFirst();
        return new Kept(record, papers, entry, troubles);
    }
}
