package org.pumpwright.host.grade.lump;

import org.pumpwright.host.plant.PumpParameters;

/** What was measured of a simulated pump. */
enum Measured {
    SWEEP,
    WITH_PRESSURE,
    AND_DEAD_HEAD,
    AND_STANDSTILL;

    int degreesOfFreedom() {
        return switch (this) {
            case SWEEP, WITH_PRESSURE -> 15;
            case AND_DEAD_HEAD -> 16;
            case AND_STANDSTILL -> 17;
        };
    }

    /** Readings with the errors of a seed. */
    LumpInput of(PumpParameters pump, long seed) {
        return read(new SweptPump(pump, SweptPump.USUAL, seed));
    }

    /** Readings without errors. */
    LumpInput exactly(PumpParameters pump) {
        return read(new SweptPump(pump, SweptPump.USUAL, 1).exact());
    }

    private LumpInput read(SweptPump swept) {
        return switch (this) {
            case SWEEP -> swept.sweep(false);
            case WITH_PRESSURE -> swept.sweep(true);
            case AND_DEAD_HEAD -> swept.sweep(true).with(swept.deadHead());
            case AND_STANDSTILL -> swept.sweep(true).with(swept.deadHead()).with(swept.standstill());
        };
    }
}
