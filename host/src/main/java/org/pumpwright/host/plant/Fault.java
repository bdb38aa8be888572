package org.pumpwright.host.plant;

/** Something that can be wrong with a simulated unit or the stand around it. Thread-safe. */
public interface Fault {
    /** The shop's word, usable on a command line: lower case with hyphens. */
    String word();

    /** One plain sentence that says what is wrong. */
    String sentence();

    /** Whether the stand is at fault rather than the unit. */
    boolean ofTheStand();
}
