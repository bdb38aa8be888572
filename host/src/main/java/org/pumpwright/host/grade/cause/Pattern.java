package org.pumpwright.host.grade.cause;

import java.util.List;

/**
 * How units of one state scatter about their mean: {@code covariance = loadings x loadings^T + diag(own^2)}, the form of a
 * factor analysis (textbook), which keeps a large matrix in few figures. One entry a key of the atlas; a mean that is not
 * a number belongs to a reading that such units do not give. Thread-safe.
 *
 * @param mean of each reading
 * @param own standard deviation that a reading has for itself
 * @param loadings how far each common factor moves each reading, one list a factor
 */
public record Pattern(List<Double> mean, List<Double> own, List<List<Double>> loadings) {
    public Pattern {
        mean = List.copyOf(mean);
        own = List.copyOf(own);
        loadings = loadings.stream().map(List::copyOf).toList();
        int size = mean.size();
        if (own.size() != size || loadings.stream().anyMatch(factor -> factor.size() != size)) {
            throw new IllegalArgumentException(
                    "a pattern of %d readings has figures for another number".formatted(size));
        }
    }
}
