package org.pumpwright.host.grade.cause;

import java.util.List;
import java.util.Optional;

/**
 * Causes of a pump that drew more than allowed and ended the run before it had pumped anything: too little was read to weigh
 * the atlas, and what was read says enough. Thread-safe.
 */
public final class CutShort {
    /** What must not be tried again in either case. */
    private static final String BY_HAND =
            "do not drive it again: turn it by hand with the plug off, rinse it with warm water, then run the full test";

    private static final Cause STUCK = new Cause(
            "the pump is stuck: seized, or full of crystals",
            "too much current, and no flow at any set point that was reached",
            BY_HAND);

    private static final Cause SHORTED = new Cause(
            "a lead or the winding leaks current to the case",
            "too much current at once, and no flow",
            "take it off the supply and measure from either lead to the case");

    private CutShort() {}

    /**
     * The two causes, tied.
     *
     * @param pointFinished whether any driven set point was borne to its end: a short is not
     */
    public static Causes causes(boolean pointFinished) {
        List<Cause> both = pointFinished ? List.of(STUCK, SHORTED) : List.of(SHORTED, STUCK);
        return new Causes(
                List.of(tied("tied with the next; ", both.get(0)), tied("tied with the first; ", both.get(1))),
                Optional.of(BY_HAND + "; does it turn: measure from either lead to the case"),
                List.of(),
                false);
    }

    private static Cause tied(String with, Cause cause) {
        return new Cause(cause.name(), with + cause.because(), cause.nextTest());
    }
}
