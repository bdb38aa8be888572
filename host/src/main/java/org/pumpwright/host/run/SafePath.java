package org.pumpwright.host.run;

import java.time.Duration;
import java.util.Optional;
import org.pumpwright.host.stand.Stand;
import org.pumpwright.host.stand.StandException;
import org.pumpwright.host.stand.StandSignal;
import org.pumpwright.host.stand.StandSignal.Cause;
import org.pumpwright.host.stand.StandSignal.MadeSafe;
import org.pumpwright.host.stand.StandSignal.Measured;

/**
 * The one path to safe: asks the board again and again, and listens until it says that it is safe or cannot be heard. Then it
 * listens a moment longer, because a board that finds its contactor stuck says so only after it has let it go.
 */
final class SafePath {
    private static final Duration WAIT = Duration.ofMillis(100);
    private static final int MOST_SIGNALS = 100;
    private static final int ASK_EVERY = 5;

    /** The board proves within 200 ms that the contactor has opened. */
    private static final long PROOF_NANOS = 250_000_000L;

    private SafePath() {}

    /** Takes the path; bounded in time, never throws. */
    static SafeState take(Stand stand) {
        SafeState known = SafeState.NOT_CONFIRMED;
        long safeSinceNanos = 0;
        try {
            for (int i = 0; i < MOST_SIGNALS; i++) {
                if (i % ASK_EVERY == 0 && known == SafeState.NOT_CONFIRMED) {
                    stand.makeSafe();
                }
                Optional<StandSignal> signal = stand.await(WAIT);
                if (signal.isEmpty()) {
                    continue;
                }
                if (signal.get() instanceof MadeSafe made && made.cause() == Cause.HARDWARE) {
                    return SafeState.LOCKED;
                }
                long now = nanos(signal.get());
                if (known == SafeState.NOT_CONFIRMED && isSafe(signal.get())) {
                    known = SafeState.CONFIRMED;
                    safeSinceNanos = now;
                }
                if (known == SafeState.CONFIRMED && now - safeSinceNanos > PROOF_NANOS) {
                    return known;
                }
            }
        } catch (StandException | RuntimeException e) {
            // Whoever took the path knows of the trouble already; here it only means that nothing more is heard.
            return known;
        }
        return known;
    }

    private static long nanos(StandSignal signal) {
        return signal instanceof Measured measured ? measured.sample().boardNanos() : ((MadeSafe) signal).boardNanos();
    }

    private static boolean isSafe(StandSignal signal) {
        return signal instanceof MadeSafe
                || (signal instanceof Measured measured && !measured.sample().armed());
    }
}
