package org.pumpwright.host.ui.work;

import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.pumpwright.host.app.RunWatcher;
import org.pumpwright.host.curve.HealthyCurve;
import org.pumpwright.host.grade.StandExpectations;
import org.pumpwright.host.plan.Plan;
import org.pumpwright.host.run.RunEvent;

/**
 * Brings what a run tells from its thread to the screen's. However fast it tells, at most one errand to the screen is waiting, and the run
 * never waits for the screen; only when it is over and somebody stopped it does it wait a while to be told why. Thread-safe.
 */
final class RunFeed implements RunWatcher {
    private static final int MOST_SECONDS_FOR_WHY = 90;

    private final Background background;
    private final Taker taker;
    private final ConcurrentLinkedQueue<Runnable> told = new ConcurrentLinkedQueue<>();
    private final AtomicBoolean underWay = new AtomicBoolean();
    private final LinkedBlockingQueue<Optional<String>> why = new LinkedBlockingQueue<>();

    /** Takes it, on the JavaFX thread. */
    interface Taker {
        void begins(Plan plan, Optional<HealthyCurve> curve);

        void heard(RunEvent event);

        /** Somebody is to say why the run was stopped. */
        void asksWhy();

        /** All that waited was taken: now it is to be shown. */
        void show();
    }

    /** Feeds this taker. */
    RunFeed(Background background, Taker taker) {
        this.background = background;
        this.taker = taker;
    }

    @Override
    public void begins(Plan plan, Optional<HealthyCurve> curve, StandExpectations stand) {
        bring(() -> taker.begins(plan, curve));
    }

    @Override
    public void heard(RunEvent event) {
        bring(() -> taker.heard(event));
    }

    @Override
    public Optional<String> whyStopped() {
        bring(taker::asksWhy);
        try {
            return Optional.ofNullable(why.poll(MOST_SECONDS_FOR_WHY, TimeUnit.SECONDS))
                    .flatMap(said -> said);
        } catch (InterruptedException e) {
            // The window is being closed: the run is kept as it is, and whoever interrupted still has to be heard.
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    /** Why it was stopped; empty when nobody wants to say. */
    void said(Optional<String> words) {
        why.add(words);
    }

    private void bring(Runnable errand) {
        told.add(errand);
        if (underWay.compareAndSet(false, true)) {
            background.onScreen(this::drain);
        }
    }

    private void drain() {
        // Cleared first: what is added from here on sends for the screen again.
        underWay.set(false);
        for (Runnable errand = told.poll(); errand != null; errand = told.poll()) {
            errand.run();
        }
        taker.show();
    }
}
