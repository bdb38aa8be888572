package org.pumpwright.host.grade.cause;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Chooses the test that tells most about which of the causes it is. Thread-safe. */
final class NextTest {
    /** A test that takes away less of the doubt than this, in nats, is not worth doing. */
    private static final double LEAST_GAIN = 0.1;

    /** A later test of the table must take away this much more than an earlier, cheaper one. */
    private static final double MARGIN = 0.02;

    private NextTest() {}

    /**
     * The test whose outcome takes away most of the doubt between causes: the mutual information of outcome and cause
     * (Shannon 1948), when each cause leads to the outcome that the table says. Empty when none tells them apart.
     *
     * @param shares of the causes by id
     */
    static Optional<String> splitting(List<CauseTexts.Test> tests, Map<String, Double> shares) {
        Optional<String> best = Optional.empty();
        double most = LEAST_GAIN;
        for (CauseTexts.Test test : tests) {
            double gain = gain(test, shares);
            if (gain > most + (best.isPresent() ? MARGIN : 0)) {
                most = gain;
                best = Optional.of(test.words());
            }
        }
        return best;
    }

    /** Causes that the test does not tell come out either way, as the others do: they add nothing to the gain. */
    private static double gain(CauseTexts.Test test, Map<String, Double> shares) {
        double all = shares.values().stream().mapToDouble(Double::doubleValue).sum();
        Map<Integer, Double> outcomes = new TreeMap<>();
        shares.forEach((id, share) -> {
            int outcome = outcome(test, id);
            if (outcome >= 0) {
                outcomes.merge(outcome, share, Double::sum);
            }
        });
        double told =
                outcomes.values().stream().mapToDouble(Double::doubleValue).sum();
        double gain = 0;
        for (double share : outcomes.values()) {
            gain -= share / all * StrictMath.log(share / told);
        }
        return gain;
    }

    private static int outcome(CauseTexts.Test test, String id) {
        for (int i = 0; i < test.outcomes().size(); i++) {
            if (test.outcomes().get(i).contains(id)) {
                return i;
            }
        }
        return -1;
    }
}
