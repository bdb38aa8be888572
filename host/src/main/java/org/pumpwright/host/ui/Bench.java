package org.pumpwright.host.ui;

import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.input.KeyCombination;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.claim.DeskOfShop;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.ui.stand.StandScreen;
import org.pumpwright.host.ui.work.Background;
import org.pumpwright.host.ui.work.ClaimLookup;
import org.pumpwright.host.ui.work.DeskClaims;
import org.pumpwright.host.ui.work.DesktopOpener;
import org.pumpwright.host.ui.work.HistoryModel;
import org.pumpwright.host.ui.work.Opener;
import org.pumpwright.host.ui.work.RunLedger;
import org.pumpwright.host.ui.work.ScreenWatch;
import org.pumpwright.host.ui.work.StandCareModel;
import org.pumpwright.host.ui.work.StandWatchModel;
import org.pumpwright.host.ui.work.Trouble;

/** The window put together: the frame, what feeds it, and one line for each screen. JavaFX thread only. */
public final class Bench implements AutoCloseable {
    private final BenchWindow window;
    private final Background background;
    private final StandWatchModel watch;
    private final RunLedger ledger;
    private final Runnable afterFirstFrame = this::firstFrameIsThere;
    private @Nullable ScreenWatch screenWatch;

    /**
     * Puts it together; nothing is shown and no stand is reached yet.
     *
     * @param stand the stand it begins with
     */
    public Bench(BenchSettings settings, BenchServices services, StandDescription stand) {
        this(settings, services, stand, new DesktopOpener());
    }

    /** The same with another way to show papers. */
    Bench(BenchSettings settings, BenchServices services, StandDescription stand, Opener opener) {
        background = Background.threads(this::troubled);
        watch = new StandWatchModel(background, services.stands(), services.clock());
        watch.choose(stand, settings.port());
        Saying saying = new Saying(settings.language(), settings.units());
        window = new BenchWindow(saying, services.clock(), watch.ticks(), settings.keys());
        window.darkProperty().set(settings.dark());
        ledger = new RunLedger(background, services.recordFolder(), services.book());
        addScreens(services, opener);
    }

    private void addScreens(BenchServices services, Opener opener) {
        JobScreens job = JobScreens.of(
                window, background, watch, services, new JobScreens.Setting(claims(services), opener, JobScreens.PACE));
        HistoryModel history = DeskScreens.history(background, services, opener);
        job.addTo(window, Optional.of(history::open));
        StandCareModel care = new StandCareModel(
                background, watch, services.stands(), services.shelf(), window.stop(), services.clock());
        window.add(Moment.STAND, () -> new StandScreen(window, watch, care));
        DeskScreens.add(
                window,
                background,
                watch,
                services,
                opener,
                history,
                job.verdict().filedProperty());
    }

    private static ClaimLookup claims(BenchServices services) {
        return new DeskClaims(new DeskOfShop(
                services.book(), services.home().resolve("fixtures"), services.records(), services.clock()));
    }

    private void troubled(Trouble trouble) {
        window.trouble(trouble);
    }

    /** Its frame. */
    public BenchWindow window() {
        return window;
    }

    /** Shows it, and begins to watch the stand. */
    public void show(Stage stage, boolean kiosk) {
        stage.setTitle("Pumpwright");
        stage.setScene(window.scene());
        stage.setMinWidth(1280);
        stage.setMinHeight(720);
        if (kiosk) {
            // A display without a window manager knows no full screen: there the window is simply as large.
            Rectangle2D display = javafx.stage.Screen.getPrimary().getBounds();
            stage.setX(display.getMinX());
            stage.setY(display.getMinY());
            stage.setWidth(display.getWidth());
            stage.setHeight(display.getHeight());
            stage.setFullScreenExitHint("");
            stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
            stage.setFullScreen(true);
        }
        window.scene().addPostLayoutPulseListener(afterFirstFrame);
        stage.show();
        watch.start();
        ledger.catchUp(window.saying().unitsProperty().get());
        screenWatch = new ScreenWatch(watch::screenHeldUp);
    }

    private void firstFrameIsThere() {
        window.scene().removePostLayoutPulseListener(afterFirstFrame);
        Platform.runLater(this::buildTheRest);
    }

    private void buildTheRest() {
        if (window.buildOne()) {
            Platform.runLater(this::buildTheRest);
        }
    }

    @Override
    public void close() {
        if (screenWatch != null) {
            screenWatch.close();
        }
        watch.stop();
        background.close();
        ledger.close();
        window.close();
    }
}
