package org.pumpwright.host.plant.hydraulic;

/** From which side a duty is reached. Thread-safe. */
public enum Direction {
    UP(-0.5),
    DOWN(0.5);

    /** How much of the hysteresis width the spool is away from where the current alone would hold it. */
    final double ofWidth;

    Direction(double ofWidth) {
        this.ofWidth = ofWidth;
    }
}
