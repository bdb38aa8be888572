package org.pumpwright.host.calibrate;

/** What the paper is for, and so how far the runs at one flow may lie apart. The gates are common practice, no source. Thread-safe. */
public enum Grade {
    SHOP(0.005),
    CERTIFICATE(0.0025);

    private final double rangeShareOfFive;

    Grade(double rangeShareOfFive) {
        this.rangeShareOfFive = rangeShareOfFive;
    }

    /** Largest allowed range of five runs, as a share of their mean. */
    public double rangeShareOfFive() {
        return rangeShareOfFive;
    }
}
