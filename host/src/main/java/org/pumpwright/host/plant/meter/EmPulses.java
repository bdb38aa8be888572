package org.pumpwright.host.plant.meter;

import java.util.Random;
import org.pumpwright.host.plant.EdgeTimes;

/** Pulses of an electromagnetic meter: at each update the whole pulses due so far, in one burst. One thread. */
final class EmPulses {

    private static final double BURST_SPACING_SECONDS = 0.002;
    private static final double MOST_OF_UPDATE = 0.9;

    private final EmParameters em;
    private final double ratio;
    private final Random random;
    private double filtered;
    private double due;
    private double toUpdate;
    private double burstSpacing;
    private double toBurst;
    private int burst;

    EmPulses(EmParameters em, double ratio, Random random) {
        this.em = em;
        this.ratio = ratio;
        this.random = random;
        due = random.nextDouble();
        toUpdate = random.nextDouble() / em.updateHertz();
    }

    /** Lets a steady flow pass from {@code begin} for {@code seconds}, adding its edges. */
    void pass(double flow, double begin, double seconds, EdgeTimes edges) {
        filtered = flow + (filtered - flow) * StrictMath.exp(-seconds / em.dampingSeconds());
        double at = 0;
        while (at + toUpdate <= seconds) {
            drain(begin + at, toUpdate, edges);
            at += toUpdate;
            update();
            toUpdate = 1 / em.updateHertz();
        }
        drain(begin + at, seconds - at, edges);
        toUpdate -= seconds - at;
    }

    private void update() {
        double seen = filtered + em.zeroM3PerSecond() + em.noiseM3PerSecond() * random.nextGaussian();
        boolean cutOff = filtered + em.zeroM3PerSecond() < em.cutOffM3PerSecond();
        due += cutOff ? 0 : ratio * em.pulsesPerM3() * Math.max(0, seen) / em.updateHertz();
        burst = (int) due;
        due -= burst;
        burstSpacing = Math.min(BURST_SPACING_SECONDS, MOST_OF_UPDATE / em.updateHertz() / Math.max(1, burst));
        toBurst = 0;
    }

    private void drain(double begin, double seconds, EdgeTimes edges) {
        double at = toBurst;
        while (burst > 0 && at <= seconds) {
            edges.add(begin + at);
            burst--;
            at += burstSpacing;
        }
        toBurst = Math.max(0, at - seconds);
    }
}
