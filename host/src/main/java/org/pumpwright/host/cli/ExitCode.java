package org.pumpwright.host.cli;

import org.pumpwright.host.grade.Verdict;

/** The program's exit codes, one place. Thread-safe. */
final class ExitCode {
    static final int PASS = 0;
    static final int FAIL = 1;
    static final int USAGE = 2;
    static final int STAND = 3;
    static final int INCONCLUSIVE = 4;

    private ExitCode() {}

    static int of(Verdict verdict) {
        return switch (verdict) {
            case PASS -> PASS;
            case FAIL -> FAIL;
            case INVALID -> STAND;
            case INCONCLUSIVE, NOT_TESTED -> INCONCLUSIVE;
        };
    }
}
