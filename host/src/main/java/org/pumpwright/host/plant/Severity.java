package org.pumpwright.host.plant;

/** How far a fault has gone. Thread-safe. */
public enum Severity {
    MILD,
    MODERATE,
    SEVERE;

    /** The value that belongs to this severity. */
    public double pick(double mild, double moderate, double severe) {
        return switch (this) {
            case MILD -> mild;
            case MODERATE -> moderate;
            case SEVERE -> severe;
        };
    }
}
