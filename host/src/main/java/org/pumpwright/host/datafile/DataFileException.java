package org.pumpwright.host.datafile;

import java.util.List;
import java.util.stream.Collectors;

/** A data file that cannot be used. The message holds one line for each problem and is ready to print. Thread-safe. */
public final class DataFileException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * Makes the exception.
     *
     * @param problems at least one, in the order in which they are to be read
     */
    public DataFileException(List<Problem> problems) {
        super(problems.stream().map(Problem::print).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** Every problem found, in the order of the file. */
    public List<Problem> problems() {
        return problems;
    }
}
