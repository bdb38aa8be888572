package org.pumpwright.host.ui;

import java.nio.file.Path;
import java.util.List;
import javafx.beans.value.ObservableValue;
import org.pumpwright.host.app.bucket.BucketGuide;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.stand.serial.SerialPorts;
import org.pumpwright.host.ui.bucket.BucketScreen;
import org.pumpwright.host.ui.claim.ClaimScreen;
import org.pumpwright.host.ui.history.HistoryScreen;
import org.pumpwright.host.ui.work.Background;
import org.pumpwright.host.ui.work.BucketDesk;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.BucketPaperDesk;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.Mark;
import org.pumpwright.host.ui.work.Opener;
import org.pumpwright.host.ui.work.Row;
import org.pumpwright.host.ui.work.ScaleModel;
import org.pumpwright.host.ui.work.StandWatchModel;

/** Puts the screens of the desk together: bucket test, history, claims. JavaFX thread only. */
final class DeskScreens {
    private static final double REAL_TIME = 1;

    private DeskScreens() {}

    /** What is on record; the verdict leads there too. */
    static HistoryModel history(Background background, BenchServices services, Opener opener) {
        return new HistoryModel(
                background, services.book(), services.shelf(), papers(services), opener, services.clock());
    }

    private static PaperDesk papers(BenchServices services) {
        return new PaperDesk(services.book(), services.home().resolve("fixtures"), services.records());
    }

    static void add(
            BenchWindow window,
            Background background,
            StandWatchModel watch,
            BenchServices services,
            Opener opener,
            HistoryModel history,
            ObservableValue<Row> filed) {
        Path data = services.home().resolve("fixtures");
        Path papers = services.records().resolve("papers");
        BucketModel bucket = new BucketModel(
                background,
                watch,
                new BucketGuide(services.shelf(), services.stands(), services.clock()).byHand(REAL_TIME),
                new BucketDesk(services.home(), services.records(), services.book(), services.clock()),
                data.resolve("buckets"),
                new ScaleModel(background, data.resolve("buckets"), SerialPorts::open, DeskScreens::ports),
                window.stop());
        // Who looks at once after a run sees it come in.
        filed.addListener((observed, old, now) -> {
            if (now.mark() == Mark.GOOD && window.current() == Moment.HISTORY) {
                history.search().search();
            }
        });
        DeskOfShop desk = new DeskOfShop(services.book(), data, services.records(), services.clock());
        ClaimModel claims = new ClaimModel(background, desk, papers, opener);
        window.add(
                Moment.BUCKET,
                () -> new BucketScreen(
                        window,
                        bucket,
                        new BucketPaperDesk(background, papers(services), opener),
                        window.darkProperty()));
        window.add(Moment.HISTORY, () -> new HistoryScreen(window, history, window.darkProperty()));
        window.add(Moment.CLAIM, () -> new ClaimScreen(window, claims, history::open));
    }

    private static List<String> ports() {
        return SerialPorts.listed().stream().map(SerialPorts.Listed::path).toList();
    }
}
