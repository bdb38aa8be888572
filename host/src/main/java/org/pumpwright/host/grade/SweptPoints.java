package org.pumpwright.host.grade;

import java.util.List;
import org.pumpwright.host.grade.cause.SweptPoint;

/** The points of a sweep as the causes want them. Thread-safe. */
public final class SweptPoints {
    private SweptPoints() {}

    /** Every driven point. */
    public static List<SweptPoint> of(List<PointReading> points) {
        return points.stream().filter(PointReading::driven).map(SweptPoints::of).toList();
    }

    private static SweptPoint of(PointReading point) {
        return new SweptPoint(
                point.mark().leg(),
                point.mark().commanded().percent(),
                point.duty(),
                point.flow(),
                point.voltsAtPins(),
                point.supplyAmps(),
                point.pressure(),
                point.pulseHealth(),
                point.ampsVariation());
    }
}
