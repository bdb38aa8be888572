package org.pumpwright.host.rule;

/** Whether a thing makes the verdict or is only shown. Thread-safe. */
public enum Role {
    JUDGED,
    /** It tells of the stand or of how the unit was connected: outside, the run is invalid and says nothing of the unit. */
    STAND,
    INFORMATION
}
