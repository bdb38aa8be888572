package org.pumpwright.host.run;

import java.time.Duration;
import java.util.Optional;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.StandSignal.Measured;

/** The one path to safe: asks the board again and again, and listens until it says that it is safe or cannot be heard. */
final class SafePath {
    private static final Duration WAIT = Duration.ofMillis(100);
    private static final int MOST_SIGNALS = 100;
    private static final int ASK_EVERY = 5;

    private SafePath() {}

    /** Takes the path; bounded in time, never throws. */
    static SafeState take(Stand stand) {
        try {
            for (int i = 0; i < MOST_SIGNALS; i++) {
                if (i % ASK_EVERY == 0) {
                    stand.makeSafe();
                }
                Optional<StandSignal> signal = stand.await(WAIT);
                if (signal.isPresent() && isSafe(signal.get())) {
                    return SafeState.CONFIRMED;
                }
            }
        } catch (StandException | RuntimeException e) {
            // Whoever took the path knows of the trouble already; here it only means that nobody confirmed.
            return SafeState.NOT_CONFIRMED;
        }
        return SafeState.NOT_CONFIRMED;
    }

    private static boolean isSafe(StandSignal signal) {
        return signal instanceof MadeSafe
                || (signal instanceof Measured measured && !measured.sample().armed());
    }
}
