package org.pumpwright.host.run;

import java.util.List;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.Ending;
import org.pumpwright.host.trace.Trace;

/**
 * What a run leaves. However it ended, everything that was measured until then is in the trace. Thread-safe.
 *
 * @param trace samples and finished points
 * @param ending how it ended
 * @param safe what is known of the stand's state
 * @param samplesLost samples that the board took and that never arrived
 */
public record RunOutcome(Trace trace, Ending ending, SafeState safe, long samplesLost) {
    /** What a run leaves whose program does not live to tell of its end, before anything was measured. */
    public static RunOutcome cutShort(Channels channels) {
        return new RunOutcome(
                new Trace(channels, List.of(), List.of()),
                new Ending(Ending.Kind.PROGRAM_FAULT, "the program ended before the run did"),
                SafeState.NOT_CONFIRMED,
                0);
    }
}
