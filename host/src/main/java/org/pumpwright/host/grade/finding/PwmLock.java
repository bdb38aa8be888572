package org.pumpwright.host.grade.finding;

import static org.pumpwright.host.grade.finding.Figures.format;

import org.pumpwright.host.signal.PulseTrain;

/**
 * Whether pulses without flow are the drive's switching, picked up. Board and drive share one clock, so such edges come at
 * the same place of the drive's period: the length of the mean of their unit vectors (circular statistics, textbook) is near
 * 1, while of edges out of step it is above 0.7 by chance only once in 1500 at 15 edges ({@code exp(-n r^2)}, Rayleigh).
 * Thread-safe.
 */
final class PwmLock {
    private static final int LEAST_EDGES = 15;
    private static final double IN_STEP = 0.7;

    private PwmLock() {}

    static Finding of(String step, String name, PulseTrain train, double pwmHz) {
        if (train.size() < LEAST_EDGES || pwmHz <= 0) {
            return Finding.word(
                    step,
                    name,
                    "cannot be told",
                    format("%d edges of known time, %d are needed", train.size(), LEAST_EDGES));
        }
        double inStep = coherence(train.seconds(), pwmHz);
        return Finding.word(
                step,
                name,
                inStep >= IN_STEP ? "yes" : "no",
                format("in step by %.2f of 1 with %.4g Hz, at least %.1f needed", inStep, pwmHz, IN_STEP));
    }

    /** Whether the edges are enough to tell, and in step. */
    static boolean inStep(PulseTrain train, double pwmHz) {
        return train.size() >= LEAST_EDGES && pwmHz > 0 && coherence(train.seconds(), pwmHz) >= IN_STEP;
    }

    private static double coherence(double[] seconds, double pwmHz) {
        double cosines = 0;
        double sines = 0;
        for (double at : seconds) {
            double phase = 2 * Math.PI * pwmHz * (at - seconds[0]);
            cosines += Math.cos(phase);
            sines += Math.sin(phase);
        }
        return Math.hypot(cosines, sines) / seconds.length;
    }
}
