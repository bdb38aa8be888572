package org.pumpwright.host.ui.work;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.app.OrderException;
import org.pumpwright.host.app.Stands;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandDescription;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Measured;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Sample;

/** Listens to an opened stand and tells what it reads four times a second. Confined to one worker thread. */
final class StandWatch implements Background.Watch {
    private static final Duration WAIT = Duration.ofMillis(100);
    private static final long TURN_NANOS = 250_000_000;

    private final Stand stand;
    private final Hearer hearer;
    private @Nullable Sample before;

    /** Takes what was heard. Called on the worker thread. */
    interface Hearer {
        void heard(Channels channels, Sample before, Sample now);
    }

    private StandWatch(Stand stand, Hearer hearer) {
        this.stand = stand;
        this.hearer = hearer;
    }

    static StandWatch opened(Stands stands, StandDescription description, Stands.Reach reach, Hearer hearer)
            throws OrderException, StandException {
        Stand stand = stands.reach(description, reach, UnitKind.PUMP_12V).stand();
        try {
            stand.open();
            return new StandWatch(stand, hearer);
        } catch (StandException e) {
            stand.close();
            throw e;
        }
    }

    @Override
    public void once() throws StandException {
        Sample begin = before == null ? next() : before;
        Sample now = next();
        while (now.boardNanos() - begin.boardNanos() < TURN_NANOS) {
            now = next();
        }
        hearer.heard(stand.description().channels(), begin, now);
        before = now;
    }

    private Sample next() throws StandException {
        while (true) {
            Optional<StandSignal> signal = stand.await(WAIT);
            if (signal.isPresent() && signal.get() instanceof Measured measured) {
                return measured.sample();
            }
        }
    }

    @Override
    public void close() {
        stand.close();
    }
}
