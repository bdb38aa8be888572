package org.pumpwright.host.bench;

import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PlantReading;

/** What hangs on a simulated board, and what the board does to it: whether power is on it, and whether it is driven. Thread-safe to look at. */
public final class WatchedPlant implements Plant {
    private final Plant unit;
    private volatile boolean closed;
    private volatile boolean wasClosed;
    private volatile boolean driven;

    /** Watches this unit. */
    public WatchedPlant(Plant unit) {
        this.unit = unit;
    }

    @Override
    public PlantReading step(double seconds, double[] duties, boolean contactorClosed) {
        closed = contactorClosed;
        wasClosed |= contactorClosed;
        boolean now = false;
        for (double duty : duties) {
            now |= duty > 0;
        }
        driven = now;
        return unit.step(seconds, duties, contactorClosed);
    }

    /** Whether the contactor is closed. */
    public boolean closed() {
        return closed;
    }

    /** Whether it ever was. */
    public boolean wasClosed() {
        return wasClosed;
    }

    /** Whether anything is driven. */
    public boolean driven() {
        return driven;
    }
}
