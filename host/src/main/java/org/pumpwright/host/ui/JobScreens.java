package org.pumpwright.host.ui;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.beans.value.ObservableBooleanValue;
import org.pumpwright.host.app.Acceptance;
import org.pumpwright.host.app.paper.PaperDesk;
import org.pumpwright.host.app.record.AfterTheRun;
import org.pumpwright.host.app.record.RecentTechnicians;
import org.pumpwright.host.ui.practice.PracticeScreen;
import org.pumpwright.host.ui.ready.ReadyScreen;
import org.pumpwright.host.ui.receive.ReceiveScreen;
import org.pumpwright.host.ui.run.RunScreen;
import org.pumpwright.host.ui.verdict.VerdictScreen;
import org.pumpwright.host.ui.work.Background;
import org.pumpwright.host.ui.work.ClaimLookup;
import org.pumpwright.host.ui.work.Opener;
import org.pumpwright.host.ui.work.PracticeModel;
import org.pumpwright.host.ui.work.ReadyModel;
import org.pumpwright.host.ui.work.ReceiveModel;
import org.pumpwright.host.ui.work.RunModel;
import org.pumpwright.host.ui.work.StandWatchModel;
import org.pumpwright.host.ui.work.Technicians;
import org.pumpwright.host.ui.work.VerdictModel;
import org.pumpwright.host.ui.work.WorkInHand;

/**
 * The screens of one job, from a unit that comes in to the verdict, and of practice, with what they share. JavaFX thread only.
 *
 * @param work the unit in hand
 * @param receive a unit comes in
 * @param ready it is put on the stand
 * @param run it is run
 * @param verdict what came of it
 * @param practice simulated units to learn on
 */
record JobScreens(
        WorkInHand work,
        ReceiveModel receive,
        ReadyModel ready,
        RunModel run,
        VerdictModel verdict,
        PracticeModel practice) {
    /** Virtual seconds in a second at a simulated stand: nobody learns more by waiting. */
    static final OptionalDouble PACE = OptionalDouble.of(3);

    /**
     * What the screens need besides the services.
     *
     * @param claims the claims desk
     * @param opener shows papers
     * @param pace of simulated stands; empty for as fast as it goes
     */
    record Setting(ClaimLookup claims, Opener opener, OptionalDouble pace) {}

    /** The models on this window, this background, and this stand. */
    static JobScreens of(
            BenchWindow window, Background background, StandWatchModel watch, BenchServices services, Setting setting) {
        WorkInHand work = new WorkInHand();
        Acceptance acceptance =
                new Acceptance(services.shelf(), services.stands(), services.recordFolder(), services.clock());
        return new JobScreens(
                work,
                new ReceiveModel(
                        background,
                        services.shelf(),
                        setting.claims(),
                        () -> new RecentTechnicians(services.book()).names(Technicians.MOST),
                        work),
                new ReadyModel(watch, services.stands(), window.stop(), services.clock(), work),
                new RunModel(background, watch, acceptance, window.stop(), work, setting.pace()),
                new VerdictModel(
                        background,
                        services.shelf(),
                        work,
                        new AfterTheRun(services.book(), services.shelf()),
                        new PaperDesk(services.book(), services.home().resolve("fixtures"), services.records()),
                        setting.opener()),
                new PracticeModel(background, services.shelf(), work, services.clock()));
    }

    /**
     * Adds the screens to the window; the one of receiving comes first.
     *
     * @param history looks at a run on record; empty where there is no screen of earlier runs
     */
    void addTo(BenchWindow window, Optional<Consumer<String>> history) {
        ObservableBooleanValue dark = window.darkProperty();
        window.add(Moment.RECEIVE, () -> new ReceiveScreen(window, receive));
        window.add(Moment.READY, () -> new ReadyScreen(window, ready, run, work));
        window.add(Moment.RUN, () -> new RunScreen(window, run, work, dark));
        window.add(Moment.VERDICT, () -> new VerdictScreen(window, verdict, history));
        window.add(Moment.PRACTICE, () -> new PracticeScreen(window, practice, run, dark));
    }
}
