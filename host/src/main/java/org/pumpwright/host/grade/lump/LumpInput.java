package org.pumpwright.host.grade.lump;

import java.util.List;
import java.util.Optional;
import org.pumpwright.host.quantity.Require;
import org.pumpwright.host.quantity.Uncertain;

/**
 * Everything a fit depends on. The same input always gives the same lumps. Thread-safe.
 *
 * @param points the sweep, the pump turning; points that did not settle or lie below the meter's range left out, and better also
 *     those below 40 % duty, where friction may still fall with speed
 * @param shared what all points share
 * @param nozzle coefficient {@code Q / sqrt(p)} of the stand's nozzle, m3/s per root pascal, with its uncertainty; needed
 *     where a point has no pressure, not used where it has
 * @param deadHead pressure and amps against a closed outlet, where measured
 * @param standstill ohms at rest, where measured
 * @param startDuty from the ramp, where measured; handed through
 * @param ampsDrift share by which the current changed over the run, where measured; handed through
 * @param healthy where the fit begins, and what a sweep cannot tell
 */
public record LumpInput(
        List<LumpPoint> points,
        SharedErrors shared,
        Optional<Uncertain> nozzle,
        Optional<DeadHead> deadHead,
        Optional<Standstill> standstill,
        Optional<Uncertain> startDuty,
        Optional<Uncertain> ampsDrift,
        HealthyModel healthy) {

    /**
     * @throws IllegalArgumentException when a point has neither a pressure nor a nozzle to tell it
     */
    public LumpInput {
        points = List.copyOf(points);
        nozzle.ifPresent(
                coefficient -> Require.inRange("nozzle", coefficient.value(), 1e-9, 1, "m3/s per root pascal"));
        if (nozzle.isEmpty()
                && points.stream().anyMatch(point -> point.pressure().isEmpty())) {
            throw new IllegalArgumentException("a point without pressure needs the coefficient of the nozzle");
        }
    }

    /** A sweep alone. */
    public static LumpInput of(List<LumpPoint> points, SharedErrors shared, Optional<Uncertain> nozzle) {
        return new LumpInput(
                points,
                shared,
                nozzle,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                HealthyModel.twelveVoltPump());
    }

    /** The same with the unit's dead-head. */
    public LumpInput with(DeadHead measured) {
        return new LumpInput(points, shared, nozzle, Optional.of(measured), standstill, startDuty, ampsDrift, healthy);
    }

    /** The same with the unit's ohms at rest. */
    public LumpInput with(Standstill measured) {
        return new LumpInput(points, shared, nozzle, deadHead, Optional.of(measured), startDuty, ampsDrift, healthy);
    }

    /** The same with what the ramp and the soak have found. */
    public LumpInput withFindings(Optional<Uncertain> start, Optional<Uncertain> drift) {
        return new LumpInput(points, shared, nozzle, deadHead, standstill, start, drift, healthy);
    }

    /** The same for another model of unit. */
    public LumpInput withHealthy(HealthyModel other) {
        return new LumpInput(points, shared, nozzle, deadHead, standstill, startDuty, ampsDrift, other);
    }
}
