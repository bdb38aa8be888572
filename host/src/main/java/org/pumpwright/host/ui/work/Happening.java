package org.pumpwright.host.ui.work;

/** What ear and eye are told of while a run goes on. Thread-safe. */
public enum Happening {
    /** A point has settled and is being measured. */
    SETTLED,
    /** A step of the plan is done. */
    STEP,
    /** The verdict is there. */
    VERDICT,
    /** Something needs somebody now. */
    ALARM
}
