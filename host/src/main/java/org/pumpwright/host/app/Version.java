package org.pumpwright.host.app;

/** Name and version of the program, as they stand in every record. Thread-safe. */
public final class Version {
    private Version() {}

    /** For example {@code Pumpwright 0.1.0-SNAPSHOT}; {@code (unpackaged)} when it runs from loose classes. */
    public static String text() {
        String version = Version.class.getPackage().getImplementationVersion();
        return "Pumpwright " + (version == null ? "(unpackaged)" : version);
    }
}
