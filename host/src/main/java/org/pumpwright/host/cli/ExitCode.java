package org.pumpwright.host.cli;

import org.pumpwright.host.grade.Verdict;

/** The program's exit codes, one place. Thread-safe. */
public final class ExitCode {
    public static final int PASS = 0;
    public static final int FAIL = 1;
    public static final int USAGE = 2;
    public static final int STAND = 3;
    public static final int INCONCLUSIVE = 4;

    private ExitCode() {}

    /** The code of a verdict. */
    public static int of(Verdict verdict) {
        return switch (verdict) {
            case PASS -> PASS;
            case FAIL -> FAIL;
            case INVALID -> STAND;
            case INCONCLUSIVE, NOT_TESTED -> INCONCLUSIVE;
        };
    }
}
