package org.pumpwright.host.plant.meter;

import java.util.Random;
import org.pumpwright.host.plant.EdgeTimes;

/** Carries one meter's edges to the stand's input with the defects of the way. Confined to the plant's thread. */
final class SignalPath {

    /** Where a doubled edge comes, as share of the interval before. */
    private static final double BOUNCE = 0.1;

    private final SignalDefects defects;
    private final int blades;
    private final Random random;
    private final EdgeTimes out = new EdgeTimes();
    private int blade;
    private double lastEdge = Double.NEGATIVE_INFINITY;
    private double extraEdge = Double.POSITIVE_INFINITY;
    private double drivePhase;

    SignalPath(SignalDefects defects, int blades, Random random) {
        this.defects = defects;
        this.blades = blades;
        this.random = random;
    }

    /** What arrives of a step's edges. */
    double[] carry(double[] edges, double seconds) {
        for (double edge : edges) {
            blade = (blade + 1) % blades;
            boolean lost = blade < defects.lostBlades() || chance(defects.missingShare());
            if (!lost) {
                deliverExtraBefore(edge);
                out.add(edge);
                if (chance(defects.doubleShare()) && lastEdge > Double.NEGATIVE_INFINITY) {
                    extraEdge = edge + BOUNCE * (edge - lastEdge);
                }
            }
            lastEdge = edge;
        }
        deliverExtraBefore(seconds);
        lastEdge -= seconds;
        extraEdge -= seconds;
        return out.take();
    }

    /** Pulses picked up from the switching drive while the meter itself is silent; each at a switching edge. */
    double[] interference(double driveHertz, double seconds) {
        double to = drivePhase + seconds * driveHertz;
        for (double next = Math.floor(drivePhase) + 1; next <= to; next++) {
            if (chance(defects.interferenceShare())) {
                out.add((next - drivePhase) / driveHertz);
            }
        }
        drivePhase = to - Math.floor(to);
        lastEdge = Double.NEGATIVE_INFINITY;
        return out.take();
    }

    private void deliverExtraBefore(double time) {
        if (extraEdge < time) {
            out.add(Math.max(0, extraEdge));
            extraEdge = Double.POSITIVE_INFINITY;
        }
    }

    private boolean chance(double share) {
        return share > 0 && random.nextDouble() < share;
    }
}
