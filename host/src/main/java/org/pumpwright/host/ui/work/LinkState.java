package org.pumpwright.host.ui.work;

/** How the window stands with the stand that it watches. Thread-safe. */
public enum LinkState {
    /** It is not watched. */
    OFF,
    /** It is being called. */
    REACHING,
    /** It is heard. */
    HEARD,
    /** It was heard and is no more; it is looked for until it is there again. */
    LOST
}
