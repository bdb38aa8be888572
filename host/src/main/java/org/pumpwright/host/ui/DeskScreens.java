package org.pumpwright.host.ui;

import java.nio.file.Path;
import org.pumpwright.host.app.bucket.BucketGuide;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.app.record.RunPages;
import org.pumpwright.host.report.pdf.Sheet;
import org.pumpwright.host.ui.bucket.BucketScreen;
import org.pumpwright.host.ui.claim.ClaimScreen;
import org.pumpwright.host.ui.history.HistoryScreen;
import org.pumpwright.host.ui.work.Background;
import org.pumpwright.host.ui.work.BucketDesk;
import org.pumpwright.host.ui.work.BucketModel;
import org.pumpwright.host.ui.work.ClaimModel;
import org.pumpwright.host.ui.work.DesktopOpener;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.Opener;
import org.pumpwright.host.ui.work.StandWatchModel;

/** Puts the screens of the desk together: bucket test, history, claims. JavaFX thread only. */
final class DeskScreens {
    private static final double REAL_TIME = 1;

    private DeskScreens() {}

    static void add(BenchWindow window, Background background, StandWatchModel watch, BenchServices services) {
        Opener opener = new DesktopOpener();
        Path data = services.home().resolve("fixtures");
        Path papers = services.records().resolve("papers");
        BucketModel bucket = new BucketModel(
                background,
                watch,
                new BucketGuide(services.shelf(), services.stands(), services.clock()).byHand(REAL_TIME),
                new BucketDesk(services.home(), services.records(), services.book(), services.clock()),
                data.resolve("buckets"),
                window.stop(),
                opener);
        HistoryModel history = new HistoryModel(
                background,
                services.book(),
                services.shelf(),
                new RunPages(papers, Sheet.LETTER),
                opener,
                services.clock());
        DeskOfShop desk = new DeskOfShop(services.book(), data, services.records(), services.clock());
        ClaimModel claims = new ClaimModel(background, desk, papers, opener);
        window.add(new BucketScreen(window, bucket, window.darkProperty()));
        window.add(new HistoryScreen(window, history, window.darkProperty()));
        window.add(new ClaimScreen(window, claims, history::open));
    }
}
