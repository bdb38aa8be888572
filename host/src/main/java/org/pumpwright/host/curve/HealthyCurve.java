package org.pumpwright.host.curve;

import java.util.List;
import org.pumpwright.host.quantity.Require;

/**
 * One version of a healthy curve. Flow and motor current are held against <em>effective volts</em>, the mean voltage that
 * the motor sees, so that the supply's voltage drops out: {@code U = d * V_pins - (1 - d) * V_freewheel}, the mean output
 * of a switch with a freewheel diode in continuous conduction (textbook step-down converter). The motor current is the
 * supply current over the duty, for the same reason. Thread-safe.
 *
 * @param id short name
 * @param version counts up with every change
 * @param title for people
 * @param conditions what it belongs to
 * @param simulated true when its units were simulated: then it serves practice only
 * @param units number of known-good units behind it
 * @param toleranceFactor two-sided normal tolerance factor k for that number of units
 * @param coverage the share of healthy units that the limits hold, and the confidence, in words
 * @param freewheelVolts drop of the freewheel diode, V
 * @param points in order of effective volts, at least two
 * @param author who made it
 * @param made date, ISO 8601
 */
public record HealthyCurve(
        String id,
        int version,
        String title,
        Conditions conditions,
        boolean simulated,
        int units,
        double toleranceFactor,
        String coverage,
        double freewheelVolts,
        List<CurvePoint> points,
        String author,
        String made) {
    /** Below this many units a curve only advises. */
    public static final int LEAST_UNITS = 5;

    public HealthyCurve {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "curve %s has %d points, it needs at least 2".formatted(id, points.size()));
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).effectiveVolts() <= points.get(i - 1).effectiveVolts()) {
                throw new IllegalArgumentException(
                        "curve %s: point %d does not lie above the one before it".formatted(id, i + 1));
            }
        }
        Require.inRange("tolerance factor", toleranceFactor, 1, 100, "");
    }

    /** The id and version as they are printed on every paper. */
    public String label() {
        return id + " v" + version;
    }

    /** True when too few units stand behind it for anything but advice. */
    public boolean provisional() {
        return units < LEAST_UNITS;
    }

    /** The healthy population at a value of effective volts, linear between the points, the nearest end outside them. */
    public CurvePoint at(double effectiveVolts) {
        int upper = 1;
        while (upper < points.size() - 1 && points.get(upper).effectiveVolts() < effectiveVolts) {
            upper++;
        }
        CurvePoint a = points.get(upper - 1);
        CurvePoint b = points.get(upper);
        double share = (effectiveVolts - a.effectiveVolts()) / (b.effectiveVolts() - a.effectiveVolts());
        double t = Math.max(0, Math.min(1, share));
        return new CurvePoint(
                effectiveVolts,
                mix(a.flowM3PerSecond(), b.flowM3PerSecond(), t),
                mix(a.flowSpread(), b.flowSpread(), t),
                mix(a.motorAmps(), b.motorAmps(), t),
                mix(a.motorAmpsSpread(), b.motorAmpsSpread(), t));
    }

    /** Healthy range of flow, m3/s. */
    public Band flow(double effectiveVolts) {
        CurvePoint p = at(effectiveVolts);
        return band(p.flowM3PerSecond(), p.flowSpread());
    }

    /** Healthy range of motor current, A. */
    public Band motorAmps(double effectiveVolts) {
        CurvePoint p = at(effectiveVolts);
        return band(p.motorAmps(), p.motorAmpsSpread());
    }

    private Band band(double mean, double spread) {
        double half = toleranceFactor * spread * mean;
        return new Band(mean - half, mean, mean + half);
    }

    private static double mix(double a, double b, double t) {
        return a + t * (b - a);
    }
}
