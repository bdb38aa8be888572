package org.pumpwright.host.record;

import java.nio.file.Path;

/**
 * A record file could not be written or read. The message names the file, what is wrong and what to do. Thread-safe.
 */
public final class RunRecordException extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Path file;
    private final String problem;
    private final String remedy;

    /** A problem with a record's file, and what to do about it; both without a full stop. */
    public RunRecordException(Path file, String problem, String remedy) {
        super(file + ": " + problem + ". " + remedy + ".");
        this.file = file;
        this.problem = problem;
        this.remedy = remedy;
    }

    RunRecordException(Path file, String problem, String remedy, Throwable cause) {
        this(file, problem, remedy);
        initCause(cause);
    }

    /** The file. */
    public Path file() {
        return file;
    }

    /** What is wrong, without file name and full stop. */
    public String problem() {
        return problem;
    }

    /** What to do about it, without full stop. */
    public String remedy() {
        return remedy;
    }
}
