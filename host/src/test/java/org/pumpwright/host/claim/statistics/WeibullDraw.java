package org.pumpwright.host.claim.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Lives drawn from a known distribution. */
final class WeibullDraw {
    private WeibullDraw() {}

    static double age(double beta, double eta, SplittableRandom random) {
        return eta * Math.pow(-Math.log(1 - random.nextDouble()), 1 / beta);
    }

    /** So many units watched up to the same age, at least two failures among them. */
    static List<Life> censored(double beta, double eta, int units, double watched, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Life> lives;
        do {
            lives = new ArrayList<>();
            for (int i = 0; i < units; i++) {
                double age = age(beta, eta, random);
                lives.add(age < watched ? Life.failed(age, 1) : Life.suspended(watched, 1));
            }
        } while (lives.stream().filter(Life::failed).count() < 2);
        return lives;
    }
}
