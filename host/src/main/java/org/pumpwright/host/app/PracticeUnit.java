package org.pumpwright.host.app;

import org.pumpwright.host.plant.Plant;
import org.pumpwright.host.plant.PumpFault;
import org.pumpwright.host.plant.PumpParameters;
import org.pumpwright.host.plant.PumpPlant;
import org.pumpwright.host.plant.PumpPopulation;
import org.pumpwright.host.plant.SensorErrors;
import org.pumpwright.host.plant.Severity;

/**
 * A simulated unit on the simulated stand. The same seed is the same unit. Thread-safe.
 *
 * @param fault what is wrong with it
 * @param severity how much
 * @param seed which of the healthy population it was before
 */
public record PracticeUnit(PumpFault fault, Severity severity, long seed) {
    /** The simulated stand's sensors are always the same ones; only the units change. */
    private static final long STAND_SEED = 1;

    /** A healthy unit. */
    public static PracticeUnit healthy(long seed) {
        return new PracticeUnit(PumpFault.HEALTHY, Severity.MODERATE, seed);
    }

    /** The unit, connected to the simulated stand's hoses and sensors. */
    public Plant plant() {
        PumpParameters before = new PumpPopulation(seed).unit(0);
        return new PumpPlant(fault.applyTo(before, severity), SensorErrors.drawn(STAND_SEED), seed);
    }

    /** What is wrong with it, in plain words. */
    public String words() {
        return fault == PumpFault.HEALTHY
                ? fault.sentence()
                : severity.name().toLowerCase(java.util.Locale.ROOT) + ": " + fault.sentence();
    }
}
