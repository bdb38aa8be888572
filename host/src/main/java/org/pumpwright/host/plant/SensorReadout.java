package org.pumpwright.host.plant;

import java.util.Random;

/** Means of one step on their way through the stand's sensors. Confined to the plant's thread. */
public final class SensorReadout {

    private final SensorErrors errors;
    private final Random random;
    private double volts;
    private double amps;
    private double pressure;

    public SensorReadout(SensorErrors errors, Random random) {
        this.errors = errors;
        this.random = random;
    }

    /** Adds a part of the step, weighted by its share of it. */
    public void add(double share, double partVolts, double partAmps, double partPressurePa) {
        volts += share * partVolts;
        amps += share * partAmps;
        pressure += share * partPressurePa;
    }

    /** What the sensors make of the parts so far, which are then forgotten. */
    public PlantReading take(double[][] edges, double waterKelvin) {
        PlantReading reading = new PlantReading(
                edges,
                errors.voltsRead(volts, random),
                errors.ampsRead(amps, random),
                errors.pressureRead(pressure, random),
                errors.temperatureRead(waterKelvin, random));
        volts = 0;
        amps = 0;
        pressure = 0;
        return reading;
    }
}
