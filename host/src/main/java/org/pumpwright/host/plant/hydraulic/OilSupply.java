package org.pumpwright.host.plant.hydraulic;

import static org.pumpwright.host.plant.UsUnits.GALLON_PER_MINUTE;
import static org.pumpwright.host.plant.UsUnits.PSI;

import org.pumpwright.host.plant.Range;

/**
 * The stand's or tractor's oil. Thread-safe.
 *
 * @param pressurePascal pressure it holds while it has enough
 * @param availableM3PerSecond most it gives
 */
public record OilSupply(double pressurePascal, double availableM3PerSecond) {

    public OilSupply {
        Range.check("oil pressure", pressurePascal, 1e4, 1e8, "Pa");
        Range.check("oil available", availableM3PerSecond, 0, 1, "m3/s");
    }

    /** 2500 psi and 15 gal/min; assumed. */
    static OilSupply inOrder() {
        return new OilSupply(2500 * PSI, 15 * GALLON_PER_MINUTE);
    }

    OilSupply withAvailable(double m3PerSecond) {
        return new OilSupply(pressurePascal, m3PerSecond);
    }
}
