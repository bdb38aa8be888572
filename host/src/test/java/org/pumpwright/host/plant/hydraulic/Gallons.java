package org.pumpwright.host.plant.hydraulic;

import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

/** Readings of a steady state in the sizes of the tables. */
final class Gallons {
    private Gallons() {}

    static double up(HydraulicParameters p, double duty) {
        return gpm(HydraulicSteadyState.of(p, duty, Direction.UP));
    }

    static double down(HydraulicParameters p, double duty) {
        return gpm(HydraulicSteadyState.of(p, duty, Direction.DOWN));
    }

    static double gpm(HydraulicSteadyState s) {
        return s.flowM3PerSecond() / GALLON_PER_MINUTE;
    }

    static double psi(double pascal) {
        return pascal / PSI;
    }

    /** Change of the flow against healthy on the way up, in percent. */
    static double changePercent(HydraulicParameters faulty, double duty) {
        return 100 * (up(faulty, duty) / up(HydraulicParameters.healthy(), duty) - 1);
    }

    /** Widest gap of the two ways, in percent of the healthy unit's full flow. */
    static double hysteresisPercent(HydraulicParameters p) {
        double widest = 0;
        for (int i = 0; i <= 100; i++) {
            widest = Math.max(widest, down(p, i / 100.0) - up(p, i / 100.0));
        }
        return 100 * widest / up(HydraulicParameters.healthy(), 1);
    }

    /** First whole percent of duty on the way up with more than half a gallon a minute; 101 when there is none. */
    static int startPercent(HydraulicParameters p) {
        int percent = 0;
        while (percent <= 100 && up(p, percent / 100.0) <= 0.5) {
            percent++;
        }
        return percent;
    }
}
