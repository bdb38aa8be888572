package org.pumpwright.host.plant.harness;

/** A part of the harness between two places a probe can reach. Thread-safe. */
public sealed interface Element permits WireRun, Joint {

    /** Its name on the bench. */
    String name();

    /**
     * Voltage it takes.
     *
     * @param amps current, 0 or more
     * @param heatedBy mean square of the current that has warmed it, in A²
     */
    double drop(double amps, double heatedBy);

    /** Resistance to a current too small to warm it, as an ohmmeter reads it. */
    double smallCurrentOhms();
}
