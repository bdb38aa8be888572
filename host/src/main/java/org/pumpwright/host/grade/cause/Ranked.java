package org.pumpwright.host.grade.cause;

import java.util.List;

/**
 * A cause, or two at once, and how well it explains a run. Thread-safe.
 *
 * @param ids one id of the atlas, or two; {@link CauseRanking#HEALTHY} stands for nothing wrong
 * @param logLikelihood natural logarithm, up to a constant that all share; a prior is in it
 * @param severity the likeliest, 0 healthy to 1 the gravest of the atlas; of the first id
 * @param squaredDistance squared Mahalanobis distance at that severity
 */
public record Ranked(List<String> ids, double logLikelihood, double severity, double squaredDistance) {
    public Ranked {
        ids = List.copyOf(ids);
    }
}
