package org.pumpwright.host.run;

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
public record RunOutcome(Trace trace, Ending ending, SafeState safe, long samplesLost) {}
