package org.pumpwright.host.demand;

import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * What there is against what is needed. A spare of 15 % is common practice, no source. Thread-safe.
 *
 * @param needed flow, above 0
 * @param available flow, m3/s
 * @param wanted spare that is wanted, as a share of what is needed, 0 to 2
 */
public record Margin(FlowRate needed, Uncertain available, double wanted) {
    /** Coverage factor of the uncertainty that is counted against the spare. */
    public static final double K = 2;

    /** What the comparison says. */
    public enum Finding {
        /** The spare is there even at the low end of what is known. */
        ENOUGH,
        /** It is enough for the rate, but the spare is not there, or not for certain. */
        TIGHT,
        /** It is not enough for the rate even at the high end of what is known. */
        TOO_LITTLE,
        /** It may or may not be enough for the rate. */
        NOT_CERTAIN
    }

    public Margin {
        Require.inRange("needed flow", needed.m3PerSecond(), Double.MIN_NORMAL, 1, "m3/s");
        Require.inRange("available flow", available.value(), 0, 1, "m3/s");
        Require.inRange("wanted spare", wanted, 0, 2, "");
    }

    /** Available over needed, less 1. */
    public double spare() {
        return available.value() / needed.m3PerSecond() - 1;
    }

    /** Expanded uncertainty (k = 2) of the spare, from that of the available flow. */
    public double expandedUncertainty() {
        return K * available.standardUncertainty() / needed.m3PerSecond();
    }

    public Finding finding() {
        if (spare() - expandedUncertainty() >= wanted) {
            return Finding.ENOUGH;
        }
        if (spare() + expandedUncertainty() < 0) {
            return Finding.TOO_LITTLE;
        }
        return spare() - expandedUncertainty() >= 0 ? Finding.TIGHT : Finding.NOT_CERTAIN;
    }
}
