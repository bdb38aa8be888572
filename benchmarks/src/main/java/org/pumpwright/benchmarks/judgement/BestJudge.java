package org.pumpwright.benchmarks.judgement;

import java.util.List;

/**
 * The best possible judge: knows the mix of units that comes through the door, the laws and nominal values of each world, and the
 * measurement's true noise (Bayes' rule at equal costs of both errors). Thread-safe.
 *
 * @param worlds for which it judges
 * @param priors one for each world
 * @param noise of the measurement
 */
record BestJudge(Worlds worlds, List<Prior> priors, Noise noise) {
    static BestJudge of(Worlds worlds, Doubts doubts, Noise noise) {
        List<Prior> priors = worlds.all().parallelStream()
                .map(world -> Prior.of(world, new Truth(world.curve(), doubts)))
                .toList();
        return new BestJudge(worlds, priors, noise);
    }

    /** Probability that the unit lies outside a limit; a run whose features could not all be read is one of a bad unit. */
    double outside(Judgement judgement, long seed) {
        if (judgement.readings().isEmpty()) {
            return 1;
        }
        return priors.get(worlds.of(judgement).number())
                .outside(judgement.readings(), noise.covariance(judgement.readings()), seed);
    }

    boolean passes(Judgement judgement, long seed) {
        return outside(judgement, seed) <= 0.5;
    }
}
