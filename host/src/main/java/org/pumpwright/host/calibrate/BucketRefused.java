package org.pumpwright.host.calibrate;

import java.util.List;
import java.util.stream.Collectors;

/** A test that gives no K; every problem found is in it. */
public final class BucketRefused extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    BucketRefused(List<Problem> problems) {
        super(problems.stream().map(Problem::sentence).collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    /** At least one. */
    public List<Problem> problems() {
        return problems;
    }
}
