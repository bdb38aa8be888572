package org.pumpwright.host.grade.lump;

import java.util.List;

/**
 * Where each unknown of the fit stands. Lumps count in healthy ones, nuisances in standard deviations of what is known
 * beforehand, true flows and pressures in measured ones, so that all are of the order of 1. Thread-safe.
 */
final class Layout {
    static final int FLOW_PER_VOLT = 0;
    static final int NO_LOAD_AMPS = 1;
    static final int AMPS_PER_PRESSURE = 2;
    static final int OHMS = 3;
    static final int SLIP = 4;

    /** The lumps that are fitted, each at its place. */
    static final List<Lump> FITTED =
            List.of(Lump.FLOW_PER_VOLT, Lump.NO_LOAD_AMPS, Lump.AMPS_PER_PRESSURE, Lump.OHMS, Lump.SLIP);

    static final int LUMPS = 5;

    static final int VISCOUS = 5;
    static final int BRUSH = 6;
    static final int COMPLIANCE = 7;
    static final int NOZZLE = 8;

    /** Gain and zero of each channel in turn. */
    static final int CHANNELS = 9;

    static final int VOLTS = 0;
    static final int AMPS = 1;
    static final int FLOW = 2;
    static final int PRESSURE = 3;

    /** First unknown of the points; everything from the viscous share to here is known beforehand to one unit. */
    static final int LATENT = CHANNELS + 8;

    static final int PRIORS = LATENT - LUMPS;

    /** At most so many unknowns belong to one point alone. */
    static final int MOST_OF_A_POINT = 2;

    /** Unknowns that one reading can depend on: the common ones and its point's own. */
    static final int LOCAL = LATENT + MOST_OF_A_POINT;

    private Layout() {}

    static int gain(int channel) {
        return CHANNELS + 2 * channel;
    }

    static int zero(int channel) {
        return CHANNELS + 2 * channel + 1;
    }
}
