package org.pumpwright.host.datafile;

/**
 * One thing wrong with a data file. Thread-safe.
 *
 * @param file the file as it was named by the caller
 * @param line from 1; 0 when the file as a whole is meant
 * @param column from 1; 0 when the file as a whole is meant
 * @param key path of the key, such as {@code settle.least_seconds} or {@code points[2].flow_gpm}; empty for the whole file
 * @param says what is wrong and what is allowed, written to follow the key
 */
public record Problem(String file, int line, int column, String key, String says) {

    /** The problem in one line, e.g. {@code bad.yaml:7: settle.least_seconds is -2, allowed is 0.1 to 60 (s)}. */
    public String print() {
        String where = line == 0 ? file : file + ":" + line;
        return where + ": " + (key.isEmpty() ? "the file" : key) + " " + says;
    }
}
