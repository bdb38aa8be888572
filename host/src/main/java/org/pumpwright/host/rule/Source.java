package org.pumpwright.host.rule;

import java.util.Locale;
import org.pumpwright.host.quantity.Require;

/**
 * Where a number of a verdict comes from, so that anybody can look it up. Thread-safe.
 *
 * @param file on the shelf, e.g. {@code rules/pump-12v.yaml}; never with the folders of one machine
 * @param version of the file's contents
 * @param line in the file, from 1; 0 where no line is known
 */
public record Source(String file, int version, int line) {
    /** The number is the program's own. */
    public static final Source PROGRAM = new Source("the program", 0, 0);

    /** A record of an older program did not keep it. */
    public static final Source NOT_KEPT = new Source("not kept in this record", 0, 0);

    public Source {
        Require.inRange("version", version, 0, Integer.MAX_VALUE, "");
        Require.inRange("line", line, 0, Integer.MAX_VALUE, "");
    }

    /** For people, e.g. {@code rules/pump-12v.yaml v1 line 12}. */
    public String words() {
        String versioned = version == 0 ? file : String.format(Locale.ROOT, "%s v%d", file, version);
        return line == 0 ? versioned : String.format(Locale.ROOT, "%s line %d", versioned, line);
    }
}
