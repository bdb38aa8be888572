package org.pumpwright.host.campaign;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.bench.EmulatedBoard.Pins;
import org.pumpwright.host.record.RunRecord;

/**
 * What was seen of one try.
 *
 * @param moment when it was struck
 * @param struckMicros the same by the board's time
 * @param pins what the pins gave, from the start to 3 s after everything was over
 * @param testimony the board's own events
 * @param record what the host kept; empty when it was killed
 * @param said what the host said on its way, and why it left no record
 */
record Seen(
        Moment moment, long struckMicros, List<Pins> pins, String testimony, Optional<RunRecord> record, String said) {

    /** From the fault until the first look at the pins that found everything off: at most 5 ms too long. */
    double drivenMillis() {
        return (offMicros() - struckMicros) / 1e3;
    }

    /** Whether anything was driven or fed again once it was off. */
    boolean cameBack() {
        long off = offMicros();
        return pins.stream().anyMatch(look -> look.micros() > off && look.live());
    }

    /** How long it was watched after everything was off. */
    double watchedSeconds() {
        return (pins.get(pins.size() - 1).micros() - offMicros()) / 1e6;
    }

    /** From the first driving to the fault; below 0 when nothing was driven yet. */
    double drivenBeforeSeconds() {
        return pins.stream()
                .filter(look -> look.duty() > 0)
                .findFirst()
                .map(first -> (struckMicros - first.micros()) / 1e6)
                .orElse(-1.0);
    }

    private boolean struckWhileLive() {
        return pins.stream().anyMatch(look -> look.micros() == struckMicros && look.live());
    }

    private long offMicros() {
        if (!struckWhileLive()) {
            return struckMicros;
        }
        return pins.stream()
                .filter(look -> look.micros() > struckMicros && !look.live())
                .findFirst()
                .orElseThrow(() -> new AssertionError("never off after " + moment))
                .micros();
    }
}
